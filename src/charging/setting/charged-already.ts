// Is there anything to charge: a pack at or above its target is left alone.

import { restingVoltage, socAt } from '../things/curve.ts'
import type { State, Target } from '../things/level.ts'
import type { Pack } from '../things/pack.ts'
import { type Refused, refuse } from './refusal.ts'

/** A refusal where `from` is at or above `target`; undefined where there is something to charge. */
export function whyNothingToCharge(pack: Pack, from: State, target: Target): Refused | undefined {
  const chemistry = pack.chemistry
  const start_V = from.kind === 'rest' ? from.perCell_V : restingVoltage(chemistry, from.soc)
  const start = from.kind === 'soc' ? from.soc : socAt(chemistry, from.perCell_V)
  const reached = target.kind === 'soc' ? start >= target.soc : start_V >= target.perCell_V
  return reached ? refuse({ kind: 'charged already', target }) : undefined
}
