// What a label tells, for whoever reads it out.

import type { Told } from './relation.ts'
import { capacityIn, chemistryIn, countIn } from './values.ts'

const strange =
  /^(?:found|bought|used|second|flea|swap|strange|unknown|unmarked|mystery|nobody|gave|given|guess|maybe|perhaps|label|sticker|print|writing)/

/** Whether type, cells and capacity are told, and nothing of where it came from or that they are guessed. */
export const isLabelled = ({ values, marked: { words } }: Told): boolean =>
  chemistryIn(values) !== undefined &&
  countIn(values) !== undefined &&
  capacityIn(values) !== undefined &&
  !words.some(({ w }) => strange.test(w))
