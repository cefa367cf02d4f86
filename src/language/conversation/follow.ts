// What a message makes of the question before it: the ways of going on, of which the first that holds is meant.

import { attempt } from '../../ground/problem.ts'
import type { Choice } from '../reading/choose.ts'
import { fitTo } from '../reading/fit.ts'
import { readPairs } from '../sentence/option-pairs.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'
import { answerTo } from './answer-to.ts'
import { asksQuantity } from './asks-quantity.ts'
import type { Behind, Way } from './behind.ts'
import { withChange } from './change.ts'
import { choiceOf } from './choice-of.ts'
import { stays } from './stay.ts'

const ways: readonly Way[] = [
  asksQuantity,
  stays,
  answerTo,
  // "Current: 2A", in notation.
  ({ text, frame: { question } }, command) => {
    const written = attempt(() => readPairs(text, command, true))
    return written?.before === ''
      ? choiceOf(fitTo(command, [], { ...question.options, ...written.options }), {})
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
