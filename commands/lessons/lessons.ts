// Lessons for newcomers: listed, read a screen at a time, asked about, and how far the asker has come.

import { optional, required, service } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { plainText } from '../../src/ground/plain-text.ts'
import { type FoundQuestion, findQuestion, lessons, questionId } from '../../src/handbook/lessons/index.ts'
import { drawFrom } from '../../src/handbook/teaching/draw.ts'
import type { DrawnQuestion, Lesson, LessonQuestion } from '../../src/handbook/teaching/lesson.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import { type ValueKind, wordsKind } from '../../src/language/kinds/value-kind.ts'
import { countKind } from '../../src/language/kinds/values.ts'
import { noSuchLesson } from './lesson-problems.words.ts'

const [first, ...others] = lessons

const keyed = choiceKind('lesson', [first.key, ...others.map(({ key }) => key)])

/** Its number in the list will do. */
const lessonKind: ValueKind<string> = {
  ...keyed,
  read: (text, earlier) => {
    if (Number(text) > lessons.length) throw noSuchLesson(text, lessons.length)
    return keyed.read(lessons[Number(text) - 1]?.key ?? text, earlier)
  },
}

const lessonNamed = (key: string): Lesson => lessons.find(lesson => lesson.key === key) ?? first

interface Progress {
  /** Of the lesson's questions, how many were answered right once. */
  right(lesson: Lesson): number
  isDone(lesson: Lesson): boolean
  /** The first that is not done; the first of all where all are. */
  readonly next: Lesson
  readonly done: number
  /** What the lesson still has to ask; empty where it is done. */
  open(lesson: Lesson): readonly LessonQuestion[]
}

function progressOf(learned: readonly string[]): Progress {
  const known = new Set(learned)
  const open = (lesson: Lesson) => lesson.questions.filter(question => !known.has(questionId(lesson, question)))
  const isDone = (lesson: Lesson) => open(lesson).length === 0
  return {
    open,
    isDone,
    right: lesson => lesson.questions.length - open(lesson).length,
    next: lessons.find(lesson => !isDone(lesson)) ?? lessons[0],
    done: lessons.filter(isDone).length,
  }
}

/** The lessons in their order, and how far the asker has come. */
export const lessonList = service({
  name: 'lesson list',
  shelf: 'learn lessons',
  takes: {},
  examples: ['lesson list'],
  notStanding: true,
  run: async (_, { asker, memory }) => ({ progress: progressOf(await memory.lessons.learned(asker.id)) }),
})

/** One lesson, a screen at a time: a few sentences and an example worked out. */
export const lessonRead = service({
  name: 'lesson read',
  shelf: 'learn read',
  takes: { lesson: optional(lessonKind), step: optional(countKind) },
  examples: ['lesson read lesson: c-rate', 'lesson read balance', 'lesson read'],
  run: async ({ lesson: key, step = 1 }, { asker, memory, house }) => {
    const lesson = key === undefined ? progressOf(await memory.lessons.learned(asker.id)).next : lessonNamed(key)
    return { lesson, house, step }
  },
})

/** Puts a question of a lesson to the asker, with values drawn anew, and keeps it until it is answered. */
export const lessonAsk = service({
  name: 'lesson ask',
  shelf: 'learn quiz',
  takes: { lesson: optional(lessonKind) },
  examples: ['lesson ask lesson: c-rate', 'lesson ask'],
  answeredBy: { command: 'lesson answer', option: 'is' },
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

/** As typed: what it must be depends on the question. */
const answerKind = wordsKind({ name: 'lesson answer', example: '0.72A', read: plainText })

export interface Marked {
  readonly lesson: Lesson
  readonly question: DrawnQuestion
  readonly isRight: boolean
  readonly progress: Progress
}

export const lessonAnswer = service({
  name: 'lesson answer',
  shelf: 'learn answer',
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
