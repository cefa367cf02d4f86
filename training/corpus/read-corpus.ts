// The corpus: what 69 imagined members of a club write, a file each. For the trainer and the tests.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { type FurtherMessage, furtherMessage, type MarkedMessage, markedMessage } from './schema.ts'

export const authors: readonly number[] = Array.from({ length: 69 }, (_, index) => index + 1)

const corpus = import.meta.dirname

/** Whole people that nothing is learned from and no rule looks at: how well people are read is measured on them. */
export const heldOut: ReadonlySet<number> = new Set([5, 8, 12, 16, 22, 26, 30, 32, 39, 42, 46, 50, 53, 56, 60, 66])

/** The same of those who wrote further messages. */
export const heldOutFurther: ReadonlySet<number> = new Set([94, 103, 111, 117, 127])

function linesOf(file: string): readonly unknown[] {
  const text = readFileSync(join(corpus, file), 'utf8')
  return text
    .trimEnd()
    .split('\n')
    .map(line => JSON.parse(line))
}

/** Throws a ZodError, with the place, where a line is not marked as the schema wants. */
export const messagesOf = (author: number): readonly MarkedMessage[] =>
  linesOf(`author-${String(author).padStart(2, '0')}.jsonl`).map(line => markedMessage.parse(line))

/** Of a hundred more people: what the authors seldom ask, and what is near another kind. Throws a ZodError as above. */
export const furtherMessages = (): readonly FurtherMessage[] =>
  linesOf('more.jsonl').map(line => furtherMessage.parse(line))
