// Amps that are meant for what a pack holds: "2200 A", "800 milliamps".

import type { Measure } from '../sentence/measures.ts'
import type { Sentence } from '../sentence/sentence.ts'
import { measured } from './draft.ts'

/** "2200 A" on a pack: no amps that anything here gives, but its mAh. */
export function sloppyAmpsAt(sentence: Sentence, at: number): { value: number; after: number } | undefined {
  const measure = measured(sentence, at, 'current')
  return measure && measure.value >= sloppyAmps ? { value: measure.value / 1000, after: measure.after } : undefined
}
/** More is told with the wrong unit. */
export const sloppyAmps = 300

/** "800 milliamps" that may be meant for mAh: none that a charger gives or that is to be set. */
export function milliampsAt(sentence: Sentence, at: number): Measure | undefined {
  const measure = measured(sentence, at, 'current')
  const isMilli = measure !== undefined && /^m/.test(sentence.word(measure.numeral.after)) && measure.value >= 0.06
  return isMilli && !/^(?:charg|output|current|adapt|supply)/.test(sentence.word(measure.after)) ? measure : undefined
}
