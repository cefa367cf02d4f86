// A greeting or thanks, answered in a line, with what to ask first.

import { defineCommand } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { followUp } from '../shared/follow-up.ts'

export const hello = defineCommand({
  name: 'hello',
  summary: 'Says in a line what I am for, and what to ask first.',
  options: {},
  examples: ['hello'],
  plainWords: [
    'hi',
    'hey',
    'good morning',
    'good evening',
    'thanks',
    'thank you',
    'cheers',
    'danke',
    'moin',
    'hallo',
    'are you a robot',
    'who are you',
    'what are you',
  ],
  notStanding: true,
  answer: () => ({
    headline:
      'Glad to help: I answer charging questions about packs of small electric aircraft. Ask what to set, how long it takes, or what a source can charge.',
    cautions: [generalCaution],
    followUps: [
      followUp('What to set', 'current', { pack: '3S 720 LiHV' }),
      followUp('How long', 'time', { pack: '3S 720 LiHV', from: '3.7V per cell' }),
      followUp('How many', 'source', { source: 'PD 65W', pack: '3S 720 LiHV' }),
      followUp('Lessons', 'lesson list', {}),
      followUp('All I answer', 'help', {}),
    ],
  }),
})
