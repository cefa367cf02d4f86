// What the second opinion looks at: words, pairs of words, concepts, and concepts that stand near each other, denied or not.

import type { Marked } from '../engine/matcher.ts'

/** Features share this many places; a power of two. */
export const places = 65536
/** For the families places are folded to so many. */
export const familyPlaces = 16384

const window = 5
const denialReach = 8
const number = 7919

/** The places of the features of a text, each once. `concepts` gives the number of each concept that a sign is. */
export function featuresOf(marked: Marked, concepts: ReadonlyMap<number, number>): ReadonlySet<number> {
  const { words } = marked
  const features = new Set<number>()
  const denied = deniedWords(marked)
  const word = words.map(({ w, value }, i) => mixed(value === undefined ? hashOf(w) : number, denied[i] ? 3 : 1))
  const ideas = words.map((_, i) => ideasAt(marked, i, concepts, denied[i] ? 5 : 2))
  for (let i = 0; i < words.length; i += 1) {
    const here = word[i] ?? 0
    features.add(place(here))
    const next = words[i + 1]
    const next2 = words[i + 2]
    if (next !== undefined && next.cut < 2) {
      features.add(place(mixed(here, word[i + 1] ?? 0)))
      if (next2 !== undefined && next2.cut < 2) features.add(place(mixed(mixed(here, 11), word[i + 2] ?? 0)))
    }
    for (const idea of ideas[i] ?? []) features.add(place(idea))
    for (let j = i + 1; j <= i + window; j += 1) {
      if (words[j] === undefined || words[j]?.cut === 2) break
      for (const a of ideas[i] ?? []) for (const b of ideas[j] ?? []) features.add(place(mixed(a, b)))
    }
  }
  return features
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

const place = (hash: number): number => (Math.imul(hash, 0xc2b2ae35) >>> 15) & (places - 1)
