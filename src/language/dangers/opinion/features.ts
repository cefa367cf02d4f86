// What a message is judged by: its words, pairs of words, pieces of words, concepts, what stands near them, denied or
// not, how the clauses beside theirs are meant, and what the rules found.

import type { Evidence } from '../engine/evidence.ts'
import type { Marked } from '../engine/matcher.ts'

/** Features share this many places; a power of two. */
export const places = 1048576
/** Which danger is told is judged by features folded to so many places. */
export const fewerPlaces = 32768

const window = 5
/** Words of a clause tell what a concept in it is about, so far before and behind it. */
const aboutReach = 8
const denialReach = 8
const number = 7919
const pieces = [3, 4, 5] as const

export interface Features {
  /** Places of all that stands in the message, each once. */
  readonly all: readonly number[]
  /** Of the same without pieces of words, which tell little of which danger it is. */
  readonly telling: readonly number[]
}

/** `figures`: what the numbers amount to. `concepts` gives the number of each concept that a sign is. */
export function featuresOf(
  marked: Marked,
  evidence: readonly Evidence[],
  figures: readonly string[],
  concepts: ReadonlyMap<number, number>,
): Features {
  const telling = new Set<number>()
  addWords(marked, telling)
  addConcepts(marked, concepts, telling)
  addEvidence(evidence, telling)
  addFigures(figures, telling)
  addClauses(marked, concepts, telling)
  const all = new Set(telling)
  addPieces(marked, all)
  return { all: [...all], telling: [...telling] }
}

function addWords(marked: Marked, features: Set<number>): void {
  const { words } = marked
  const denied = deniedWords(marked)
  const word = words.map(({ w, value }, i) => mixed(value === undefined ? hashOf(w) : number, denied[i] ? 3 : 1))
  for (let i = 0; i < words.length; i += 1) {
    const here = word[i] ?? 0
    features.add(place(here))
    const next = words[i + 1]
    const next2 = words[i + 2]
    if (next === undefined || next.cut === 2) continue
    features.add(place(mixed(here, word[i + 1] ?? 0)))
    if (next2 !== undefined && next2.cut < 2) features.add(place(mixed(mixed(here, 11), word[i + 2] ?? 0)))
  }
}

function addConcepts(marked: Marked, concepts: ReadonlyMap<number, number>, features: Set<number>): void {
  const { words } = marked
  const denied = deniedWords(marked)
  const ideas = words.map((_, i) => ideasAt(marked, i, concepts, denied[i] ? 5 : 2))
  for (let i = 0; i < words.length; i += 1) {
    for (const idea of ideas[i] ?? []) features.add(place(idea))
    for (let j = i + 1; j <= i + window; j += 1) {
      if (words[j] === undefined || words[j]?.cut === 2) break
      for (const a of ideas[i] ?? []) for (const b of ideas[j] ?? []) features.add(place(mixed(a, b)))
    }
  }
}

/** Of each concept the words around it in its clause, and whether the clauses beside it deny, look back or ask. */
function addClauses(marked: Marked, concepts: ReadonlyMap<number, number>, features: Set<number>): void {
  const { words } = marked
  const clauses = clausesOf(marked)
  const moods = clauses.map(([from, to]) => moodOf(marked, from, to))
  for (const [n, [from, to]] of clauses.entries()) {
    const mood = moods[n] ?? 0
    for (let i = from; i < to; i += 1) {
      features.add(place(mixed(hashOf(words[i]?.w ?? ''), 40 + (mood & asks))))
      for (const idea of ideasAt(marked, i, concepts, 37)) {
        features.add(place(mixed(idea, 50 + (moods[n - 1] ?? 8))))
        features.add(place(mixed(idea, 60 + (moods[n + 1] ?? 8))))
        const last = Math.min(to - 1, i + aboutReach)
        for (let j = Math.max(from, i - aboutReach); j <= last; j += 1)
          if (j !== i) features.add(place(mixed(idea, hashOf(words[j]?.w ?? ''))))
      }
    }
  }
}

const [denies, looksBack, asks] = [1, 2, 4]
const past = new Set(['was', 'were', 'had', 'did', 'got', 'took', 'came', 'fell', 'ago', 'once', 'yesterday', 'last'])
const askers = new Set(['what', 'how', 'which', 'when', 'where', 'who', 'why', 'amps', 'minutes'])

function moodOf({ words, denies: isDenying }: Marked, from: number, to: number): number {
  const said = words.slice(from, to)
  return (
    (isDenying.slice(from, to).includes(true) ? denies : 0) +
    (said.some(({ w }) => past.has(w)) ? looksBack : 0) +
    (said.some(({ w }) => askers.has(w)) ? asks : 0)
  )
}

/** The first word of each clause, and the first behind it. */
function clausesOf({ words }: Marked): (readonly [number, number])[] {
  const starts = words.flatMap(({ cut }, i) => (i === 0 || cut > 0 ? [i] : []))
  return starts.map((from, n) => [from, starts[n + 1] ?? words.length])
}

/** What the rules found is evidence among others: how much each weighs is learned. */
function addEvidence(evidence: readonly Evidence[], features: Set<number>): void {
  for (const { danger, tells, hints, excused } of evidence) {
    const of = hashOf(danger)
    if (tells.length > 0) features.add(place(mixed(of, excused ? 23 : 21)))
    if (tells.length > 0 && !excused) features.add(place(29))
    if (hints.length > 0) features.add(place(mixed(of, 25)))
    if (excused) features.add(place(mixed(of, 27)))
  }
}

/** Each figure, and each beside another. */
function addFigures(figures: readonly string[], features: Set<number>): void {
  for (const [n, figure] of figures.entries()) {
    features.add(place(mixed(hashOf(figure), 71)))
    for (const other of figures.slice(0, n)) features.add(place(mixed(mixed(hashOf(figure), 73), hashOf(other))))
  }
}

function addPieces({ words }: Marked, features: Set<number>): void {
  const text = ` ${words.map(({ w }) => w).join(' ')} `
  for (const length of pieces) {
    for (let from = 0; from + length <= text.length; from += 1) {
      let hash: number = length
      for (let i = from; i < from + length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 16777619)
      features.add(place(mixed(hash, 31)))
    }
  }
}

function deniedWords({ words, denies }: Marked): boolean[] {
  let left = 0
  return words.map(({ cut }, i) => {
    if (cut > 0) left = 0
    if (denies[i]) {
      left = denialReach
      return false
    }
    left -= 1
    return left >= 0
  })
}

function ideasAt(
  { signs, sequences }: Marked,
  at: number,
  concepts: ReadonlyMap<number, number>,
  salt: number,
): number[] {
  const ideas: number[] = []
  const add = (id: number) => {
    const concept = concepts.get(id)
    if (concept !== undefined) ideas.push(mixed(concept, salt))
  }
  for (const id of signs[at] ?? []) add(id)
  for (const id of sequences[at]?.keys() ?? []) add(id)
  return ideas
}

const known = new Map<string, number>()
const mostKnown = 5000

/** A number for a word, the same on every machine. */
export function hashOf(word: string): number {
  const there = known.get(word)
  if (there !== undefined) return there
  let hash = 2166136261
  for (let i = 0; i < word.length; i += 1) hash = Math.imul(hash ^ word.charCodeAt(i), 16777619)
  if (known.size > mostKnown) known.clear()
  known.set(word, hash)
  return hash
}

const mixed = (a: number, b: number): number => {
  const x = Math.imul(a ^ (b + 0x9e3779b9 + (a << 6)), 0x85ebca6b)
  return x ^ (x >>> 13)
}

const place = (hash: number): number => (Math.imul(hash, 0xc2b2ae35) >>> 12) & (places - 1)
