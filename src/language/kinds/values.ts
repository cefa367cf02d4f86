// The kinds of value that options take, each tied to its reader and writer in the notation.

import type { Charger } from '../../charging/things/charger.ts'
import type { Chemistry } from '../../charging/things/chemistry.ts'
import type { Pack } from '../../charging/things/pack.ts'
import type { Source } from '../../charging/things/source.ts'
import { plainText } from '../../ground/plain-text.ts'
import { readClock, writeClock } from '../quantities/clock.ts'
import { readDuration, writeDuration } from '../quantities/duration.ts'
import * as notation from '../quantities/quantities.ts'
import { fahrenheitIs, gaugeTaken } from '../quantities/quantity.words.ts'
import { type CellType, readCellType, writeCellType } from '../things/cell-type.ts'
import { readCharger, writeCharger } from '../things/charger.ts'
import { chemistryNames, readChemistry } from '../things/chemistry.ts'
import { readPack, writePack } from '../things/pack.ts'
import { readSource, writeSource } from '../things/source.ts'
import { type Level, readAnyState, readState, readTarget, writeLevel } from '../things/state.ts'
import { completions } from './completions.ts'
import { type Earlier, plainKind, startingWith, type ValueKind } from './value-kind.ts'

export const packKind: ValueKind<Pack> = {
  name: 'pack',
  example: '3S 720 LiHV',
  read: readPack,
  write: writePack,
  complete: prefix => completions('pack', prefix),
}

export const chargerKind: ValueKind<Charger> = {
  name: 'charger',
  example: '0.3/0.8/1.5/3A 60W 1-5S 10-26V',
  read: readCharger,
  write: writeCharger,
  complete: prefix => completions('charger', prefix),
}

export const sourceKind: ValueKind<Source> = {
  name: 'source',
  example: 'PD 65W',
  read: readSource,
  write: writeSource,
  complete: prefix => completions('source', prefix),
}

/** The cells in series that pack volts are shared by, of the pack or of the cells named without one. */
function seriesOf({ pack, chemistry }: Earlier): { readonly series: number } | undefined {
  if (pack || !chemistry || !('series' in chemistry) || chemistry.series === undefined) return pack
  return { series: chemistry.series }
}

export const stateKind: ValueKind<Level> = {
  name: 'from',
  example: '3.7V per cell',
  read: (text, earlier) => readState(text, seriesOf(earlier)),
  write: writeLevel,
  complete: prefix => completions('from', prefix),
}

/** Where nothing is to be done with the pack: also without anything left. */
export const anyStateKind: ValueKind<Level> = {
  ...stateKind,
  read: (text, earlier) => readAnyState(text, seriesOf(earlier)),
}

export const targetKind: ValueKind<Level> = {
  name: 'to',
  example: 'full',
  read: (text, earlier) => readTarget(text, seriesOf(earlier)),
  write: writeLevel,
  complete: prefix => completions('to', prefix),
}

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
export const currentKind: ValueKind<number> = {
  name: 'current',
  example: '1A',
  read: (text, { pack, packs = [], places }) => {
    const named = pack ? [pack] : packs.flatMap(({ count, item }) => Array.from({ length: count }, () => item.pack))
    const sizes_Ah = named.slice(0, places).map(({ capacity_Ah }) => capacity_Ah)
    return { value: notation.readChargeCurrent(text, ...sizes_Ah), assumed: [] }
  },
  write: notation.writeCurrent,
  complete: prefix => completions('current', prefix),
}
export const voltageKind = plainKind('voltage', notation.readVoltage, notation.writeVoltage, ['12V', '5V', '9V', '20V'])
export const capacityKind = plainKind('capacity', notation.readCapacity, notation.writeCapacity, ['690mAh', '1.3Ah'])
export const energyKind = plainKind('energy', notation.readEnergy, notation.writeEnergy, ['74Wh', '20Wh'])
export const powerKind = plainKind('power', notation.readPower, notation.writePower, ['20W', '65W', '100W'])
/** What a charger takes, never what it gives. */
export const drawnPowerKind = { ...powerKind, name: 'drawn power' }
export const resistanceKind = plainKind('resistance', notation.readResistance, notation.writeResistance, [
  '6mΩ',
  '12mΩ',
])
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
