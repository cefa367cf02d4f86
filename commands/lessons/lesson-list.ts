// The lessons in their order, and how far the asker has come.

import { defineCommand } from '../../src/assistant/old-command.ts'
import { cautionsFor } from '../../src/cautions/cautions.ts'
import { lessons } from '../../src/handbook/lessons/index.ts'
import { readLesson } from './lesson-words.ts'
import { progressOf } from './progress.ts'

export const lessonList = defineCommand({
  name: 'lesson list',
  summary: 'Lists the lessons for newcomers, and how far you have come.',
  options: {},
  examples: ['lesson list'],
  plainWords: ['lessons', 'teach me'],
  notStanding: true,
  answer: async (_, { asker, memory }) => {
    const progress = progressOf(await memory.lessons.learned(asker.id))
    return {
      headline:
        progress.done === lessons.length
          ? `You have done all ${lessons.length} lessons. Any of them asks anew whenever you like.`
          : `${lessons.length} lessons, ${progress.done} of them done. Next: ${progress.next.title}.`,
      working: lessons.map(
        (lesson, at) =>
          `${at + 1}. ${lesson.title} (lesson read ${lesson.key}): ${progress.right(lesson)} of ${lesson.questions.length} right`,
      ),
      cautions: cautionsFor({}),
      followUps: [readLesson(`Read: ${progress.next.title}`, progress.next)],
    }
  },
})
