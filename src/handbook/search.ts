// Finds the entry of the handbook that a question asks for: by its words, by the nearest phrase, and by what was learned.

import MiniSearch from 'minisearch'
import { lately } from '../ground/lately.ts'
import { handbook } from './entries.ts'
import type { HandbookEntry } from './entry.ts'
import { likelyEntries } from './search/likely.ts'
import { type Likeness, likenessTo } from './search/likeness.ts'
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
} from './search/words.ts'

export interface FoundEntry {
  readonly entry: HandbookEntry
  /** How likely it is what was asked, 0 to 1. */
  readonly share: number
  /** How like the nearest of its phrases is, 0 to 1. */
  readonly nearest: number
}

/** A question or a title of the handbook, word by word. */
const certain = 1

/** A question about the very things that a question of the handbook is about, in other words between. */
const nearlyCertain = 0.95

/** How much the words found weigh beside what was learned, and what they come to where nothing is found. */
const [foundWeighs, foundNothing] = [2.5, 4]

/**
 * Found on the entries' own questions, each left out, and on those of people for whom no entry was written: how much it
 * weighs that an entry covers a question, that one of its phrases is near, and that its questions are of that kind.
 */
const [coverWeighs, halfCovered, fewWords, nearWeighs, formWeighs] = [1.2, 0.45, 4, 1.8, 0.6]

/** So many candidates are compared phrase by phrase. */
const candidates = 30

const boost = { title: 1, questions: 0.7, keywords: 2, answer: 0.4 }

type Finder = (text: string) => readonly FoundEntry[]

let ofHandbook: Finder | undefined

/** The best first; empty where no word is known. The index is built at the first call. */
export const entriesFor = lately((text: string): readonly FoundEntry[] => {
  ofHandbook ??= finderOf(handbook)
  return ofHandbook(text)
})

/** Searches those entries; `likely` tells what was learned of them, in their order. */
function finderOf(entries: readonly HandbookEntry[], likely = likelyEntries): Finder {
  const known = new Set<string>()
  const index = new MiniSearch<Record<keyof typeof boost, string> & { id: number }>({
    fields: Object.keys(boost),
    tokenize: text => [...wordsOf(text)],
    processTerm: word => {
      const terms = termsOf(word).filter(term => !isCommon(term))
      for (const term of terms) known.add(term)
      return terms
    },
    searchOptions: {
      processTerm: termsOf,
      boost,
      boostTerm: term => (isAmount(term) ? 0.1 : isFamily(term) ? 0.3 : 1),
      // A word that stands in the handbook is meant as it is.
      prefix: term => mayBeMistyped(term) && !known.has(term),
      fuzzy: term => mayBeMistyped(term) && !known.has(term) && 0.2,
    },
  })
  index.addAll(entries.map(fieldsOf))
  const likeness = likenessTo(entries.map(({ title, questions, keywords = [] }) => [title, ...questions, ...keywords]))
  const phrases = entries.flatMap(({ title, questions }, id) =>
    [title, ...questions].map(phrase => ({ stems: stemsOf(phrase), id })),
  )
  const byHeart = new Map(phrases.map(({ stems, id }) => [stems.join(' '), id]))
  const byAbout = Map.groupBy(phrases, ({ stems }) => aboutOf(stems))
  const aboutTheSame = (about: string): number | undefined => {
    const ids = new Set(byAbout.get(about)?.map(({ id }) => id))
    return ids.size === 1 && saysMuch(about) ? [...ids][0] : undefined
  }
  return text => {
    const likenessOf = likeness(text)
    const stems = stemsOf(text)
    const alike = byHeart.get(stems.join(' '))
    const same = alike ?? aboutTheSame(aboutOf(stems))
    const learned = likely(text)
    const found = index
      .search(text)
      .slice(0, candidates)
      .map(({ id, score }) => {
        const like = likenessOf(id)
        const evidence = (learned[id] ?? 0) * (scoreOf(score, like) + 0.5) ** foundWeighs
        return { id, evidence, nearest: like.nearest }
      })
    const nothing = (learned[entries.length] ?? 0) * foundNothing ** foundWeighs
    const all = found.reduce((sum, { evidence }) => sum + evidence, nothing)
    const sure = alike === undefined ? nearlyCertain : certain
    const left = same === undefined ? 1 : 1 - sure
    return found
      .filter(({ id }) => id !== same)
      .map(({ id, evidence, nearest }) => ({ id, share: (left * evidence) / all, nearest }))
      .concat(same === undefined ? [] : { id: same, share: sure, nearest: 1 })
      .map(({ id, ...rest }) => ({ entry: entries[id] as HandbookEntry, ...rest }))
      .toSorted((a, b) => b.share - a.share)
  }
}

/** Of few words each one counts: what an entry says nothing of is not what it answers. */
const scoreOf = (found: number, { nearest, form, covered, words }: Likeness): number =>
  Math.sqrt(found * nearest) *
  Math.exp(nearWeighs * (nearest - 0.5) + formWeighs * (form - 0.5)) *
  (1 + coverWeighs * (covered - halfCovered) * Math.min(1, fewWords / Math.max(1, words)))

/** The words that say what a phrase is about, whatever their order. */
const aboutOf = (stems: readonly string[]): string => contentOf(stems).toSorted().join(' ')

/** Packs and charging alone are what everything here is about. */
const saysMuch = (about: string): boolean =>
  about.split(' ').some(one => one !== '' && ![one, ...familiesOfStem(one)].some(word => commonplace.has(word)))

function termsOf(word: string): string[] {
  const of = stem(word)
  return [of, ...familiesOfStem(of)]
}

const mayBeMistyped = (term: string): boolean => /^[a-z]{4}/.test(term)

const fieldsOf = (
  { title, questions, keywords = [], answer }: HandbookEntry,
  id: number,
): Record<keyof typeof boost, string> & { id: number } => ({
  id,
  title,
  questions: questions.join(' '),
  keywords: keywords.join(' '),
  answer: answer[0] ?? '',
})
