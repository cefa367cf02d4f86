// What words of other tongues mean in the trade, and the commonest words of some that are only to be told apart.

import { folded } from '../model/clauses.ts'
import de from './words/de.json' with { type: 'json' }
import es from './words/es.json' with { type: 'json' }
import fr from './words/fr.json' with { type: 'json' }
import it from './words/it.json' with { type: 'json' }
import nl from './words/nl.json' with { type: 'json' }
import others from './words/others.json' with { type: 'json' }

/** Of each tongue what is said in it, and the words that are read, under what they mean. */
export const tongues = { de, es, fr, it, nl } as const

/** Tongues that are read in part. */
export type Tongue = keyof typeof tongues

export interface Glossary {
  /** Phrases of folded words, each parted by a space, with what they mean in English. */
  readonly meanings: ReadonlyMap<string, string>
  /** Words in the longest phrase. */
  readonly longest: number
}

const readGlossary = (listed: Readonly<Record<string, string>>): Glossary => {
  const pairs = Object.entries(listed).flatMap(([english, phrases]) =>
    phrases.split(', ').map(phrase => [phrase, english] as const),
  )
  return { meanings: new Map(pairs), longest: Math.max(...pairs.map(([phrase]) => phrase.split(' ').length)) }
}

export const glossaryOf = Object.fromEntries(
  Object.entries(tongues).map(([tongue, { says: _, ...words }]) => [tongue, readGlossary(words)]),
) as Readonly<Record<Tongue, Glossary>>

const wordsIn = (phrases: Iterable<string>): ReadonlySet<string> =>
  new Set([...phrases].flatMap(phrase => phrase.toLowerCase().split(' ')))
const english = wordsIn(Object.values(glossaryOf).flatMap(({ meanings }) => [...meanings.values()]))

/** The words by which each tongue is told, those that are not read among them; English has what any meaning has. */
export const wordsOfTongues: ReadonlyMap<string, ReadonlySet<string>> = new Map([
  ...Object.entries(glossaryOf).map(
    ([tongue, { meanings }]) => [tongue, wordsIn(meanings.keys()).difference(english)] as const,
  ),
  ...Object.entries(others).map(([tongue, words]) => [tongue, wordsIn([words])] as const),
  ['en', english.union(wordsIn([others.en]))],
])

export interface TypedWord {
  /** In lower case, without accents. */
  readonly word: string
  readonly start: number
  readonly end: number
}

/**
 * Runs of letters, with an apostrophe that parts two. One letter behind a number is a unit, but for a preposition
 * before the next number; a capital inside of the text is one too.
 */
const pieces = /(?:(?<!\d ?)\p{L}|(?<=\d )[aàe](?= \d))(?<!(?<!^)[AVWC])(?!\p{L})'?|\p{L}[\p{L}\p{M}]+'?/gu

export const typedWords = (text: string): readonly TypedWord[] =>
  [...text.matchAll(pieces)].map(({ index, 0: typed }) => ({
    word: folded(typed).replace(/ß/g, 'ss').replace(/'$/, ''),
    start: index,
    end: index + typed.length,
  }))
