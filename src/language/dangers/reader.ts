// The lexicon and the rules, made ready once.

import { Rules } from './engine/evidence.ts'
import { Lexicon } from './engine/lexicon.ts'
import { Scope } from './engine/scope.ts'
import { concepts } from './lexicon/index.ts'
import { ordinaryWords } from './lexicon/ordinary.ts'
import { hashOf } from './opinion/features.ts'
import { rules } from './rules/index.ts'

export const lexicon = new Lexicon(concepts, ordinaryWords)
export const scope = new Scope(lexicon)
export const ready = new Rules(lexicon, scope, rules)

/** By the number that a concept has in the lexicon, one that its name gives on every machine. */
export const conceptNumbers: ReadonlyMap<number, number> = new Map(
  Object.keys(concepts).map(name => [lexicon.concept(name), hashOf(`@${name}`)]),
)
