// Which safety sentences an answer carries, most pressing first.

import type { Caution } from '../assistant/reply.ts'
import { rules } from './rules.ts'

export type { Caution }

import type { Situation } from './situation.ts'

/** Fits every question about charging, also one that could not be read. */
export const generalCaution: Caution = {
  key: 'stayWithIt',
  text: 'Charge on a surface that cannot burn, and stay with the pack until the charge has ended.',
}

/** More than this nobody reads. */
const mostCautions = 4

/** The cautions that fit, most pressing first; the general one always closes the list. */
export function cautionsFor(situation: Situation): readonly [Caution, ...Caution[]] {
  const fitting = rules
    .filter(rule => rule.fits(situation))
    .slice(0, mostCautions - 1)
    .map(({ key, text }) => ({ key, text }))
  const [first, ...rest] = [...fitting, generalCaution]
  return [first as Caution, ...rest]
}
