// The lessons in their order, and how far the asker has come.

import { service } from '../../src/assistant/command.ts'
import { progressOf } from './progress.ts'

export const lessonList = service({
  name: 'lesson list',
  takes: {},
  examples: ['lesson list'],
  notStanding: true,
  run: async (_, { asker, memory }) => ({ progress: progressOf(await memory.lessons.learned(asker.id)) }),
})
