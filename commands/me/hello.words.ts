// What is said to a greeting.

import type { WordsOf } from '../../src/assistant/command.ts'
import { followUp } from '../shared/next.ts'
import type { hello } from './hello.ts'

export const helloWords: WordsOf<typeof hello> = ({ say }) => ({
  summary: say`Says in a line what I am for, and what to ask first.`,
  takes: {},
  answer: () => [
    say`Glad to help: I answer charging questions about packs of small electric aircraft. Ask what to set, how long it takes, or what a source can charge.`,
  ],
  figures: {},
  next: () => [
    followUp(say`What to set`, 'current', { pack: '3S 720 LiHV' }),
    followUp(say`How long`, 'time', { pack: '3S 720 LiHV', from: '3.7V per cell' }),
    followUp(say`How many`, 'source', { source: 'PD 65W', pack: '3S 720 LiHV' }),
    followUp(say`Lessons`, 'lesson list'),
    followUp(say`All I answer`, 'help'),
  ],
})
