// Limits on what feeds a charge, on what is drained, and on what is carried aboard.

import { practice } from '../../situation/rule.ts'
import { airLimits } from '../../upkeep/transport.ts'
import { mostDrain_A } from './facts.ts'
import { above, below, besides, charging, guiding, type Limits, ofAll, ofCell, upTo } from './row.ts'

const keepsEnough = practice('a source keeps enough')

/** Most pressing first within a weight. */
export const sourcesLimits = {
  inputOutside: above('refuse', charging, 'outsideInput_V', 'the charger', 0),
  sourceAtFloor: upTo('refuse', charging, 'aboveFloor_V', keepsEnough, 0),
  sourceRunsOut: below('refuse', charging, 'carried', keepsEnough, 1),
  drainedAlready: upTo('refuse', ['drain'], 'aboveStop_V', practice('a pack is not drained below its floor'), 0),
  drainedTooFast: above(
    'refuse',
    ['drain'],
    'drain_A',
    practice('2C, or a quarter of the discharge rate on the label where that is more'),
    ({ situation: { pack } }) => pack && mostDrain_A(pack),
  ),
  sagsTooFar: below(
    'refuse',
    ['drain'],
    'underLoad_V',
    practice('no cell sinks below its floor while it carries a load'),
    ofCell('loadFloor_V'),
  ),
  sinksAtOnce: below('refuse', ['drain'], 'lasts_s', practice('a load that a pack carries for a minute at least'), 60),
  notAllCarried: ofAll(above('must', charging, 'missing', keepsEnough, 0)),
  aboveSource: guiding(
    besides(
      above(
        'care',
        charging,
        'current_A',
        'the source',
        ({ bounds }) => bounds?.limits.find(({ kind }) => kind === 'source')?.value_A,
      ),
    ),
  ),
  thickInput: above('note', charging, 'input_A', practice('thin leads and small sockets grow hot'), 8),
  notInTheAir: above('refuse', ['carry'], 'energy_Wh', airLimits.source, airLimits.value.approved_Wh + 1e-9),
  leaveForTwo: above('must', ['carry'], 'needLeave', airLimits.source, airLimits.value.approvedSpares),
  airApproval: above('must', ['carry'], 'energy_Wh', airLimits.source, airLimits.value.free_Wh + 1e-9),
} as const satisfies Limits
