// Every limit of the envelope by hand: the last number that it leaves alone, the first that it does not, and how much it
// weighs. Of a 3S LiPo of 1 Ah, where nothing else is told.

import type { LimitKey } from '../../../src/charging/envelope/limits/index.ts'
import type { Weight } from '../../../src/charging/situation/rule.ts'
import type { Act, BesidePack, Planned, Told } from '../../../src/charging/situation/situation.ts'
import type { Charger } from '../../../src/charging/things/charger.ts'
import { liFe, lipo } from '../../../src/charging/things/chemistries.ts'
import type { HouseLimits } from '../../../src/charging/things/house-limits.ts'
import type { Level } from '../../../src/charging/things/level.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'

export const plover: Pack = { chemistry: lipo, series: 3, parallel: 1, capacity_Ah: 1 }

interface Asked extends Partial<Told> {
  readonly planned?: Planned
  readonly house?: HouseLimits
}
type With = (value: number) => Asked
export type Border = readonly [LimitKey, Weight, readonly Act[], With, inside: number, outside: number]

const volts = (perCell_V: number): Level => ({ kind: 'rest', perCell_V })
const from: With = value => ({ from: volts(value) })
const to: With = value => ({ to: volts(value) })
const warm: With = temperature_C => ({ temperature_C })
const asked: With = current_A => ({ current_A })
const spread: With = by_V => ({ cells_V: [3.8, 3.8, 3.8 + by_V] })
const spreadFull: With = by_V => ({ cells_V: [4.1, 4.1, 4.1 + by_V], when: 'full' })
const planned =
  (key: keyof Planned): With =>
  value => ({ planned: { [key]: value } })
const of = (more: Partial<Pack>): Pack => ({ ...plover, ...more })
const charger = (more: Partial<Charger>) => ({
  charger: { currents: { kind: 'list', steps_A: [0.1, 1] } as const, ...more },
})
const meter: With = measured_V => ({ meter: { shown_V: 4.2, measured_V } })
const board = (...packs: readonly BesidePack[]): Asked => ({ board: packs })
const there = { pack: plover, from: volts(3.8) }
const supply = (voltage_V: number) => ({ kind: 'supply', offers: [{ voltage_V, current_A: 5 }] }) as const

const charging = ['charge', 'board'] as const
const everything = ['charge', 'drain', 'store', 'carry', 'board', 'look'] as const
const hour_s = 3600

export const borders: readonly Border[] = [
  ['deadCell', 'refuse', everything, from, 2.5, 2.499],
  ['overCharged', 'refuse', everything, from, 4.25, 4.251],
  ['overFull', 'refuse', ['charge', 'board', 'look'], from, 4.2, 4.201],
  ['overFull', 'refuse', ['look'], to, 4.2, 4.201],
  ['overFull', 'refuse', ['charge', 'board', 'look'], v => board(there, { ...there, from: volts(v) }), 4.2, 4.201],
  ['deadCell', 'refuse', everything, v => board(there, { ...there, from: volts(v) }), 2.5, 2.499],
  ['overFullElsewhere', 'must', ['drain', 'store', 'carry'], from, 4.2, 4.201],
  ['cellsFarApart', 'refuse', ['charge', 'board', 'look', 'drain'], spread, 0.2, 0.201],
  ['cellsFarApart', 'refuse', ['charge', 'board', 'look', 'drain'], spreadFull, 0.1, 0.101],
  ['cellsApart', 'must', ['charge', 'look', 'drain'], spread, 0.1, 0.101],
  ['cellsApart', 'must', ['charge', 'look', 'drain'], spreadFull, 0.05, 0.051],
  ['cellsUneven', 'care', ['charge', 'board', 'look', 'drain'], spread, 0.03, 0.031],
  ['cellsUneven', 'care', ['charge', 'board', 'look', 'drain'], spreadFull, 0.015, 0.016],
  ['looksFlat', 'must', ['charge', 'board', 'look', 'drain'], v => ({ cells_V: [3.3, 3.3, 3.3 + v] }), 0.061, 0.059],
  ['slowStart', 'must', ['charge', 'look'], from, 3, 2.999],
  [
    'slowStartOnBoard',
    'refuse',
    ['board'],
    v => board({ ...there, from: volts(v) }, { ...there, from: volts(v) }),
    3,
    2.999,
  ],
  ['lowCell', 'care', ['look'], from, 3.6, 3.599],
  ['belowFloor', 'note', ['charge'], from, 3.6, 3.599],

  ['tooCold', 'refuse', charging, warm, 0, -0.1],
  ['colderThanClub', 'refuse', charging, v => ({ temperature_C: v, house: { coldest_C: 8 } }), 8, 7.9],
  ['tooHot', 'refuse', charging, warm, 45, 45.1],
  ['tooColdToDrain', 'refuse', ['drain'], warm, -20, -20.1],
  ['tooHotToDrain', 'refuse', ['drain'], warm, 60, 60.1],
  ['tooColdToStore', 'refuse', ['store'], warm, -20, -20.1],
  ['tooHotToStore', 'refuse', ['store'], warm, 45, 45.1],
  ['tooColdToUse', 'refuse', ['look', 'carry'], warm, -20, -20.1],
  ['tooHotToUse', 'refuse', ['look', 'carry'], warm, 60, 60.1],
  ['veryCold', 'care', charging, warm, 5, 4.9],
  ['cold', 'care', charging, warm, 10, 9.9],
  ['cool', 'note', charging, warm, 15, 14.9],
  ['warm', 'care', charging, warm, 40, 40.1],
  ['warmStore', 'care', ['store'], warm, 30, 30.1],
  ['warmsUp', 'care', charging, planned('warmest_C'), 40, 40.1],

  ['boardOfOne', 'refuse', ['board'], v => board(...Array.from({ length: v }, () => there)), 2, 1],
  ['boardHurt', 'refuse', ['board'], v => board(there, v ? { ...there, dangers: ['swollen'] } : there), 0, 1],
  ['boardSeries', 'refuse', ['board'], v => board(there, { ...there, pack: of({ series: v }) }), 3, 4],
  [
    'boardChemistries',
    'refuse',
    ['board'],
    v => board(there, { ...there, pack: of({ chemistry: v ? liFe : lipo }) }),
    0,
    1,
  ],
  ['boardApart', 'refuse', ['board'], v => board(there, { ...there, from: volts(3.8 + v) }), 0.1, 0.101],
  ['boardFlow', 'refuse', ['board'], planned('flowShare'), 1, 1.001],
  ['boardUnknown', 'must', ['board'], v => board(there, v ? { pack: plover } : there), 0, 1],
  [
    'boardCharge',
    'must',
    ['board'],
    v => board({ ...there, from: { kind: 'soc', soc: 0.5 } }, { ...there, from: { kind: 'soc', soc: 0.5 + v } }),
    0.24,
    0.26,
  ],

  ['wornOut', 'refuse', ['look'], planned('ageTimes'), 2.99, 3],
  ['tired', 'care', ['look'], planned('ageTimes'), 1.99, 2],
  ['oddCell', 'care', ['look'], planned('oddTimes'), 1.4, 1.401],
  ['resistanceUp', 'care', ['look'], planned('agedTimes'), 1.49, 1.5],
  ['putBackTooMuch', 'refuse', ['look'], planned('putBackShare'), 1.1, 1.101],
  ['lostToStart', 'refuse', ['look'], planned('startShare'), 0.8, 0.799],
  ['lostToLabel', 'refuse', ['look'], planned('labelShare'), 0.8, 0.799],
  ['faded', 'care', ['look'], planned('startShare'), 0.9, 0.899],
  ['chargedTooFast', 'must', ['look'], planned('charged_A'), 2, 2.001],
  ['chargedTooFast', 'must', ['look'], v => ({ pack: of({ labelRate_C: 3 }), planned: { charged_A: v } }), 3, 3.001],
  ['chargedTooFast', 'must', ['look'], v => ({ pack: of({ capacity_Ah: 2 }), planned: { charged_A: v } }), 4, 4.001],
  ['usedDeep', 'care', ['look'], planned('usedShare'), 0.8, 0.801],

  ['gotHazard', 'refuse', charging, meter, 4.25, 4.251],
  ['gotTooMuch', 'refuse', charging, meter, 4.22, 4.221],
  ['gotAboveFull', 'care', charging, meter, 4.2, 4.201],
  ['chargerFaulty', 'refuse', charging, meter, 4.1, 4.099],
  ['chargerOff', 'care', charging, meter, 4.18, 4.179],
  ['aboveWish', 'care', charging, v => ({ to: volts(4.1), planned: { cutoff_V: v } }), 4.104, 4.106],

  ['cutoffAboveFull', 'refuse', charging, to, 4.2, 4.201],
  ['cutoffTooLow', 'refuse', charging, to, 3.6, 3.599],
  ['noFittingCutoff', 'refuse', charging, v => charger({ cutoffs_V: [v] }), 4, 3.999],
  ['currentTooHigh', 'refuse', charging, asked, 2, 2.001],
  ['currentTooHigh', 'refuse', charging, v => ({ pack: of({ labelRate_C: 3 }), current_A: v }), 3, 3.001],
  ['currentTooHigh', 'refuse', charging, v => ({ pack: of({ labelRate_C: 50 }), current_A: v }), 2, 2.001],
  ['currentTooHigh', 'refuse', charging, v => ({ temperature_C: 7, current_A: v }), 0.5, 0.501],
  ['currentTooHigh', 'refuse', charging, v => ({ temperature_C: 3, current_A: v }), 0.2, 0.201],
  ['currentTooHigh', 'refuse', charging, v => ({ house: { maxRate_C: { LiPo: 0.7 } }, current_A: v }), 0.7, 0.701],
  ['currentTooHigh', 'refuse', charging, v => ({ dangers: ['crashed'], current_A: v }), 0.5, 0.501],
  ['stepTooLarge', 'refuse', charging, v => charger({ currents: { kind: 'list', steps_A: [v, 4] } }), 2, 2.001],
  ['tooFewCells', 'refuse', charging, v => charger({ minSeries: v }), 3, 4],
  ['tooManyCells', 'refuse', charging, v => charger({ maxSeries: v }), 3, 2],
  ['noLeadToSee', 'refuse', charging, v => ({ pack: of({ series: v }), ...charger({ needsBalanceLead: true }) }), 2, 1],
  ['noLeadToSee', 'refuse', charging, v => ({ balanceLead: !v, ...charger({ needsBalanceLead: true }) }), 0, 1],
  ['nothingToCharge', 'refuse', charging, from, 4.194, 4.196],
  ['nothingToCharge', 'refuse', charging, v => ({ from: volts(v), to: volts(4) }), 3.994, 3.996],
  ['rateQuestioned', 'must', charging, v => ({ pack: of({ labelRate_C: v }) }), 5, 5.1],
  ['aboveUsual', 'care', charging, asked, 1.1, 1.101],
  ['tooSlow', 'care', charging, asked, 0.05, 0.049],
  ['tooSlow', 'care', charging, v => ({ pack: of({ capacity_Ah: 2 }), current_A: v }), 0.1, 0.099],
  ['notAllReady', 'care', charging, planned('short'), 0, 1],
  ['severalAtOnce', 'care', charging, planned('atOnce'), 1, 2],
  ['dischargeRate', 'note', charging, v => ({ pack: of({ dischargeRate_C: v }) }), 0, 30],
  ['thickLeads', 'note', charging, v => ({ pack: of({ capacity_Ah: 5 }), current_A: v }), 5, 5.001],
  ['thickLeads', 'note', charging, v => ({ pack: of({ capacity_Ah: 3 }), current_A: v }), 5, 5.001],
  ['veryLong', 'must', everything, planned('takes_s'), 12 * hour_s, 12 * hour_s + 60],
  ['long', 'must', everything, planned('takes_s'), 4 * hour_s + 29, 4 * hour_s + 31],

  ['inputOutside', 'refuse', charging, v => ({ ...charger({ minInput_V: 9 }), source: supply(v) }), 9, 8.9],
  ['inputOutside', 'refuse', charging, v => ({ ...charger({ maxInput_V: 15 }), source: supply(v) }), 15, 15.1],
  [
    'sourceAtFloor',
    'refuse',
    charging,
    sourceSoc => ({ source: { kind: 'battery', pack: plover }, sourceSoc }),
    0.5,
    0,
  ],
  ['sourceRunsOut', 'refuse', charging, v => ({ planned: { wanted: 1, carried: v } }), 1, 0],
  ['notAllCarried', 'must', charging, v => ({ planned: { wanted: 3, carried: v } }), 3, 2],
  ['drainedAlready', 'refuse', ['drain'], from, 3.601, 3.6],
  ['drainedAlready', 'refuse', ['drain'], v => ({ cells_V: [v, 3.8, 3.8] }), 3.601, 3.599],
  ['drainedTooFast', 'refuse', ['drain'], asked, 2, 2.001],
  ['drainedTooFast', 'refuse', ['drain'], v => ({ pack: of({ dischargeRate_C: 40 }), current_A: v }), 10, 10.001],
  ['drainedTooFast', 'refuse', ['drain'], v => ({ current_A: 1, planned: { set_A: v } }), 2, 2.001],
  ['drainedTooFast', 'refuse', ['drain'], v => ({ pack: of({ capacity_Ah: 2 }), current_A: v }), 4, 4.001],
  ['sagsTooFar', 'refuse', ['drain'], planned('underLoad_V'), 3.4, 3.399],
  ['sinksAtOnce', 'refuse', ['drain'], planned('lasts_s'), 60, 59],
  [
    'aboveSource',
    'care',
    charging,
    v => ({ source: { kind: 'watts', of: 'supply', power_W: 12.6 }, current_A: v }),
    0.849,
    0.851,
  ],
  ['thickInput', 'note', charging, planned('input_A'), 8, 8.001],
  ['notInTheAir', 'refuse', ['carry'], planned('energy_Wh'), 160, 160.1],
  ['airApproval', 'must', ['carry'], planned('energy_Wh'), 100, 100.1],
  ['airApproval', 'must', ['carry'], v => ({ pack: of({ capacity_Ah: v }) }), 9, 9.01],
  ['leaveForTwo', 'must', ['carry'], planned('needLeave'), 2, 3],
]

/** Said only where nothing else forbids the charge. */
export const guiding: readonly LimitKey[] = [
  'slowStart',
  'cellsApart',
  'slowStartOnBoard',
  'currentTooHigh',
  'stepTooLarge',
  'aboveUsual',
  'tooSlow',
  'aboveSource',
]
/** Spoken of all that was asked for together. */
export const ofAll: readonly LimitKey[] = ['notAllReady', 'severalAtOnce', 'notAllCarried']
/** What stays with the pack once it was met. */
export const leaving: Readonly<Partial<Record<LimitKey, string>>> = {
  deadCell: 'revive',
  overCharged: 'overfull',
  cellsFarApart: 'cellsHurt',
}
