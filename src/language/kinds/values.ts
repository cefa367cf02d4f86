// The kinds of value that options take, each tied to its reader and writer in the notation.

import type { Chemistry } from '../../charging/things/chemistry.ts'
import { plainText } from '../../ground/plain-text.ts'
import { remembered } from '../../ground/remembered.ts'
import { chemistryNames, readChemistry } from '../parts/chemistry.ts'
import { readClock, writeClock } from '../quantities/clock.ts'
import { readDuration, writeDuration } from '../quantities/duration.ts'
import * as notation from '../quantities/quantities.ts'
import { fahrenheitIs, gaugeTaken } from '../quantities/quantity.words.ts'
import type { Read } from '../scan/read.ts'
import { type CellType, readCellType, writeCellType } from '../things/cell-type.ts'
import { readCharger, writeCharger } from '../things/charger.ts'
import { readPack, writePack } from '../things/pack.ts'
import { readSource, writeSource } from '../things/source.ts'
import { type Level, readAnyState, readState, readTarget, writeLevel } from '../things/state.ts'
import { completions } from './completions.ts'
import { type Earlier, plainKind, startingWith, type ValueKind } from './value-kind.ts'

/** With completions of its own. */
const completed = <T>(
  name: string,
  example: string,
  read: ValueKind<T>['read'],
  write: (value: T) => string,
): ValueKind<T> => ({ name, example, read, write, complete: prefix => completions(name, prefix) })

/** What people own is named again and again, and twice in one question: to see whether it is a saved name, and to be used. */
const owned = <T>(name: string, example: string, read: (text: string) => Read<T>, write: (value: T) => string) =>
  completed(name, example, remembered(500, read), write)

export const packKind = owned('pack', '3S 720 LiHV', readPack, writePack)
export const chargerKind = owned('charger', '0.3/0.8/1.5/3A 60W 1-5S 10-26V', readCharger, writeCharger)
export const sourceKind = owned('source', 'PD 65W', readSource, writeSource)

/** The cells in series that pack volts are shared by, of the pack or of the cells named without one. */
function seriesOf({ pack, chemistry }: Earlier): { readonly series: number } | undefined {
  if (pack || !chemistry || !('series' in chemistry) || chemistry.series === undefined) return pack
  return { series: chemistry.series }
}

export const stateKind = completed(
  'from',
  '3.7V per cell',
  (text, earlier) => readState(text, seriesOf(earlier)),
  writeLevel,
)

/** Where nothing is to be done with the pack: also without anything left. */
export const anyStateKind = {
  ...stateKind,
  read: (text, earlier) => readAnyState(text, seriesOf(earlier)),
} satisfies ValueKind<Level>

export const targetKind = completed('to', 'full', (text, earlier) => readTarget(text, seriesOf(earlier)), writeLevel)

export const chemistryKind = plainKind<Chemistry>('chemistry', readChemistry, ({ name }) => name, [
  'LiHV',
  ...chemistryNames.filter(name => name !== 'LiHV'),
])

export const cellsKind: ValueKind<CellType> = {
  name: 'cells',
  example: '3S LiPo',
  read: readCellType,
  write: writeCellType,
  complete: startingWith(chemistryNames),
}

/** In A, or in C of the pack or the packs that the question names before it; of several packs also what each is to get. */
export const currentKind = completed(
  'current',
  '1A',
  (text, { pack, packs = [], places }) => {
    const named = pack ? [pack] : packs.flatMap(({ count, item }) => Array.from({ length: count }, () => item.pack))
    const sizes_Ah = named.slice(0, places).map(({ capacity_Ah }) => capacity_Ah)
    return { value: notation.readChargeCurrent(text, ...sizes_Ah), assumed: [] }
  },
  notation.writeCurrent,
)
export const voltageKind = plainKind('voltage', notation.readVoltage, notation.writeVoltage, ['12V', '5V', '9V', '20V'])
/** How far cells lie apart, never where they stand. */
export const apartKind = { ...voltageKind, name: 'volts apart', example: '0.05V' }
export const capacityKind = plainKind('capacity', notation.readCapacity, notation.writeCapacity, ['690mAh', '1.3Ah'])
export const energyKind = plainKind('energy', notation.readEnergy, notation.writeEnergy, ['74Wh', '20Wh'])
export const powerKind = plainKind('power', notation.readPower, notation.writePower, ['20W', '65W', '100W'])
/** What a charger takes, never what it gives. */
export const drawnPowerKind = { ...powerKind, name: 'drawn power' }
export const resistanceKind = plainKind('resistance', notation.readResistance, notation.writeResistance, [
  '6mΩ',
  '12mΩ',
])
export const massKind = plainKind('mass', notation.readMass, notation.writeMass, ['178g', '0.5kg', '45g'])
/** °F is converted, out loud. */
export const temperatureKind: ValueKind<number> = {
  ...plainKind('temperature', notation.readTemperature, notation.writeTemperature, ['20°C', '5°C', '35°C']),
  read: text => {
    const value = notation.readTemperature(text)
    const typed = plainText(text)
    return { value, assumed: /f(?:ahrenheit)?$/i.test(typed) ? [fahrenheitIs(typed, value)] : [] }
  },
}
export const percentKind = plainKind('percent', notation.readPercent, notation.writePercent, ['50%', '20%', '80%'])
export const rateKind = plainKind('rate', notation.readRate, notation.writeRate, ['1C', '0.5C', '2C'])
export const lengthKind = plainKind('length', notation.readLength, notation.writeLength, ['1m', '50cm', '2ft'])
/** A cross-section stands for the gauge next thinner, out loud. */
export const gaugeKind: ValueKind<number> = {
  ...plainKind('gauge', notation.readGauge, notation.writeGauge, ['AWG 16', 'AWG 12', 'AWG 20']),
  read: text => {
    const value = notation.readGauge(text)
    const typed = plainText(text)
    return { value, assumed: /awg|gauge/i.test(typed) ? [] : [gaugeTaken(typed, value)] }
  },
}
export const clockKind = plainKind('clock', readClock, writeClock, ['14:30', '9:00', '18:15'])
export const countKind = plainKind('count', text => notation.readCount(text), notation.writeCount, ['6', '4', '10'])
export const durationKind = plainKind('duration', readDuration, writeDuration, ['1h20', '45min', '90min'])
