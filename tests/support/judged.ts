// What the envelope says of something told, where nothing else is known around it.

import { type Judgement, judge } from '../../src/charging/envelope/judge.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import { situationOf, type Told } from '../../src/charging/situation/situation.ts'
import { type HouseLimits, noHouseLimits } from '../../src/charging/things/house-limits.ts'

export const judged = (told: Told, house: HouseLimits = noHouseLimits): Judgement =>
  judge(situationOf(told, { house, dangers: [], doubts: [] }))

/** The rules that refuse it. */
export const refusedBy = (told: Told, house?: HouseLimits): readonly string[] =>
  judged(told, house)
    .found.filter(({ weight }) => weight === 'refuse')
    .map(({ key }) => key)

/** Throws an Error where it is refused: a fault of the test. */
export function permitFor(told: Told, house?: HouseLimits): Permit {
  const { permit } = judged(told, house)
  if (!permit) throw new Error(`refused: ${refusedBy(told, house).join(', ')}`)
  return permit
}
