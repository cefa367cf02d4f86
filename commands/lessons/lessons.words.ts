// What is said of lessons and their questions, with the buttons that lead on.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { FollowUp } from '../../src/assistant/reply.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { lessons } from '../../src/handbook/lessons/index.ts'
import { type DrawnQuestion, type Lesson, letterOf } from '../../src/handbook/teaching/lesson.ts'
import { countKind } from '../../src/language/kinds/values.ts'
import { followUp } from '../shared/next.ts'
import type { lessonAnswer, lessonAsk, lessonList, lessonRead, Marked } from './lessons.ts'

/** "Lesson 2 of 8, The C-rate". */
const lessonTitle = (lesson: Lesson, locale: Locale): Text => {
  const { say, show } = locale
  const at = show.number(lessons.indexOf(lesson) + 1, 0)
  return say`Lesson ${at} of ${show.number(lessons.length, 0)}, ${lesson.title(locale)}`
}

const readLesson = (label: Text, { key }: Lesson): FollowUp => followUp(label, 'lesson read', { lesson: key })
const askLesson = (label: Text, { key }: Lesson): FollowUp => followUp(label, 'lesson ask', { lesson: key })

/** The choices with their letters, and how to answer. */
function questionLines({ choices, wanted, right }: DrawnQuestion, { say, own }: Locale): readonly Text[] {
  if (!choices) return [say`Just type ${wanted}, like ${own(likeBut(right))}`]
  return [...choices.map((choice, at) => say`${own(letterOf(at))}) ${choice}`), say`Just type ${wanted}.`]
}

/** A button a choice; a quantity is typed. */
const answerButtons = ({ choices = [] }: DrawnQuestion, { own }: Locale): readonly FollowUp[] =>
  choices.map((_, at) => followUp(own(letterOf(at)), 'lesson answer', { is: letterOf(at) }))

/** The unit of the answer with another number, which gives nothing away. */
const likeBut = (right: string): string => (/^\d+$/.test(right) ? '12' : right.replace(/[\d.]+/, '1.23'))

export const lessonListWords: WordsOf<typeof lessonList> = locale => {
  const { say, show, own } = locale
  const count = (value: number) => show.number(value, 0)
  return {
    summary: say`Lists the lessons for newcomers, and how far you have come.`,
    asks: [own('show me the lessons'), own('which lessons are there')],
    takes: {},
    answer: ({ progress: { done, next } }) => [
      done === lessons.length
        ? say`You have done all ${count(lessons.length)} lessons. Any of them asks anew whenever you like.`
        : say`${count(lessons.length)} lessons, ${count(done)} done. Say ${own(`"lesson ${lessons.indexOf(next) + 1}"`)} to begin.`,
    ],
    working: ({ progress }) =>
      lessons.map((lesson, at) => {
        const [title, right] = [say`${count(at + 1)}. ${lesson.title(locale)}`, progress.right(lesson)]
        return right === 0 ? title : say`${title}: ${count(right)} of ${count(lesson.questions.length)} right`
      }),
    next: ({ progress: { next } }) => [readLesson(say`Next`, next)],
  }
}

export const lessonReadWords: WordsOf<typeof lessonRead> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`A short lesson about charging, with an example worked out.`,
    asks: [own('give me the next lesson')],
    takes: {
      lesson: {
        about: say`which one; the next that you have not done when not said`,
        as: text => say`the lesson ${text}`,
      },
      step: { about: say`which screen of it; the first when not said`, as: text => say`screen ${text}` },
    },
    answer: result => {
      const { at, of } = screenOf(result)
      return [
        say`${lessonTitle(result.lesson, locale)} (${show.number(at, 0)} of ${show.number(of, 0)}).`,
        ...screenOf(result).texts,
      ]
    },
    next: result => {
      const { at, of } = screenOf(result)
      const { lesson } = result
      if (at < of) return [followUp(say`Next`, 'lesson read', { lesson: lesson.key, step: countKind.write(at + 1) })]
      const after = lessons[lessons.indexOf(lesson) + 1]
      return [askLesson(say`Ask me`, lesson), after && readLesson(say`Next: ${after.title(locale)}`, after)]
    },
  }

  /** So much as one screen holds; behind the last there is none. */
  function screenOf({ lesson, house, step }: Result): { at: number; of: number; texts: readonly Text[] } {
    const told = { house, locale }
    const all = [...lesson.teach(told), say`Example: ${lesson.example(told)}`]
    const of = Math.ceil(all.length / perScreen)
    const at = Math.min(step, of)
    return { at, of, texts: all.slice((at - 1) * perScreen, at * perScreen) }
  }
}

const perScreen = 2
type Result = Parameters<ReturnType<typeof lessonReadWords>['answer']>[0]

export const lessonAskWords: WordsOf<typeof lessonAsk> = locale => {
  const { say, own } = locale
  return {
    summary: say`Asks you a question of a lesson, with new values each time.`,
    asks: [own('ask me a question')],
    takes: {
      lesson: {
        about: say`which one; the next that you have not done when not said`,
        as: text => say`a question of the lesson ${text}`,
      },
    },
    answer: ({ lesson, question }) => [say`${lessonTitle(lesson, locale)}. ${question.ask}`],
    working: ({ question }) => questionLines(question, locale),
    next: ({ lesson, question }) => [...answerButtons(question, locale), readLesson(say`Read the lesson`, lesson)],
  }
}

export const lessonAnswerWords: WordsOf<typeof lessonAnswer> = locale => {
  const { say, own } = locale
  return {
    summary: say`Answers the question of a lesson that was put to you.`,
    takes: {
      is: { about: say`the letter of a choice, or a quantity with its unit`, as: text => say`your answer ${text}` },
    },
    answer: ({ marked }, { is: given }) =>
      marked
        ? [
            marked.isRight ? say`Right.` : say`Not ${own(given)}, but ${solution(marked.question, locale)}.`,
            marked.question.why,
          ]
        : [say`No question waits for your answer. To get one: lesson ask`],
    working: ({ marked }) =>
      marked ? [say`The question was: ${marked.question.ask}`, progressWords(marked, locale)] : [],
    next: ({ marked }) => (marked ? onward(marked, locale) : [followUp(say`Ask me`, 'lesson ask')]),
  }
}

function solution({ choices, right }: DrawnQuestion, { say, own }: Locale): Text {
  const choice = choices?.[right.charCodeAt(0) - 'a'.charCodeAt(0)]
  return choice === undefined ? own(right) : say`${own(right)}) ${choice}`
}

function progressWords({ lesson, progress }: Marked, locale: Locale): Text {
  const { say, show } = locale
  const count = (value: number) => show.number(value, 0)
  const title = lesson.title(locale)
  return progress.isDone(lesson)
    ? say`You have done the lesson "${title}", ${count(progress.done)} in all.`
    : say`Of the lesson "${title}" you have ${count(progress.right(lesson))} of ${count(lesson.questions.length)} right.`
}

function onward({ lesson, isRight, progress }: Marked, locale: Locale): readonly FollowUp[] {
  const { say } = locale
  const again = askLesson(say`Ask me again`, lesson)
  if (!isRight) return [again, readLesson(say`Read the lesson`, lesson)]
  if (!progress.isDone(lesson)) return [askLesson(say`Next question`, lesson)]
  const { next } = progress
  return progress.isDone(next) ? [again] : [readLesson(say`Next: ${next.title(locale)}`, next)]
}
