// What is said to a question that comes again after it was answered.

import { Problem } from '../../ground/problem.ts'

export const doneBefore = new Problem({
  what: ({ say }) => say`That was done before, and answered.`,
  expected: ({ say }) => say`something new`,
  example: 'help',
})
