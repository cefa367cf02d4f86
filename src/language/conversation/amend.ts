// A short answer to what was asked before: it changes a detail, corrects one, or asks another thing about the same pack.

import { attempt } from '../../ground/problem.ts'
import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { Frame } from '../frames/frame.ts'
import type { Ranked } from '../model/index.ts'
import { type Choice, type Reading, takes } from '../reading/choose.ts'
import { type Fitted, fitTo, type Kept } from '../reading/fit.ts'
import { toldIn } from '../reading/told-pack.ts'
import { readPairs } from '../sentence/option-pairs.ts'
import type { CommandWords, Vocabulary } from '../sentence/vocabulary.ts'
import { answerTo } from './answer-to.ts'
import { asBefore, isPartOfBefore } from './as-before.ts'
import { opensAsking } from './asks-nothing.ts'
import { choiceOf } from './choice-of.ts'
import { followsSurely, isFewWords, namesPack, pointsTo } from './follow-up.ts'
import { goesBack } from './go-back.ts'
import { heldOn } from './lend.ts'
import { ofList } from './part-of-list.ts'

/** What a sentence makes of the frame's question: an answer to what we asked back, or a change of it; undefined where neither. */
export function amended(
  text: string,
  values: readonly Candidate[],
  ranked: readonly Ranked[],
  frame: Frame,
  vocabulary: Vocabulary,
  readBy: (command: CommandWords) => Reading = () => ({ values, free: {} }),
): Choice | undefined {
  const answered = frame.pending ? answerTo(text, values, frame, vocabulary) : undefined
  if (answered) return answered
  const back = goesBack(text, frame)
  if (back) return asIs(back, vocabulary)
  const command = vocabulary.find(({ name }) => name === frame.question.command)
  if (!command) return undefined
  const written = attempt(() => readPairs(text, command, true))
  if (written?.before === '') return choiceOf(fitTo(command, [], { ...frame.question.options, ...written.options }), {})
  if (turnsRound.test(text)) return turned(command, frame)
  // Whoever asks for a reason changes nothing, and "storage for a 6S" asks for another thing.
  const own = readBy(command)
  if (command.name === 'house set' && isFewWords(text) && Object.keys(own.free).length > 0)
    return choiceOf(fitTo(command, [], own.free), {})
  if (values.some(value => asksFor(value, command, vocabulary))) return undefined
  const isNumber = values.some(value => /\d/.test(value.text)) && /\bwhy not\b/i.test(text)
  const asksWhy = !isNumber && /^\W*(?:but |and |so )*(?:why|how come)\b/i.test(text)
  if (asksWhy || asksWhatItIs.test(text) || (values.length === 0 && !isPartOfBefore(text))) return undefined
  // Other words than values tell of no other name.
  const told = asBefore(text, own.values, command, frame)
  if (told.length === 0 && own.values.length > 0) return undefined
  // What was set is set anew, and not once more.
  const isAnew = !adds.test(text) && command.options.some(({ name }) => name === 'instead')
  const free: Kept = isAnew ? { instead: 'last' } : {}
  const read = { free, values: ofList(text, told, frame.question.options.packs) }
  const change = changed(command, read, frame, adds.test(text) && told.some(namesPack))
  if (!change) return undefined
  const { fitted, kept } = change
  const surely =
    isNumber ||
    tellsWarmth(text, read.values) ||
    isSamePack(values, frame) ||
    isPartOfBefore(text) ||
    isFedByIt(text, read.values, frame.question.options)
      ? 1
      : followsSurely(text, read.values, ranked, fitted, vocabulary)
  return { ...choiceOf(fitted, kept), score: surely * takes(command, fitted, read.values) }
}

/** Of a thing itself, and not of it behind the question before. */
const asksWhatItIs = /^\W*(?:(?:and|but|so) )*what(?:'?s| is| are)(?: an?)? [\w-]+\W*$/i

/** "Cold though, about 4 degrees": only how warm the pack is. */
const tellsWarmth = (text: string, values: readonly Candidate[]): boolean =>
  values.length === 1 && values[0]?.kind === 'temperature' && !opensAsking.test(text)

/** The pack of the cells that were asked about, now with its capacity. */
const isSamePack = (values: readonly Candidate[], { question: { options } }: Frame): boolean =>
  options.pack === undefined &&
  values.some(one => namesPack(one) && options.chemistry?.startsWith(`${one.pack?.series}S `))

/** "Could it charge a 2S 850": it is what was told to feed. */
const isFedByIt = (text: string, values: readonly Candidate[], { source }: Kept): boolean =>
  source !== undefined && pointsTo(text, values)

/** A level that is the name of another command, and no goal. */
const asksFor = ({ kind, text, cue = '' }: Candidate, { name }: CommandWords, vocabulary: Vocabulary): boolean =>
  kind === 'state' && text !== name && vocabulary.some(other => other.name === text) && !ofGoals.has(cue)
const ofGoals: ReadonlySet<string> = new Set(['to', 'from', 'at', 'until', 'till'])

/** The same once more, with what was only assumed of it. */
function asIs({ question, doubts }: Frame, vocabulary: Vocabulary): Choice | undefined {
  const command = vocabulary.find(({ name }) => name === question.command)
  return command && choiceOf({ ...fitTo(command, [], question.options), doubts }, {})
}

export interface Change {
  readonly fitted: Fitted
  readonly kept: Kept
}

const adds = /^\W*(?:and|plus|add|also|another)\b(?! (?:if|what|how|only|just|with only)\b)/i

/** The details of the frame hold on, but for those that the sentence gives anew; what it adds to a list stands behind it. */
export function changed(
  command: CommandWords,
  { values, free }: Reading,
  frame: Frame,
  isMore = false,
): Change | undefined {
  const { kept, before } = heldOn(frame, values)
  const fitted = fitTo(command, values, { ...kept, ...free }, before)
  // What changes nothing is no amendment.
  if (values.length > 0 && fitted.left.length === values.length) return undefined
  const [list, more] = [frame.question.options.packs, fitted.options.packs]
  const isAdded = isMore && list !== undefined && more !== undefined && values.some(namesPack)
  return { fitted: isAdded ? { ...fitted, options: { ...fitted.options, packs: `${list}; ${more}` } } : fitted, kept }
}

/** Nothing but that what feeds and what is charged change places; of leads it is a danger, and tells of them. */
export const turnsRound = /^\W*(?:(?:and|or|so|what about|how about|if) )*(?:the )?other way (?:a)?round\W*$/i

function turned(command: CommandWords, { question: { options } }: Frame): Choice | undefined {
  const { source = '', pack } = options
  if (pack === undefined || !toldIn(source)) return undefined
  return choiceOf(fitTo(command, [], { ...options, source: pack, pack: source }), {})
}
