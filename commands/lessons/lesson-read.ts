// One lesson, a screen at a time: a few sentences and an example worked out.

import { optional, service } from '../../src/assistant/command.ts'
import { countKind } from '../../src/language/kinds/values.ts'
import { lessonKind, lessonNamed } from './lesson-kind.ts'
import { progressOf } from './progress.ts'

export const lessonRead = service({
  name: 'lesson read',
  takes: { lesson: optional(lessonKind), step: optional(countKind) },
  examples: ['lesson read lesson: c-rate', 'lesson read balance', 'lesson read'],
  run: async ({ lesson: key, step = 1 }, { asker, memory, house }) => {
    const lesson = key === undefined ? progressOf(await memory.lessons.learned(asker.id)).next : lessonNamed(key)
    return { lesson, house, step }
  },
})
