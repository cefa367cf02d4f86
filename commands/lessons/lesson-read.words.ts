// What is said of one lesson.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { Text } from '../../src/ground/text.ts'
import { lessons } from '../../src/handbook/lessons/index.ts'
import { countKind } from '../../src/language/kinds/values.ts'
import { followUp } from '../shared/next.ts'
import { askLesson, lessonTitle, readLesson } from './lesson.words.ts'
import type { lessonRead } from './lesson-read.ts'

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
    figures: {},
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
