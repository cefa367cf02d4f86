// Marks the answer to the question that waits, explains it, and notes what was learned.

import { defineCommand, required } from '../../src/assistant/old-command.ts'
import type { Answer, FollowUp } from '../../src/assistant/reply.ts'
import { cautionsFor, generalCaution } from '../../src/cautions/cautions.ts'
import { plainText } from '../../src/ground/plain-text.ts'
import { drawFrom } from '../../src/handbook/lessons/draw.ts'
import { findQuestion } from '../../src/handbook/lessons/index.ts'
import type { DrawnQuestion, Lesson } from '../../src/handbook/lessons/lesson.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import { askLesson, readLesson, tellingIn } from './lesson-words.ts'
import { type Progress, progressOf } from './progress.ts'

/** As typed: what it must be depends on the question. */
const answerKind: ValueKind<string> = {
  name: 'lesson answer',
  example: '0.72A',
  read: text => ({ value: plainText(text), assumed: [] }),
  write: text => text,
  complete: () => [],
}

export const lessonAnswer = defineCommand({
  name: 'lesson answer',
  summary: 'Answers the question of a lesson that was put to you.',
  options: {
    is: required(answerKind, {
      description: 'the letter of a choice, or a quantity with its unit',
      phrase: text => `your answer ${text}`,
    }),
  },
  examples: ['lesson answer a', 'lesson answer 0.72A'],
  changes: true,
  notStanding: true,
  answer: async ({ is: given }, context) => {
    const { asker, memory } = context
    const pending = await memory.lessons.pending(asker.id)
    const found = pending && findQuestion(pending.question)
    if (!found) return nothingAsked
    const asked = found.question.draw(drawFrom(pending.seed), tellingIn(context))
    const right = asked.isRight(given)
    if (!(await memory.lessons.settle(asker.id, pending, right))) return nothingAsked
    const progress = progressOf(await memory.lessons.learned(asker.id))
    return {
      headline: `${marked(right, given, asked)} ${asked.why}`,
      working: [`The question was: ${asked.ask}`, progressWords(found.lesson, progress)],
      cautions: cautionsFor(found.lesson.concerns),
      followUps: onward(found.lesson, right, progress),
    }
  },
})

const nothingAsked: Answer = {
  headline: 'No question waits for your answer. To get one: lesson ask',
  cautions: [generalCaution],
  followUps: [{ label: 'Ask me', question: 'lesson ask' }],
}

function marked(right: boolean, given: string, { choices, right: solution }: DrawnQuestion): string {
  if (right) return 'Right.'
  const at = choices && solution.charCodeAt(0) - 'a'.charCodeAt(0)
  const words = at === undefined ? solution : `${solution}) ${choices?.[at]}`
  return `Not ${given}, but ${words}.`
}

const progressWords = (lesson: Lesson, progress: Progress): string =>
  progress.isDone(lesson)
    ? `You have done the lesson "${lesson.title}", ${progress.done} in all.`
    : `Of the lesson "${lesson.title}" you have ${progress.right(lesson)} of ${lesson.questions.length} right.`

function onward(lesson: Lesson, right: boolean, progress: Progress): FollowUp[] {
  if (!right) return [askLesson('Ask me again', lesson), readLesson('Read the lesson', lesson)]
  if (!progress.isDone(lesson)) return [askLesson('Next question', lesson)]
  const { next } = progress
  return progress.isDone(next)
    ? [askLesson('Ask me again', lesson)]
    : [readLesson(`Next: ${next.title}`, next)]
}
