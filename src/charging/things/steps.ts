// Which current to set: the charger's step nearest to the wanted one that exceeds no limit.

import type { CurrentSteps } from './charger.ts'

/** What a charger of unknown steps is taken to offer. */
export const anyCurrent: CurrentSteps = { kind: 'range', from_A: 0.01, to_A: 60, increment_A: 0.01 }

export function smallestStep_A(currents: CurrentSteps): number {
  return currents.kind === 'list' ? Math.min(...currents.steps_A) : currents.from_A
}

export function largestStep_A(currents: CurrentSteps): number {
  return currents.kind === 'list' ? Math.max(...currents.steps_A) : currents.to_A
}

/** The step nearest to `wanted_A` among those not above `limit_A`, the lower of two as near; undefined if none is. */
export function nearestStep_A(currents: CurrentSteps, wanted_A: number, limit_A: number): number | undefined {
  const candidates = currents.kind === 'list' ? currents.steps_A : aroundInRange(currents, wanted_A, limit_A)
  const allowed = candidates.filter(step_A => step_A <= limit_A).sort((a, b) => a - b)
  return allowed.reduce<number | undefined>(
    (best, step_A) => (best === undefined || Math.abs(step_A - wanted_A) < Math.abs(best - wanted_A) ? step_A : best),
    undefined,
  )
}

/** The next step above or below `current_A`, where there is one. */
export function neighbourStep_A(currents: CurrentSteps, current_A: number, direction: 1 | -1): number | undefined {
  const candidates =
    currents.kind === 'list' ? currents.steps_A : [rangeStep(currents, indexIn(currents, current_A) + direction)]
  const beyond = candidates.filter(
    step_A =>
      (step_A - current_A) * direction > 1e-6 &&
      step_A >= smallestStep_A(currents) - 1e-9 &&
      step_A <= largestStep_A(currents) + 1e-9,
  )
  if (beyond.length === 0) return undefined
  return direction === 1 ? Math.min(...beyond) : Math.max(...beyond)
}

type Range = Extract<CurrentSteps, { kind: 'range' }>
const indexIn = ({ from_A, increment_A }: Range, current_A: number): number => (current_A - from_A) / increment_A

/** A few steps about the wanted current or the limit, whichever is lower, and the first. */
function aroundInRange(range: Range, wanted_A: number, limit_A: number): number[] {
  const middle = Math.floor(indexIn(range, Math.min(wanted_A, limit_A, range.to_A)))
  return [0, middle - 1, middle, middle + 1]
    .filter(index => index >= 0)
    .map(index => rangeStep(range, index))
    .filter(step_A => step_A <= range.to_A)
}

/** Rid of the digits that binary fractions add: 0.1 three times is 0.3. */
const rangeStep = ({ from_A, increment_A }: Range, index: number): number =>
  Number((from_A + index * increment_A).toFixed(6))
