// What is said where more was asked at once than can be worked out in good time.

import { Problem } from '../../ground/problem.ts'

export const tooMuchAtOnce = new Problem({
  what: ({ say }) => say`That is too much at once: ask again in a minute.`,
  expected: ({ say }) => say`a minute until the questions before it are done`,
  example: 'help',
})
