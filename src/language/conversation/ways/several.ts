// "And for three of them", "two of those one by one", behind a question about one pack: how long all of them take.

import { wordSet } from '../../../ground/word-set.ts'
import type { Candidate } from '../../candidates/index.ts'
import type { Way } from '../behind/behind.ts'
import { choiceBy } from '../behind/choice-of.ts'
import { lentTo } from '../behind/lend.ts'
import { wordsBeside } from '../heard/words-beside.ts'

/** Another word may ask for something else. */
const plain = wordSet(
  'and so but ok then what how about long when for with if i have charge do done total time will is it that take takes all one by after another other the in a row turn of them these those same such more packs lipos batteries ones',
)
const ofThose = /\b(?:of (?:them|these|those|the same)|(?:such|those|these|more) (?:packs|lipos|batteries|ones))\b/i
const isMany = ({ kind, text }: Candidate): boolean => kind === 'count' && Number(text) > 1
/** "One by one", "one after another", "at once". */
const isManner = ({ kind, text, typed }: Candidate): boolean =>
  (kind === 'count' && text === '1') || kind === 'number' || (kind === 'board' && /once|time/i.test(typed))

export const several: Way = ({ text, values, frame, vocabulary }, { name }) => {
  const { pack, source, count } = frame.question.options
  const isOfOne = (name === 'current' || name === 'time') && pack !== undefined && !frame.pending
  const [many, ...others] = values.filter(value => !isManner(value))
  const plan = vocabulary.find(one => one.name === 'plan')
  if (!plan || !isOfOne || source !== undefined || count !== undefined || !ofThose.test(text)) return undefined
  const isPlain = wordsBeside(text, values).every(word => plain.has(word))
  return many && isMany(many) && others.length === 0 && isPlain
    ? choiceBy(plan, [many], lentTo(frame, plan, text, [many]))
    : undefined
}
