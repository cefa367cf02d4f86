// What is worked out of all questions of the handbook beforehand: at every start it would take half a second, and
// ninety megabytes for good.

import MiniSearch, { type AsPlainObject } from 'minisearch'
import { packed, unpacked } from '../../ground/packed.ts'
import { hashOf } from '../../language/model/hash.ts'
import { placeIn } from '../../language/model/model.ts'
import { rising, steps } from '../../language/model/stored.ts'
import { groupsByTerm } from './likeness.ts'
import {
  commonplace,
  contentOf,
  familiesOfStem,
  isAmount,
  isCommon,
  isFamily,
  stem,
  stemsOf,
  wordsOf,
} from './words.ts'

/** What of an entry is searched. */
interface Searched {
  readonly title: string
  readonly questions: readonly string[]
  readonly keywords?: readonly string[]
  readonly answer: readonly string[]
}

/** Numbers by text: the hashes of the texts, rising, and their numbers. */
interface StoredTable {
  readonly hashes: string
  readonly numbers: string
}

export interface StoredIndex {
  /** The search by words, as its library writes it. */
  readonly words: string
  readonly groupsWith: StoredTable
  readonly byHeart: StoredTable
  readonly byAbout: StoredTable
}

const boost = { title: 1, questions: 0.7, keywords: 2, answer: 0.4 }

type Fields = Record<keyof typeof boost, string> & { readonly id: number }

const ofWords = {
  fields: Object.keys(boost),
  tokenize: (text: string) => [...wordsOf(text)],
  processTerm: (word: string) => termsOf(word).filter(term => !isCommon(term)),
}

/** The same entries give the same index. */
export function storedIndex(entries: readonly Searched[]): StoredIndex {
  const index = new MiniSearch<Fields>(ofWords)
  index.addAll(entries.map(fieldsOf))
  const phrases = entries.flatMap(({ title, questions }, id) =>
    [title, ...questions].map(phrase => ({ stems: stemsOf(phrase), id })),
  )
  const byAbout = [...Map.groupBy(phrases, ({ stems }) => aboutOf(stems))].flatMap(([about, alike]) => {
    const [id, ...others] = new Set(alike.map(one => one.id))
    return id !== undefined && others.length === 0 && saysMuch(about) ? [[about, id] as const] : []
  })
  return {
    words: packed(new TextEncoder().encode(JSON.stringify(index))),
    groupsWith: storedTable(groupsByTerm(entries.map(phrasesOf))),
    byHeart: storedTable(new Map(phrases.map(({ stems, id }) => [stems.join(' '), id]))),
    byAbout: storedTable(new Map(byAbout)),
  }
}

export function readIndex({ words, groupsWith, byHeart, byAbout }: StoredIndex) {
  const stored: AsPlainObject = JSON.parse(new TextDecoder().decode(unpacked(words)))
  const known = new Set(stored.index.map(([term]) => term))
  // A word that stands in the handbook is meant as it is.
  const mayBeMistyped = (term: string): boolean => /^[a-z]{4}/.test(term) && !known.has(term)
  return {
    words: MiniSearch.loadJS<Fields>(stored, {
      ...ofWords,
      searchOptions: {
        processTerm: termsOf,
        boost,
        boostTerm: term => (isAmount(term) ? 0.1 : isFamily(term) ? 0.3 : 1),
        prefix: mayBeMistyped,
        fuzzy: term => mayBeMistyped(term) && 0.2,
      },
    }),
    groupsWith: readTable(groupsWith),
    byHeart: readTable(byHeart),
    byAbout: readTable(byAbout),
  }
}

function storedTable(numbers: ReadonlyMap<string, number>): StoredTable {
  const byHash = [...numbers].map(([text, number]) => [hashOf(text), number] as const).sort(([a], [b]) => a - b)
  return {
    hashes: packed(steps(Uint32Array.from(byHash, ([hash]) => hash))),
    numbers: packed(Uint16Array.from(byHash, ([, number]) => number)),
  }
}

function readTable(table: StoredTable): (text: string) => number | undefined {
  const [hashes, numbers] = [rising(table.hashes), new Uint16Array(unpacked(table.numbers))]
  return text => numbers[placeIn(hashes, hashOf(text))]
}

/** All that an entry is likened by. */
export const phrasesOf = ({ title, questions, keywords = [] }: Searched): readonly string[] => [
  title,
  ...questions,
  ...keywords,
]

/** The words that say what a phrase is about, whatever their order. */
export const aboutOf = (stems: readonly string[]): string => contentOf(stems).toSorted().join(' ')

/** Packs and charging alone are what everything here is about. */
const saysMuch = (about: string): boolean =>
  about.split(' ').some(one => one !== '' && ![one, ...familiesOfStem(one)].some(word => commonplace.has(word)))

function termsOf(word: string): string[] {
  const of = stem(word)
  return [of, ...familiesOfStem(of)]
}

const fieldsOf = ({ title, questions, keywords = [], answer }: Searched, id: number): Fields => ({
  id,
  title,
  questions: questions.join(' '),
  keywords: keywords.join(' '),
  answer: answer[0] ?? '',
})
