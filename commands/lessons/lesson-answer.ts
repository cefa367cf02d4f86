// Marks the answer to the question that waits, and notes what was learned.

import { required, service } from '../../src/assistant/command.ts'
import { plainText } from '../../src/ground/plain-text.ts'
import { findQuestion } from '../../src/handbook/lessons/index.ts'
import type { DrawnQuestion } from '../../src/handbook/teaching/asking.ts'
import { drawFrom } from '../../src/handbook/teaching/draw.ts'
import type { Lesson } from '../../src/handbook/teaching/taught.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import { type Progress, progressOf } from './progress.ts'

/** As typed: what it must be depends on the question. */
const answerKind: ValueKind<string> = {
  name: 'lesson answer',
  example: '0.72A',
  read: text => ({ value: plainText(text), assumed: [] }),
  write: text => text,
  complete: () => [],
}

export interface Marked {
  readonly lesson: Lesson
  readonly question: DrawnQuestion
  readonly isRight: boolean
  readonly progress: Progress
}

export const lessonAnswer = service({
  name: 'lesson answer',
  takes: { is: required(answerKind) },
  examples: ['lesson answer a', 'lesson answer 0.72A'],
  changes: true,
  notStanding: true,
  run: async ({ is: given }, context): Promise<{ readonly marked: Marked | undefined }> => {
    const { asker, memory } = context
    const pending = await memory.lessons.pending(asker.id)
    const found = pending && findQuestion(pending.question)
    if (!found) return { marked: undefined }
    const question = found.question.draw(drawFrom(pending.seed), context)
    const isRight = question.isRight(given)
    if (!(await memory.lessons.settle(asker.id, pending, isRight))) return { marked: undefined }
    const progress = progressOf(await memory.lessons.learned(asker.id))
    return { marked: { lesson: found.lesson, question, isRight, progress } }
  },
})
