// Finds the entry of the handbook that a question asks for: by its words, by the nearest phrase, and by what was learned.

import { lately } from '../ground/lately.ts'
import { handbook } from './entries.ts'
import type { HandbookEntry } from './entry.ts'
import { withoutAsides } from './search/asides.ts'
import file from './search/index.json' with { type: 'json' }
import { likelyEntries } from './search/likely.ts'
import { type Likeness, likenessTo } from './search/likeness.ts'
import { aboutOf, phrasesOf, readIndex } from './search/stored.ts'
import { stemsOf } from './search/words.ts'

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

type Finder = (text: string) => readonly FoundEntry[]

let ofHandbook: Finder | undefined

/** The best first; empty where no word is known. The index is read at the first call. */
export const entriesFor = lately((text: string): readonly FoundEntry[] => {
  ofHandbook ??= finder()
  return ofHandbook(withoutAsides(text))
})

function finder(): Finder {
  const { words, groupsWith, byHeart, byAbout } = readIndex(file)
  const likeness = likenessTo(handbook.map(phrasesOf), groupsWith)
  return text => {
    const likenessOf = likeness(text)
    const stems = stemsOf(text)
    const alike = byHeart(stems.join(' '))
    const same = alike ?? byAbout(aboutOf(stems))
    const learned = likelyEntries(text)
    const found = words
      .search(text)
      .slice(0, candidates)
      .map(({ id, score }) => {
        const like = likenessOf(id)
        const evidence = (learned[id] ?? 0) * (scoreOf(score, like) + 0.5) ** foundWeighs
        return { id, evidence, nearest: like.nearest }
      })
    const nothing = (learned[handbook.length] ?? 0) * foundNothing ** foundWeighs
    const all = found.reduce((sum, { evidence }) => sum + evidence, nothing)
    const sure = alike === undefined ? nearlyCertain : certain
    const left = same === undefined ? 1 : 1 - sure
    return found
      .filter(({ id }) => id !== same)
      .map(({ id, evidence, nearest }) => ({ id, share: (left * evidence) / all, nearest }))
      .concat(same === undefined ? [] : { id: same, share: sure, nearest: 1 })
      .map(({ id, ...rest }) => ({ entry: handbook[id] as HandbookEntry, ...rest }))
      .toSorted((a, b) => b.share - a.share)
  }
}

/** Of few words each one counts: what an entry says nothing of is not what it answers. */
const scoreOf = (found: number, { nearest, form, covered, words }: Likeness): number =>
  Math.sqrt(found * nearest) *
  Math.exp(nearWeighs * (nearest - 0.5) + formWeighs * (form - 0.5)) *
  (1 + coverWeighs * (covered - halfCovered) * Math.min(1, fewWords / Math.max(1, words)))
