// What was learned, made small: weights of eight bits, the least of them left out.

import { conceptsOf } from '../../src/language/model/concepts.ts'
import { hashOf } from '../../src/language/model/hash.ts'
import type { Model } from '../../src/language/model/model.ts'
import { wordsOf } from '../../src/language/model/words.ts'
import type { Example } from './examples.ts'
import type { Learned } from './learner.ts'

/** Weights nearer to 0 than `least` of 127 parts of the greatest are left out. */
export function condensed(learned: Learned, words: Uint32Array, intents: number, least = 7): Model {
  const unit = learned.weights.reduce((most, weight) => Math.max(most, Math.abs(weight)), 0) / 127
  const kept = { features: [] as number[], starts: [0], of: [] as number[], weights: [] as number[] }
  learned.features.forEach((feature, row) => {
    for (let intent = 0; intent < intents; intent += 1) {
      const weight = Math.round((learned.weights[row * intents + intent] ?? 0) / unit)
      if (Math.abs(weight) < least) continue
      kept.of.push(intent)
      kept.weights.push(weight)
    }
    if (kept.of.length === kept.starts.at(-1)) return
    kept.features.push(feature)
    kept.starts.push(kept.of.length)
  })
  return {
    temperature: 1,
    unit,
    intents,
    features: Uint32Array.from(kept.features),
    starts: Uint32Array.from(kept.starts),
    of: Uint16Array.from(kept.of),
    weights: Int8Array.from(kept.weights),
    words,
  }
}

/** Hashes, rising, of the words that two people write at least: a slip is seldom made by two. */
export function sharedWords(examples: readonly Example[]): Uint32Array {
  const first = new Map<string, number>()
  const shared = new Set<number>()
  for (const { person, text } of examples) {
    for (const word of wordsOf(text)) {
      const other = first.get(word)
      if (other === undefined) first.set(word, person)
      else if (other !== person && conceptsOf(word).length === 0) shared.add(hashOf(word))
    }
  }
  return Uint32Array.from(shared).sort()
}
