// Limits on what is set: cutoff, current, and how long somebody has to stay with it.

import { believedRate_C } from '../../setting/bounds.ts'
import { practice } from '../../situation/rule.ts'
import { cutoffStepDown_V } from '../../things/practice.ts'
import { above, always, below, besides, cells, charging, type Limits, ofAll, ofCell, upTo } from './row.ts'

const toBeStayedWith = practice('somebody stays with a charge')
const largeFigure = practice('the large C figure on a pack is its discharge rate')
const hour_s = 3600
/** Less than a meter or a charger shows: there is no charge so short. */
const aMeterApart_V = 0.005
/** What rounding a set current to its step may add. */
const rounding_A = 1e-9

/** Most pressing first within a weight. */
export const settingLimits = {
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
    ({ bounds }) => bounds && bounds.askable.value_A + rounding_A,
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
  nothingToCharge: upTo(
    'refuse',
    charging,
    'toGo',
    'voltage',
    aMeterApart_V,
    practice('a pack at its goal is left alone'),
  ),
  rateQuestioned: above('must', charging, 'labelRate_C', 'rate', believedRate_C, largeFigure),
  aboveUsual: above(
    'care',
    charging,
    'current_A',
    'current',
    ({ bounds }) => bounds && bounds.wanted_A * 1.1,
    practice('faster than the usual rate wears the cells'),
  ),
  tooSlow: below('care', charging, 'rate_C', 'rate', 0.05, practice('a charge so slow may never end')),
  notAllReady: ofAll(above('care', charging, 'short', 'count', 0, practice('a charge is never hurried'))),
  severalAtOnce: ofAll(above('care', charging, 'atOnce', 'count', 1, practice('a pack that fails sets none alight'))),
  dischargeRate: above('note', charging, 'dischargeRate_C', 'rate', 0, largeFigure),
  thickLeads: besides(
    above('note', charging, 'current_A', 'current', 5, practice('plugs and solder joints grow warm')),
  ),
  veryLong: above('must', always, 'takes_s', 'duration', 12 * hour_s, toBeStayedWith),
  long: above('must', always, 'takes_s', 'duration', 4 * hour_s, toBeStayedWith),
} as const satisfies Limits
