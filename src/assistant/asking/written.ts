// A question written in notation, and what stands in plain words between its command and its details.

import { bestCover, candidatesOf } from '../../language/candidates/index.ts'
import { fitTo, questionOf } from '../../language/reading/fit.ts'
import { readTyped } from '../../language/sentence/typed.ts'
import type { Vocabulary } from '../../language/sentence/vocabulary.ts'

/** Undefined where the text is a plain sentence. */
export function readWritten(text: string, vocabulary: Vocabulary) {
  const typed = readTyped(text, vocabulary)
  if (!typed) return undefined
  const { question, command, before } = typed
  if (before === '') return { question, spoken: '' }
  const fitted = fitTo(command, bestCover(candidatesOf(before)), question.options)
  return { question: { ...questionOf(fitted), told: question.told }, spoken: before }
}
