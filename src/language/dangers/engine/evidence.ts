// What the rules find in a text: for each danger what tells it, what hints at it, and what excuses it.

import type { Danger } from '../../../charging/situation/dangers.ts'
import type { DangerRule } from '../rules/rule.ts'
import { type Lexicon, sourcesIn } from './lexicon.ts'
import { type Found, Index, type Marked } from './matcher.ts'
import type { Scope } from './scope.ts'
import { wordsOf } from './words.ts'

type Part = 'tells' | 'hints' | 'excuses'

interface Clue {
  readonly danger: Danger
  readonly part: Part
  readonly rule: DangerRule
  readonly source: string
}

export interface Evidence {
  readonly danger: Danger
  readonly rule: DangerRule
  readonly tells: readonly Found<Clue>[]
  readonly hints: readonly Found<Clue>[]
  readonly denied: number
  readonly past: number
  readonly excused: boolean
}

export class Rules {
  readonly #index = new Index<Clue>()
  readonly #lexicon: Lexicon
  readonly #scope: Scope

  constructor(lexicon: Lexicon, scope: Scope, rules: readonly DangerRule[]) {
    this.#lexicon = lexicon
    this.#scope = scope
    for (const rule of rules) {
      for (const part of ['tells', 'hints', 'excuses'] as const) {
        for (const source of sourcesIn(rule[part] ?? '')) {
          this.#index.add(lexicon.pattern(source), { danger: rule.danger, part, rule, source })
        }
      }
    }
  }

  mark(text: string): Marked {
    return this.#lexicon.mark(wordsOf(text), marked => this.#scope.deniers(marked))
  }

  evidenceIn(marked: Marked): Evidence[] {
    const byRule = Map.groupBy(this.#index.find(marked), ({ what }) => what.rule)
    const there = conceptsIn(marked)
    const silent = ({ needs }: DangerRule) =>
      needs !== undefined && !needs.some(name => there.has(this.#lexicon.concept(name)))
    return [...byRule].filter(([rule]) => !silent(rule)).map(([rule, found]) => this.#weigh(rule, found, marked))
  }

  #weigh(rule: DangerRule, found: readonly Found<Clue>[], marked: Marked): Evidence {
    let denied = 0
    let past = 0
    const stands = (one: Found<Clue>): boolean => {
      if (this.#scope.isDenied(one, marked)) {
        denied += 1
        return false
      }
      if (rule.ofThing && this.#scope.isOfPerson(one, marked)) {
        denied += 1
        return false
      }
      if (one.what.part !== 'excuses' && rule.passes && this.#scope.isPast(one, marked)) {
        past += 1
        return false
      }
      return true
    }
    const standing = found.filter(stands)
    return {
      danger: rule.danger,
      rule,
      tells: standing.filter(({ what }) => what.part === 'tells'),
      hints: standing.filter(({ what }) => what.part === 'hints'),
      excused: standing.some(({ what }) => what.part === 'excuses'),
      denied,
      past,
    }
  }
}

/** The numbers of all concepts and words that stand anywhere. */
function conceptsIn({ signs, sequences }: Marked): ReadonlySet<number> {
  const there = new Set<number>()
  for (const ids of signs) for (const id of ids) there.add(id)
  for (const ends of sequences) for (const id of ends.keys()) there.add(id)
  return there
}
