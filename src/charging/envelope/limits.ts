// Limits on what can be measured or computed. A row each: what it weighs, which number, on which side of what, and who says so.
// A limit sees no danger and no other row's number, so no hazard can soften another.

import { believedRate_C } from '../setting/bounds.ts'
import { practice, type Rule, type Weight } from '../situation/rule.ts'
import type { Act } from '../situation/situation.ts'
import type { Chemistry, Cited } from '../things/chemistry.ts'
import { cutoffStepDown_V } from '../things/practice.ts'
import { type Facts, type Known, mostDrain_A } from './facts.ts'

/** How a number is shown. */
export type Unit =
  | 'perCell'
  | 'voltage'
  | 'current'
  | 'rate'
  | 'temperature'
  | 'duration'
  | 'energy'
  | 'percent'
  | 'count'

/** Below and above leave the limit itself alone; upTo includes it. */
export type Side = 'below' | 'above' | 'upTo'

export interface Limit<W extends Weight = Weight> extends Rule<W> {
  readonly fact: keyof Facts
  readonly side: Side
  readonly unit: Unit
  readonly acts: readonly Act[]
  /** The limit for this situation; undefined where it has none. */
  than(known: Known): number | undefined
}

type Than = number | ((known: Known) => number | undefined)

const row =
  (side: Side) =>
  <const W extends Weight>(
    weight: W,
    acts: readonly Act[],
    fact: keyof Facts,
    unit: Unit,
    than: Than,
    from: string,
  ): Limit<W> => ({
    weight,
    acts,
    fact,
    unit,
    side,
    from,
    than: typeof than === 'number' ? () => than : than,
  })
const below = row('below')
const above = row('above')
const upTo = row('upTo')

const always: readonly Act[] = ['charge', 'drain', 'store', 'carry', 'board', 'look']
const charging: readonly Act[] = ['charge', 'board']
const judging: readonly Act[] = ['charge', 'board', 'look', 'drain']

/** A limit that the chemistry of the pack holds. */
const ofCell =
  (of: (chemistry: Chemistry) => Cited | undefined) =>
  ({ situation: { pack } }: Known) =>
    pack && of(pack.chemistry)?.value

const bandEnd =
  (end: 'from_C' | 'to_C', worst: (...values: number[]) => number) =>
  ({ situation: { pack } }: Known) =>
    pack && worst(...pack.chemistry.temperatureBands.value.map(band => band[end]))

const cells = 'cell datasheets'
const chargerParts = 'precharge thresholds of charger parts, cell datasheets'
const jeita = 'JEITA/BAJ guide of 2007 and cell datasheets'
const airRules = 'FAA PackSafe; 49 CFR 175.10(a)(18); IATA DGR 2.3'
const apart = practice('cells of one pack apart')
const boards = practice('packs of one kind and one state on a board')
const toBeStayedWith = practice('somebody stays with a charge')
const hour_s = 3600

/** Most pressing first within a weight. */
export const limits = {
  deadCell: below(
    'refuse',
    always,
    'lowest_V',
    'perCell',
    ofCell(c => c.damage_V),
    cells,
  ),
  overCharged: above(
    'refuse',
    always,
    'highest_V',
    'perCell',
    ofCell(c => ({ ...c.full_V, value: c.full_V.value + 0.05 })),
    'tolerance of IEC 62133-2 (from memory)',
  ),
  overFull: above(
    'refuse',
    ['charge', 'board', 'look'],
    'highest_V',
    'perCell',
    ofCell(c => c.full_V),
    cells,
  ),
  cellsFarApart: above('refuse', judging, 'spread_V', 'voltage', 0.2, apart),
  tooCold: below('refuse', charging, 'temperature_C', 'temperature', bandEnd('from_C', Math.min), jeita),
  tooHot: above('refuse', charging, 'temperature_C', 'temperature', bandEnd('to_C', Math.max), jeita),
  tooColdToDrain: below('refuse', ['drain'], 'temperature_C', 'temperature', -20, cells),
  tooHotToDrain: above('refuse', ['drain'], 'temperature_C', 'temperature', 60, cells),
  tooColdToStore: below('refuse', ['store'], 'temperature_C', 'temperature', -20, cells),
  tooHotToStore: above('refuse', ['store'], 'temperature_C', 'temperature', 45, cells),
  slowStartOnBoard: below(
    'refuse',
    ['board'],
    'lowest_V',
    'perCell',
    ofCell(c => c.precharge_V),
    practice('a slow start never on a board'),
  ),
  boardOfOne: below('refuse', ['board'], 'boardPacks', 'count', 2, boards),
  boardSeries: above('refuse', ['board'], 'boardSeries', 'count', 1, boards),
  boardChemistries: above('refuse', ['board'], 'boardChemistries', 'count', 1, boards),
  boardApart: above('refuse', ['board'], 'apart_V', 'voltage', 0.1, boards),
  boardFlow: above('refuse', ['board'], 'flowShare', 'percent', 1, boards),
  cutoffAboveFull: above(
    'refuse',
    charging,
    'cutoff_V',
    'perCell',
    ofCell(c => c.full_V),
    cells,
  ),
  cutoffTooLow: below(
    'refuse',
    charging,
    'cutoff_V',
    'perCell',
    ofCell(c => c.restFloor_V),
    practice('a charge ends above the landing volts'),
  ),
  noFittingCutoff: above(
    'refuse',
    charging,
    'cutoffMissed_V',
    'perCell',
    cutoffStepDown_V.value + 1e-9,
    cutoffStepDown_V.source,
  ),
  currentTooHigh: above(
    'refuse',
    charging,
    'current_A',
    'current',
    ({ bounds }) => bounds?.askable.value_A,
    cells,
  ),
  stepTooLarge: above(
    'refuse',
    charging,
    'smallestStep_A',
    'current',
    ({ bounds }) => bounds?.limits[0].value_A,
    cells,
  ),
  tooFewCells: below(
    'refuse',
    charging,
    'series',
    'count',
    ({ situation: { charger } }) => charger?.minSeries,
    'the charger',
  ),
  tooManyCells: above(
    'refuse',
    charging,
    'series',
    'count',
    ({ situation: { charger } }) => charger?.maxSeries,
    'the charger',
  ),
  noLeadToSee: below(
    'refuse',
    charging,
    'series',
    'count',
    ({ situation: { charger, balanceLead } }) =>
      charger?.needsBalanceLead && balanceLead !== true ? (balanceLead === false ? 99 : 2) : undefined,
    'the charger',
  ),
  inputOutside: above('refuse', charging, 'outsideInput_V', 'voltage', 0, 'the charger'),
  sourceAtFloor: upTo('refuse', charging, 'aboveFloor_V', 'voltage', 0, practice('a source keeps enough')),
  sourceRunsOut: below('refuse', charging, 'carried', 'count', 1, practice('a source keeps enough')),
  nothingToCharge: upTo(
    'refuse',
    ['charge'],
    'toGo',
    'voltage',
    0,
    practice('a pack at its goal is left alone'),
  ),
  drainedAlready: upTo(
    'refuse',
    ['drain'],
    'aboveStop_V',
    'voltage',
    0,
    practice('a pack is not drained below its floor'),
  ),
  drainedTooFast: above(
    'refuse',
    ['drain'],
    'drain_A',
    'current',
    ({ situation: { pack } }) => pack && mostDrain_A(pack),
    practice('2C without a discharge rate on the label'),
  ),
  notInTheAir: above('refuse', ['carry'], 'energy_Wh', 'energy', 160 + 1e-9, airRules),

  slowStart: below(
    'must',
    ['charge', 'look'],
    'lowest_V',
    'perCell',
    ofCell(c => c.precharge_V),
    chargerParts,
  ),
  veryLong: above('must', always, 'takes_s', 'duration', 12 * hour_s, toBeStayedWith),
  long: above('must', always, 'takes_s', 'duration', 4 * hour_s, toBeStayedWith),
  cellsApart: above('must', judging, 'spread_V', 'voltage', 0.1, apart),
  rateQuestioned: above(
    'must',
    charging,
    'labelRate_C',
    'rate',
    believedRate_C,
    practice('the large C figure on a pack is its discharge rate'),
  ),
  boardCharge: above('must', ['board'], 'apartCharge', 'percent', 0.25, boards),
  notAllCarried: above('must', charging, 'missing', 'count', 0, practice('a source keeps enough')),
  airApproval: above('must', ['carry'], 'energy_Wh', 'energy', 100 + 1e-9, airRules),

  veryCold: below('care', charging, 'temperature_C', 'temperature', 5, jeita),
  cold: below('care', charging, 'temperature_C', 'temperature', 10, jeita),
  warm: above('care', charging, 'temperature_C', 'temperature', 40, jeita),
  warmStore: above('care', ['store'], 'temperature_C', 'temperature', 30, cells),
  cellsUneven: above('care', judging, 'spread_V', 'voltage', 0.03, apart),
  aboveUsual: above(
    'care',
    charging,
    'current_A',
    'current',
    ({ bounds }) => bounds && bounds.wanted_A * 1.1,
    practice('faster than the usual rate wears the cells'),
  ),
  aboveSource: above(
    'care',
    charging,
    'current_A',
    'current',
    ({ bounds }) => bounds?.limits.find(({ kind }) => kind === 'source')?.value_A,
    'the source',
  ),
  tooSlow: below('care', charging, 'rate_C', 'rate', 0.05, practice('a charge so slow may never end')),

  belowFloor: below(
    'note',
    ['charge', 'look'],
    'lowest_V',
    'perCell',
    ofCell(c => c.restFloor_V),
    practice('pilots land above it'),
  ),
  cool: below('note', charging, 'temperature_C', 'temperature', 15, practice('cells feel the cold')),
  dischargeRate: above(
    'note',
    charging,
    'dischargeRate_C',
    'rate',
    0,
    practice('the large C figure on a pack is its discharge rate'),
  ),
  thickLeads: above(
    'note',
    charging,
    'current_A',
    'current',
    5,
    practice('plugs and solder joints grow warm'),
  ),
  thickInput: above(
    'note',
    charging,
    'input_A',
    'current',
    8,
    practice('thin leads and small sockets grow hot'),
  ),
} as const satisfies Readonly<Record<string, Limit>>

export type LimitKey = keyof typeof limits
