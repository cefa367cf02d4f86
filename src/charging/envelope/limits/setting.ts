// Limits on what is set: cutoff, current, and how long somebody has to stay with it.

import { believedRate_C } from '../../setting/bounds.ts'
import { practice } from '../../situation/rule.ts'
import { cutoffStepDown_V } from '../../things/practice.ts'
import { above, always, below, besides, cells, charging, guiding, type Limits, ofAll, ofCell, upTo } from './row.ts'

const toBeStayedWith = practice('somebody stays with a charge')
const largeFigure = practice('the large C number on a pack is its discharge rate')
const hour_s = 3600
/** Less than a meter or a charger shows: there is no charge so short. */
const aMeterApart_V = 0.005
/** What rounding a set current to its step may add. */
const rounding_A = 1e-9

/** Most pressing first within a weight. */
export const settingLimits = {
  cutoffAboveFull: above('refuse', charging, 'cutoff_V', cells, ofCell('full_V')),
  cutoffTooLow: below(
    'refuse',
    charging,
    'cutoff_V',
    practice('a charge ends above the landing volts'),
    ofCell('restFloor_V'),
  ),
  noFittingCutoff: above('refuse', charging, 'cutoffMissed_V', cutoffStepDown_V.source, cutoffStepDown_V.value + 1e-9),
  currentTooHigh: guiding(
    above('refuse', charging, 'current_A', cells, ({ bounds }) => bounds && bounds.askable.value_A + rounding_A),
  ),
  stepTooLarge: guiding(above('refuse', charging, 'smallestStep_A', cells, ({ bounds }) => bounds?.limits[0].value_A)),
  tooFewCells: below('refuse', charging, 'series', 'the charger', ({ situation: { charger } }) => charger?.minSeries),
  tooManyCells: above('refuse', charging, 'series', 'the charger', ({ situation: { charger } }) => charger?.maxSeries),
  noLeadToSee: below('refuse', charging, 'series', 'the charger', ({ situation: { charger, balanceLead } }) =>
    charger?.needsBalanceLead && balanceLead !== true ? (balanceLead === false ? 99 : 2) : undefined,
  ),
  nothingToCharge: upTo('refuse', charging, 'toGo', practice('a pack at its goal is left alone'), aMeterApart_V),
  rateQuestioned: above('must', charging, 'labelRate_C', largeFigure, believedRate_C),
  aboveUsual: guiding(
    above(
      'care',
      charging,
      'current_A',
      practice('faster than the usual rate wears the cells'),
      ({ bounds }) => bounds && bounds.wanted_A * 1.1,
    ),
  ),
  tooSlow: guiding(below('care', charging, 'rate_C', practice('a charge so slow may never end'), 0.05)),
  notAllReady: ofAll(above('care', charging, 'short', practice('a charge is never hurried'), 0)),
  severalAtOnce: ofAll(above('care', charging, 'atOnce', practice('a pack that fails sets none alight'), 1)),
  dischargeRate: above('note', charging, 'dischargeRate_C', largeFigure, 0),
  thickLeads: besides(above('note', charging, 'current_A', practice('plugs and solder joints grow warm'), 5)),
  veryLong: above('must', always, 'takes_s', toBeStayedWith, 12 * hour_s),
  long: above('must', always, 'takes_s', toBeStayedWith, 4 * hour_s),
} as const satisfies Limits
