// A table of sentences, and in which words of them a relation finds its danger.

import { describe, expect, test } from 'vitest'
import type { Danger } from '../../../../../src/charging/situation/dangers.ts'
import type { Relation } from '../../../../../src/language/dangers/relations/relation.ts'
import { told } from './told.ts'

/** A sentence, and the words of it that tell the danger; without them it tells none. */
type Case = readonly [text: string, typed?: string]

export function tells(what: string, relation: Relation, danger: Danger, cases: readonly Case[]): void {
  describe(what, () => {
    for (const [text, typed] of cases)
      test(text, () => {
        const found = relation(told(text))
        const words = told(text).marked.words.slice(found?.from, found?.to)
        expect(found && text.slice(words[0]?.start, words.at(-1)?.end)).toBe(typed)
        expect(found?.danger).toBe(typed === undefined ? undefined : danger)
      })
  })
}
