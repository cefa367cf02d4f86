// A reply to an earlier answer that changes one thing of its question: "at 2A", "from 3.6V".

import { attempt } from '../../ground/problem.ts'
import { amendQuestion, type Question, readQuestion } from '../../language/sentence/question.ts'
import type { Vocabulary } from '../../language/sentence/vocabulary.ts'
import type { AnsweredMemory } from '../../memory/memory.ts'

/** The question behind the answer, changed as `words` say; undefined where it answered none or they change none. */
export async function amendedQuestion(
  answerMessage: string,
  words: string,
  answered: AnsweredMemory,
  vocabulary: Vocabulary,
): Promise<Question | undefined> {
  const earlier = await answered.byAnswer(answerMessage)
  if (!earlier) return undefined
  return attempt(() => amendQuestion(readQuestion(earlier.question, vocabulary), words, vocabulary))
}
