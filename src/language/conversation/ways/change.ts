// A message that changes a detail of the question before it, or adds one.

import type { Candidate } from '../../candidates/sentence/candidate.ts'
import type { Frame } from '../../frames/frame.ts'
import { type Reading, takes } from '../../reading/choose.ts'
import { type Fitted, fitTo, type Kept } from '../../reading/fit.ts'
import { isTakenAlong } from '../../reading/signs/said-of-it.ts'
import { namesPack } from '../../reading/told/told-pack.ts'
import type { CommandWords, Vocabulary } from '../../sentence/vocabulary.ts'
import { asBefore } from '../behind/as-before.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'
import { followsSurely, namesWanted } from '../behind/follow-up.ts'
import { heldOn } from '../behind/lend.ts'
import { isPartOfBefore } from '../heard/part-of-before.ts'
import { ofList } from './part-of-list.ts'
import { rulesTold } from './rule-anew.ts'

const asksWhy = /^\W*(?:but |and |so )*(?:why|how come)\b/i
/** "Why not 3C": it is asked about as a change. */
const butWhyNot = /\bwhy not\b.*\d/i
/** "The other is a 2S LiFe, same volts?": what was asked before, of another pack. */
const asksSame = /\b(?:the )?same\b[^.,;?]{0,30}\?/i
/** Of a thing itself, and not of it behind the question before. */
export const asksWhatItIs = /^\W*(?:(?:and|but|so) )*what(?:'?s| is| are)(?: an?)? [\w-]+\W*$/i
const adds = /^\W*(?:and|plus|add|also|another)\b(?! (?:if|what|how|only|just|with only)\b)/i

/** A detail that is told anew, or another one. */
export const withChange: Way = (said, command) => {
  const { text, values, frame, vocabulary, readBy } = said
  const isPart = isPartOfBefore(text, values)
  const asksAnew =
    (asksWhy.test(text) && !butWhyNot.test(text)) ||
    asksWhatItIs.test(text) ||
    (values.some(isOnBoard) && !hangsOnBoard(command) && !namesWanted(text, values)) ||
    (isTakenAlong(text, values) && command.name !== 'travel') ||
    values.some(value => asksFor(value, command, vocabulary))
  if (asksAnew || (values.length === 0 && !isPart)) return undefined
  const { values: own, free: named } = readBy(command)
  // What bears another name begins anew.
  if (named.name !== undefined && named.name !== frame.question.options.name) return undefined
  const told = asBefore(text, own, command, frame)
  if (told.length === 0 && own.length > 0) return undefined
  const isInList = frame.question.options.packs !== undefined && joinsList.test(text) && told.some(namesPack)
  const isMore = isInList || adds.test(text)
  // What was set is set anew, and not once more.
  const isAnew = !isMore && command.options.some(({ name }) => name === 'instead')
  const { ports } = frame.question.options
  const onMorePorts = ports !== undefined && isMore && onOneMore.test(text) && { ports: `${Number(ports) + 1}` }
  const free: Kept = isAnew ? { instead: 'last' } : onMorePorts || rulesTold(command, named)
  const read = { free, values: ofList(text, told, frame.question.options.packs) }
  const change = changed(command, read, frame, isMore && told.some(namesPack))
  if (!change) return undefined
  const { fitted, kept } = change
  // "How many from a 4S 5000": what feeds is another one.
  const isOtherFeed = told.some(
    ({ kind, start }) => kind === 'source' && own.some(one => one.start === start && namesPack(one)),
  )
  const isSure = butWhyNot.test(text) || asksSame.test(text) || isPart || isInList || isOtherFeed
  const surely = isSure ? 1 : followsSurely({ ...said, values: read.values }, fitted)
  return { ...choiceOf(fitted, kept), score: surely * takes(command, fitted, read.values) }
}

/** It is charged, or compared, beside those that were told. */
const joinsList = /^\W*(?:(?:and|ok) )?(?:plus|add|another|also)\b|\b(?:also|too|as well)\b/i

const onOneMore = /\b(?:third|fourth|fifth|another|one more|extra) (?:outlet|port|output|channel|socket)\b/i

/** A level that is the name of another command, and no goal: "storage for a 6S". */
const asksFor = ({ kind, text, cue = '' }: Candidate, { name }: CommandWords, vocabulary: Vocabulary): boolean =>
  kind === 'state' && text !== name && vocabulary.some(other => other.name === text) && !ofGoals.has(cue)
const ofGoals: ReadonlySet<string> = new Set(['to', 'from', 'at', 'until', 'till'])

/** "Two such packs in parallel": another command tells what a board gets. */
const isOnBoard = ({ kind, typed }: Candidate): boolean => kind === 'board' && /paral|board/i.test(typed)
const hangsOnBoard = ({ options }: CommandWords): boolean =>
  options.some(({ name }) => name === 'places' || name === 'ports')

/** The details of the frame hold on, but for those that the sentence gives anew; what it adds to a list stands behind it. */
export function changed(
  command: CommandWords,
  { values, free }: Reading,
  frame: Frame,
  isMore = false,
): { fitted: Fitted; kept: Kept } | undefined {
  const { kept, before } = heldOn(frame, values)
  const fitted = fitTo(command, values, { ...kept, ...free }, before)
  // What changes nothing is no amendment.
  if (values.length > 0 && fitted.left.length === values.length) return undefined
  const [list, more] = [frame.question.options.packs, fitted.options.packs]
  const packs: Kept = isMore && list && more ? { packs: `${list}; ${more}` } : {}
  return { fitted: { ...fitted, options: { ...fitted.options, ...packs } }, kept }
}
