// Limits on what feeds a charge, on what is drained, and on what is carried aboard.

import { practice } from '../../situation/rule.ts'
import { airLimits } from '../../upkeep/transport.ts'
import { mostDrain_A } from './facts.ts'
import { above, below, besides, charging, type Limits, ofAll, ofCell, upTo } from './row.ts'

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
    practice('2C, or a quarter of the discharge rate on the label where that is more'),
  ),
  sagsTooFar: below(
    'refuse',
    ['drain'],
    'underLoad_V',
    'perCell',
    ofCell(c => c.loadFloor_V),
    practice('no cell sinks below its floor while it carries a load'),
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
  thickInput: above('note', charging, 'input_A', 'current', 8, practice('thin leads and small sockets grow hot')),
  notInTheAir: above('refuse', ['carry'], 'energy_Wh', 'energy', airLimits.value.approved_Wh + 1e-9, airLimits.source),
  leaveForTwo: above('must', ['carry'], 'needLeave', 'count', airLimits.value.approvedSpares, airLimits.source),
  airApproval: above('must', ['carry'], 'energy_Wh', 'energy', airLimits.value.free_Wh + 1e-9, airLimits.source),
} as const satisfies Limits
