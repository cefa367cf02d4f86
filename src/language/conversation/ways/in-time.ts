// "No hurry, let it have two hours", behind what a pack is charged with: what there is time for.

import type { Kept } from '../../reading/fit.ts'
import type { Way } from '../behind/behind.ts'
import { choiceBy } from '../behind/choice-of.ts'
import { lentTo } from '../behind/lend.ts'

const hasTime =
  /\b(?:let it (?:have|take)|give it|it (?:may|can|could) take|there(?:'s| is| are)|(?:i|we)(?:'ve| have| had)(?: only)?(?: got)?|have (?:all of )?|only have)\b/i

/** Then another current than was set is what is looked for. */
const hasPlenty = /\b(?:let it|give it|it (?:may|can|could) take|no (?:hurry|rush)|plenty)\b/i

export const inTime: Way = ({ text, values, frame, vocabulary }) => {
  const { command, options } = frame.question
  const time = vocabulary.find(({ name }) => name === 'time')
  const [there, ...others] = values
  const isOfOne = (command === 'current' || command === 'time') && options.pack !== undefined && !frame.pending
  if (!time || !isOfOne || there?.kind !== 'duration' || others.length > 0 || !hasTime.test(text)) return undefined
  const { kept, before } = lentTo(frame, time, text, [])
  const { current, within: _, ...held } = kept
  const set: Kept = hasPlenty.test(text) || current === undefined ? {} : { current }
  return choiceBy(time, [{ ...there, cue: 'within' }], { kept: { ...held, ...set }, before })
}
