// One lesson: a few sentences and an example worked out.

import { defineCommand, optional } from '../../src/assistant/old-command.ts'
import { cautionsFor } from '../../src/cautions/cautions.ts'
import { lessons } from '../../src/handbook/lessons/index.ts'
import { lessonKind, lessonNamed } from './lesson-kind.ts'
import { askLesson, lessonTitle, readLesson, tellingIn } from './lesson-words.ts'
import { progressOf } from './progress.ts'

export const lessonRead = defineCommand({
  name: 'lesson read',
  summary: 'A short lesson about charging, with an example worked out.',
  options: {
    lesson: optional(lessonKind, {
      description: 'which one; the next that you have not done when not said',
      phrase: text => `the lesson ${text}`,
    }),
  },
  examples: ['lesson read lesson: c-rate', 'lesson read balance', 'lesson read'],
  plainWords: ['teach me about', 'tell me about', 'how many cycles', 'how old'],
  meantBy: [['lesson']],
  answer: async ({ lesson: key }, context) => {
    const { asker, memory } = context
    const lesson =
      key === undefined ? progressOf(await memory.lessons.learned(asker.id)).next : lessonNamed(key)
    const telling = tellingIn(context)
    const [first, ...others] = lesson.teach(telling)
    const after = lessons[lessons.indexOf(lesson) + 1]
    return {
      headline: `${lessonTitle(lesson)}. ${first}`,
      working: [...others, `Example: ${lesson.example(telling)}`],
      cautions: cautionsFor(lesson.concerns),
      followUps: [askLesson('Ask me', lesson), ...(after ? [readLesson(`Next: ${after.title}`, after)] : [])],
    }
  },
})
