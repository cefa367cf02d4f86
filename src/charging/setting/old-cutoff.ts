// Which voltage to set: the target's, never above full, and one that the charger has.

import type { Chemistry } from '../things/chemistry.ts'
import type { HouseLimits } from '../things/house-limits.ts'
import type { Target } from '../things/level.ts'
import { cutoffStepDown_V } from '../things/practice.ts'
import { type Refused, refuse } from './refusal.ts'

/** Volts that count as equal: a charger shows two decimals. */
const tolerance_V = 0.005

export interface Cutoff {
  readonly perCell_V: number
  /** What was asked for, where something made it lower. */
  readonly asked_V: number
  readonly loweredBy?: 'house' | 'charger' | 'temperature'
}

/** Full voltage of one cell under the rules of the house, in V. */
export function fullVoltage_V(chemistry: Chemistry, limits: HouseLimits): number {
  const gentle_V = limits.gentleLiIon ? chemistry.gentleFull_V : undefined
  return (gentle_V ?? chemistry.full_V).value
}

/** `cutoffs_V` are those that the charger offers, where it offers only some; `warmest_V` is the highest voltage per cell that the temperature allows. Refuses a target that no setting may reach. */
export function chooseCutoff(
  chemistry: Chemistry,
  target: Target | undefined,
  limits: HouseLimits,
  cutoffs_V: readonly number[] | undefined,
  warmest_V: number,
): Cutoff | Refused {
  const houseFull_V = fullVoltage_V(chemistry, limits)
  const asked_V = target === undefined ? houseFull_V : targetVoltage_V(target)
  if (asked_V > chemistry.full_V.value + 1e-9) {
    return refuse({ kind: 'cutoff above full', cutoffPerCell_V: asked_V, full_V: chemistry.full_V.value })
  }
  if (asked_V < chemistry.restFloor_V.value) {
    return refuse({ kind: 'cutoff too low', cutoffPerCell_V: asked_V, least_V: chemistry.restFloor_V.value })
  }
  const allowed_V = Math.min(asked_V, houseFull_V, warmest_V)
  const lowered = { house: houseFull_V, temperature: warmest_V }
  const cause = (['house', 'temperature'] as const).find(
    by => allowed_V < asked_V && allowed_V === lowered[by],
  )
  const settable_V = cutoffs_V ? nearestBelow(cutoffs_V, allowed_V) : allowed_V
  if (settable_V === undefined) {
    return refuse({ kind: 'no fitting cutoff', wanted_V: allowed_V, cutoffs_V: cutoffs_V ?? [] })
  }
  const loweredBy = settable_V < allowed_V - tolerance_V ? 'charger' : cause
  return { perCell_V: settable_V, asked_V, loweredBy }
}

const targetVoltage_V = (target: Target): number =>
  target.kind === 'voltage' ? target.perCell_V : target.cutoffPerCell_V

/** The highest listed cutoff at or below `allowed_V`, if it lies near enough to be worth a charge. */
function nearestBelow(cutoffs_V: readonly number[], allowed_V: number): number | undefined {
  const fitting = cutoffs_V.filter(
    cutoff_V => cutoff_V <= allowed_V + 1e-9 && cutoff_V >= allowed_V - cutoffStepDown_V.value - 1e-9,
  )
  return fitting.length > 0 ? Math.max(...fitting) : undefined
}
