// The currents that a question about time names, as a charger can be set to them.

import type { Charger } from '../../src/charging/things/charger.ts'
import { largestStep_A, nearestStep_A, smallestStep_A } from '../../src/charging/things/steps.ts'
import { Problem } from '../../src/ground/problem.ts'
import { currentKind } from '../../src/language/kinds/values.ts'
import { endBelow, endsFirst, stepsBetween, tooLow } from './problems.words.ts'

/** The charger's largest step not above `asked_A`. Throws a Problem where even its smallest one is. */
export function currentOn(charger: Charger | undefined, asked_A: number): number {
  if (!charger) return asked_A
  const step_A = nearestStep_A(charger.currents, asked_A, asked_A)
  if (step_A !== undefined) return step_A
  const least_A = smallestStep_A(charger.currents)
  throw new Problem({
    what: tooLow,
    token: currentKind.write(asked_A),
    expected: stepsBetween(least_A, largestStep_A(charger.currents)),
    example: `current: ${currentKind.write(least_A)}`,
  })
}

/** Throws a Problem for a charge that would end at `until_A` before it has begun at `current_A`. */
export function refuseLateEnd(until_A: number, current_A: number): void {
  if (until_A < current_A) return
  throw new Problem({
    what: endsFirst,
    token: currentKind.write(until_A),
    expected: endBelow(current_A),
    example: `until: ${currentKind.write(Number((current_A / 10).toPrecision(2)))}`,
  })
}
