// What a message makes of the question before it: the ways of going on, of which the first that holds is meant.

import { attempt } from '../../ground/problem.ts'
import type { Choice } from '../reading/choose.ts'
import { fitTo } from '../reading/fit.ts'
import { toldIn } from '../reading/told/told-pack.ts'
import { readPairs } from '../sentence/option-pairs.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'
import { answerTo } from './answer-to.ts'
import type { Behind, Way } from './behind.ts'
import { withChange } from './change.ts'
import { choiceOf } from './choice-of.ts'
import { isFewWords } from './follow-up.ts'
import { goesBack } from './go-back.ts'
import { withOneMore } from './more-of.ts'
import { otherQuestion } from './other-question.ts'
import { stays } from './stay.ts'

const ways: readonly Way[] = [
  withOneMore,
  otherQuestion,
  stays,
  answerTo,
  // "The first one again", with what was only assumed of it.
  ({ text, frame, vocabulary }) => {
    const { question, doubts = [] } = goesBack(text, frame) ?? {}
    const command = vocabulary.find(({ name }) => name === question?.command)
    return question && command && choiceOf({ ...fitTo(command, [], question.options), doubts }, {})
  },
  // "Current: 2A", in notation.
  ({ text, frame: { question } }, command) => {
    const written = attempt(() => readPairs(text, command, true))
    return written?.before === ''
      ? choiceOf(fitTo(command, [], { ...question.options, ...written.options }), {})
      : undefined
  },
  // "The other way round": what feeds and what is charged change places.
  ({ text, frame: { question } }, command) => {
    const { source = '', pack } = question.options
    return turnsRound.test(text) && pack !== undefined && toldIn(source)
      ? choiceOf(fitTo(command, [], { ...question.options, source: pack, pack: source }), {})
      : undefined
  },
  // A rule of the club in few words.
  ({ text, readBy }, command) => {
    const free = readBy?.(command).free ?? {}
    return command.name === 'house set' && isFewWords(text) && Object.keys(free).length > 0
      ? choiceOf(fitTo(command, [], free), {})
      : undefined
  },
  withChange,
]

/** The question that comes of it; undefined where the message begins anew. */
export function followUp(behind: Behind): Choice | undefined {
  const command = behind.vocabulary.find(({ name }) => name === behind.frame.question.command)
  for (const way of command ? ways : []) {
    const choice = way(behind, command as CommandWords)
    if (choice) return choice
  }
  return undefined
}

/** Nothing but that what feeds and what is charged change places; of leads it is a danger, and tells of them. */
export const turnsRound = /^\W*(?:(?:and|or|so|what about|how about|if) )*(?:the )?other way (?:a)?round\W*$/i
