// What is said to a greeting.

import type { WordsOf } from '../../src/assistant/command.ts'
import { followUp } from '../shared/next.ts'
import type { hello } from './hello.ts'

export const helloWords: WordsOf<typeof hello> = ({ say, own }) => ({
  summary: say`Says in a line what I am for, and what to ask first.`,
  takes: {},
  answer: () => [
    say`Glad to help. I am a program, no person: I know about charging packs of small electric aircraft, and nothing else.`,
    say`Try: ${own('what current for a 3S 720 LiHV')}`,
  ],
  figures: {},
  next: () => [
    followUp(say`What to set`, 'current', { pack: '3S 720 LiHV' }),
    followUp(say`How long`, 'time', { pack: '3S 720 LiHV', from: '3.7V per cell' }),
    followUp(say`Lessons`, 'lesson list'),
    followUp(say`All I answer`, 'help'),
  ],
})
