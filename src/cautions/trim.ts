// Cautions for checking a charger with a meter.

import { type Caution, cautionsFor } from './cautions.ts'
import type { Situation } from './situation.ts'

const trimming: readonly [Caution, ...Caution[]] = [
  {
    key: 'trustTheMeterFirst',
    text: 'Check the meter first, against a second one or a reference: half a percent of 4.2 V is 0.02 V, as much as the tolerance.',
  },
  {
    key: 'oneSlipShorts',
    text: 'Measure at the balance plug, cell by cell, with thin insulated probes: one slip there shorts a cell.',
  },
]

/** With the most pressing caution of the pack, and the one that fits every charge. */
export function trimCautions(situation: Situation): readonly [Caution, ...Caution[]] {
  const [pressing, ...fitting] = cautionsFor(situation)
  const last = fitting.slice(-1)
  if (situation.refusal) return [pressing, ...trimming, ...last]
  const [first, ...rest] = trimming
  return [first, ...rest, pressing, ...last]
}
