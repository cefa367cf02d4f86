// What a reader complains of, for tests: the details of its Problem, or a failure where it reads or throws another error.

import { Problem, type ProblemDetails } from '../../../src/ground/problem.ts'

export function problemOf(read: () => unknown): ProblemDetails {
  let value: unknown
  try {
    value = read()
  } catch (error) {
    if (error instanceof Problem) return error.details
    throw error
  }
  throw new Error(`expected a Problem, but it was read as ${JSON.stringify(value)}`)
}
