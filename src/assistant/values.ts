// The kinds of value that options take, each tied to its reader and writer in the notation.

import type { Charger } from '../charging/charger.ts'
import type { ChemistryName } from '../charging/chemistry.ts'
import type { Pack } from '../charging/pack.ts'
import type { Source } from '../charging/source.ts'
import { readCharger, writeCharger } from '../notation/charger.ts'
import { chemistryNames, readChemistry } from '../notation/chemistry.ts'
import { readDuration, writeDuration } from '../notation/duration.ts'
import { readPack, writePack } from '../notation/pack.ts'
import * as notation from '../notation/quantities.ts'
import { readSource, writeSource } from '../notation/source.ts'
import { type Level, readState, readTarget, writeLevel } from '../notation/state.ts'
import type { ValueKind } from './value-kind.ts'

/** The suggestions that start as `prefix` does, whatever the case. */
function startingWith(suggestions: readonly string[]): (prefix: string) => readonly string[] {
  return prefix => suggestions.filter(text => text.toLowerCase().startsWith(prefix.trim().toLowerCase()))
}

/** A kind whose reader takes nothing for granted. */
function plainKind<T>(
  name: string,
  read: (text: string) => T,
  write: (value: T) => string,
  suggestions: readonly [string, ...string[]],
): ValueKind<T> {
  return {
    name,
    example: suggestions[0],
    read: text => ({ value: read(text), assumed: [] }),
    write,
    complete: startingWith(suggestions),
  }
}

export const packKind: ValueKind<Pack> = {
  name: 'pack',
  example: '3S 720 LiHV',
  read: readPack,
  write: writePack,
  complete: startingWith([
    '1S 550 LiHV',
    '2S 450 LiPo',
    '3S 720 LiHV',
    '4S 1500 LiPo',
    '6S 1300 LiPo',
    '2S 2600 Li-ion',
    '2S 1100 LiFe',
  ]),
}

export const chargerKind: ValueKind<Charger> = {
  name: 'charger',
  example: '0.5/1/2/4A 80W 1-4S 9-20V',
  read: readCharger,
  write: writeCharger,
  complete: startingWith(['0.5/1/2/4A 80W 1-4S 9-20V', '1/2/3/5A', '0.1-10A by 0.1 200W 6S 10-30V']),
}

export const sourceKind: ValueKind<Source> = {
  name: 'source',
  example: 'PD 65W',
  read: readSource,
  write: writeSource,
  complete: startingWith([
    'PD 30W',
    'PD 45W',
    'PD 65W',
    'PD 100W',
    '12V 10A',
    'car 10A engine running',
    'car 10A engine off',
    'power bank 74Wh PD 45W',
    '4S 5000 Li-ion',
    '6S 5000 LiPo',
  ]),
}

const levels = [
  'full',
  'storage',
  '20%',
  '50%',
  '80%',
  '3.3V per cell',
  '3.5V per cell',
  '3.7V per cell',
  '3.85V per cell',
] as const

export const stateKind: ValueKind<Level> = {
  name: 'from',
  example: '3.7V per cell',
  read: (text, { pack }) => readState(text, pack),
  write: writeLevel,
  complete: startingWith([...levels, 'empty']),
}

export const targetKind: ValueKind<Level> = {
  name: 'to',
  example: 'full',
  read: (text, { pack }) => readTarget(text, pack),
  write: writeLevel,
  complete: startingWith(levels),
}

export const chemistryKind = plainKind<ChemistryName>('chemistry', readChemistry, name => name, [
  'LiHV',
  ...chemistryNames.filter(name => name !== 'LiHV'),
])

export const currentKind = plainKind('current', notation.readCurrent, notation.writeCurrent, [
  '1A',
  '0.5A',
  '2A',
  '3A',
  '5A',
])
export const voltageKind = plainKind('voltage', notation.readVoltage, notation.writeVoltage, [
  '12V',
  '5V',
  '9V',
  '20V',
])
export const capacityKind = plainKind('capacity', notation.readCapacity, notation.writeCapacity, [
  '690mAh',
  '1.3Ah',
])
export const energyKind = plainKind('energy', notation.readEnergy, notation.writeEnergy, ['74Wh', '20Wh'])
export const powerKind = plainKind('power', notation.readPower, notation.writePower, ['20W', '65W', '100W'])
export const resistanceKind = plainKind('resistance', notation.readResistance, notation.writeResistance, [
  '6mΩ',
  '12mΩ',
])
export const temperatureKind = plainKind('temperature', notation.readTemperature, notation.writeTemperature, [
  '20°C',
  '5°C',
  '35°C',
])
export const percentKind = plainKind('percent', notation.readPercent, notation.writePercent, [
  '50%',
  '20%',
  '80%',
])
export const rateKind = plainKind('rate', notation.readRate, notation.writeRate, ['1C', '0.5C', '2C'])
export const lengthKind = plainKind('length', notation.readLength, notation.writeLength, [
  '1m',
  '50cm',
  '2ft',
])
export const massKind = plainKind('mass', notation.readMass, notation.writeMass, ['45g', '2oz'])
export const gaugeKind = plainKind('gauge', notation.readGauge, notation.writeGauge, [
  'AWG 16',
  'AWG 12',
  'AWG 20',
])
export const countKind = plainKind('count', text => notation.readCount(text), notation.writeCount, [
  '6',
  '4',
  '10',
])
export const durationKind = plainKind('duration', readDuration, writeDuration, ['1h20', '45min', '90min'])
