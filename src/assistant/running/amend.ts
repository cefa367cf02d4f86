// A reply to an earlier answer that changes a thing of its question: "at 2A", "from 3.6V", "and for storage".

import { bestCover, candidatesOf } from '../../language/candidates/index.ts'
import { amended } from '../../language/conversation/amend.ts'
import { intentsOf } from '../../language/model/index.ts'
import { questionOf } from '../../language/reading/fit.ts'
import type { Question } from '../../language/sentence/question.ts'
import { readTyped } from '../../language/sentence/typed.ts'
import type { Vocabulary } from '../../language/sentence/vocabulary.ts'
import type { AnsweredMemory } from '../../memory/memory.ts'

/** Less sure than this, a reply among people is none of our business. */
const leastScore = 0.3

/** The question behind the answer, changed as `words` say; undefined where it answered none or they change none. */
export async function amendedQuestion(
  answerMessage: string,
  words: string,
  answered: AnsweredMemory,
  vocabulary: Vocabulary,
): Promise<Question | undefined> {
  const earlier = await answered.byAnswer(answerMessage)
  const typed = earlier && readTyped(earlier.question, vocabulary)
  if (!typed) return undefined
  const values = bestCover(candidatesOf(words))
  const frame = { question: typed.question, pending: undefined, doubts: [], names: [] }
  const choice = amended(words, values, intentsOf(words, values), frame, vocabulary)
  const fitted = choice && choice.score >= leastScore ? choice.fitted : undefined
  return fitted && !fitted.missing ? questionOf(fitted) : undefined
}
