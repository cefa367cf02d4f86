// Puts a question of a lesson to the asker, with values drawn anew, and keeps it until it is answered.

import { optional, service } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { type FoundQuestion, findQuestion, questionId } from '../../src/handbook/lessons/index.ts'
import { drawFrom } from '../../src/handbook/teaching/draw.ts'
import { lessonKind, lessonNamed } from './lesson-kind.ts'
import { progressOf } from './progress.ts'

export const lessonAsk = service({
  name: 'lesson ask',
  takes: { lesson: optional(lessonKind) },
  examples: ['lesson ask lesson: c-rate', 'lesson ask'],
  changes: true,
  notStanding: true,
  run: async ({ lesson: key }, context) => {
    const { lesson, question, seed } = (await waiting(key, context)) ?? (await drawn(key, context))
    return { lesson, question: question.draw(drawFrom(seed), context) }
  },
})

type Put = FoundQuestion & { readonly seed: number }

/** The question that waits already, if it is of the lesson: it does not go away by being asked for again. */
async function waiting(key: string | undefined, { asker, memory }: Context): Promise<Put | undefined> {
  const pending = await memory.lessons.pending(asker.id)
  const found = pending && findQuestion(pending.question)
  if (!found || (key !== undefined && found.lesson.key !== key)) return undefined
  return { ...found, seed: pending.seed }
}

/** What was not answered right yet comes first; of a lesson that is done any question may come. */
async function drawn(key: string | undefined, { asker, memory, newSeed }: Context): Promise<Put> {
  const progress = progressOf(await memory.lessons.learned(asker.id))
  const lesson = key === undefined ? progress.next : lessonNamed(key)
  const seed = newSeed()
  const question = progress.open(lesson)[0] ?? drawFrom(seed).pick(lesson.questions)
  await memory.lessons.ask(asker.id, { question: questionId(lesson, question), seed })
  return { lesson, question, seed }
}
