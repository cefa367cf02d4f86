// A greeting or thanks, answered in a line, with what to ask first.

import { service } from '../../src/assistant/command.ts'

export const hello = service({ name: 'hello', takes: {}, examples: ['hello'], notStanding: true, run: () => ({}) })
