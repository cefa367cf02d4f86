// Limits on what feeds a charge, on what is drained, and on what is carried aboard.

import { practice } from '../../situation/rule.ts'
import { mostDrain_A } from '../facts.ts'
import { above, below, besides, charging, type Limits, ofAll, upTo } from './row.ts'

const airRules = 'FAA PackSafe; 49 CFR 175.10(a)(18); IATA DGR 2.3'
const keepsEnough = practice('a source keeps enough')

/** Most pressing first within a weight. */
export const sourcesLimits = {
  inputOutside: above('refuse', charging, 'outsideInput_V', 'voltage', 0, 'the charger'),
  sourceAtFloor: upTo('refuse', charging, 'aboveFloor_V', 'voltage', 0, keepsEnough),
  sourceRunsOut: below('refuse', charging, 'carried', 'count', 1, keepsEnough),
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
  sinksAtOnce: below(
    'refuse',
    ['drain'],
    'lasts_s',
    'duration',
    60,
    practice('a load that a pack carries for a minute at least'),
  ),
  notAllCarried: ofAll(above('must', charging, 'missing', 'count', 0, keepsEnough)),
  aboveSource: besides(
    above(
      'care',
      charging,
      'current_A',
      'current',
      ({ bounds }) => bounds?.limits.find(({ kind }) => kind === 'source')?.value_A,
      'the source',
    ),
  ),
  thickInput: above(
    'note',
    charging,
    'input_A',
    'current',
    8,
    practice('thin leads and small sockets grow hot'),
  ),
  notInTheAir: above('refuse', ['carry'], 'energy_Wh', 'energy', 160 + 1e-9, airRules),
  airApproval: above('must', ['carry'], 'energy_Wh', 'energy', 100 + 1e-9, airRules),
} as const satisfies Limits
