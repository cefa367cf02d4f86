// What the answer rests on though nobody said it: never a plain go.

import { practice, type Rule, type Weight } from './rule.ts'

const doubted = <const W extends Weight>(weight: W): Rule<W> => ({
  weight,
  from: practice('what was not told is not taken for fine'),
})

export const doubts = {
  /** The likeliest was taken; the answer says what the others would be. */
  chemistryAssumed: doubted('must'),
  /** Words of the question that may matter were not understood. */
  notUnderstood: doubted('care'),
  /** Asked in a language that is read in part only. */
  foreignTongue: doubted('care'),
  /** A charge rate above 5C was told as one: it is the discharge rate of most labels. */
  rateQuestioned: doubted('must'),
} as const satisfies Readonly<Record<string, Rule>>

export type Doubt = keyof typeof doubts
