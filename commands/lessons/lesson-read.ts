// One lesson: a few sentences and an example worked out.

import { optional, service } from '../../src/assistant/command.ts'
import { lessonKind, lessonNamed } from './lesson-kind.ts'
import { progressOf } from './progress.ts'

export const lessonRead = service({
  name: 'lesson read',
  takes: { lesson: optional(lessonKind) },
  examples: ['lesson read lesson: c-rate', 'lesson read balance', 'lesson read'],
  run: async ({ lesson: key }, { asker, memory, house }) => {
    const lesson = key === undefined ? progressOf(await memory.lessons.learned(asker.id)).next : lessonNamed(key)
    return { lesson, house }
  },
})
