// What is said of a lesson that there is not.

import { problemAt } from '../../src/ground/plain-text.ts'
import type { Problem } from '../../src/ground/problem.ts'

export const noSuchLesson = (typed: string, count: number): Problem =>
  problemAt(typed, ({ say, show }) => say`There are ${show.number(count, 0)} lessons.`, {
    expected: ({ say, show }) => say`1 to ${show.number(count, 0)}`,
    example: 'lesson list',
  }).offering([{ label: 'lesson list', question: 'lesson list' }])
