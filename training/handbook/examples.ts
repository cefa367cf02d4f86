// What tells the entries of the handbook apart: the questions of each, and questions that none of them answers.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { handbook } from '../../src/handbook/entries.ts'
import { type Example, featuresOf } from '../model/examples.ts'

/** The last place stands for what the handbook has nothing on. */
export const places = handbook.length + 1

/** What another writer would hardly word alike is learned of no question: the order of questions stands for writers. */
export const allExamples = (): readonly Example[] => [
  ...handbook.flatMap(({ title, questions }, entry) =>
    [title, ...questions].map((text, order) => exampleOf(text, entry, order)),
  ),
  ...unanswered().map((text, order) => exampleOf(text, handbook.length, order)),
]

const exampleOf = (text: string, intent: number, person: number): Example => ({
  text,
  intent,
  person,
  isFurther: false,
  isHeldOut: false,
  features: featuresOf(text),
})

const unanswered = (): readonly string[] =>
  readFileSync(join(import.meta.dirname, 'unanswered.txt'), 'utf8')
    .trimEnd()
    .split('\n')
