// A text in tokens, with the numerals and the measured quantities among them.

import { type Measure, measuresAt } from '../../quantities/measures.ts'
import { type Numeral, numeralAt } from '../../quantities/numerals.ts'
import { Tokens } from '../../quantities/tokens.ts'
import { type Aside, asidesIn } from './asides.ts'
import type { ToldPack, ValueName } from './candidate.ts'
import { rejectedIn } from './rejected.ts'

export class Sentence extends Tokens {
  /** Somebody's words, in which some numbers are about other things; a detail has none of these. */
  readonly isTalk: boolean
  readonly asides: readonly Aside[]
  /** By the token at which they begin. */
  readonly numerals: readonly (Numeral | undefined)[]
  readonly measures: readonly (readonly Measure[])[]

  /** `text` must be plain text. */
  constructor(text: string, isTalk = true) {
    super(text)
    this.isTalk = isTalk
    const asides = isTalk ? asidesIn(this) : []
    const numerals = this.tokens.map((_, at) => (isIn(asides, at) ? undefined : numeralAt(this, at, isTalk)))
    const measures = numerals.map(numeral => (numeral ? measuresAt(this, numeral, isTalk) : []))
    const rejected = isTalk ? rejectedIn({ tokens: this, numerals, measures }) : []
    this.asides = [...asides, ...rejected]
    this.numerals = numerals.map((numeral, at) => (isIn(rejected, at) ? undefined : numeral))
    this.measures = measures.map((found, at) => (isIn(rejected, at) ? [] : found))
  }

  /** A number without a unit at this token, none that is stuck to what is behind it. */
  bareNumeral(at: number): Numeral | undefined {
    const numeral = this.numerals[at]
    if (!numeral || numeral.needsUnit || this.measures[at]?.length !== 0) return undefined
    // "this one"
    if (numeral.spelled && numeral.value === 1) return undefined
    return this.isStuck(numeral.after) ? undefined : numeral
  }

  /** A whole number within these, with or without a unit. */
  wholeNumeral(at: number, least: number, most: number): Numeral | undefined {
    const numeral = this.numerals[at]
    if (!numeral || numeral.needsUnit || !Number.isInteger(numeral.value)) return undefined
    return numeral.value >= least && numeral.value <= most ? numeral : undefined
  }

  /** "-5", "minus five": the token of the sign before this number; undefined where it has none. */
  minusBefore(at: number): number | undefined {
    const sign = this.word(at - 1)
    const isFree = !this.glued(at - 1) || opening.test(this.word(at - 2))
    const isMinus = /^(?:minus|menos|moins)$/.test(sign) || (sign === '-' && this.glued(at) && isFree)
    return isMinus ? at - 1 : undefined
  }
}

/** "temp=-15", "(-5 outside)", "…-3": behind words, numbers, units and brackets a dash parts two of them. */
const opening = /^[^\p{L}\p{N}%°)\]}]$/u

const isIn = (asides: readonly Aside[], at: number): boolean =>
  asides.some(({ first, after }) => at >= first && at < after)

/** A candidate before its surroundings are looked at; `after` is the token behind it. */
export interface Found {
  readonly kind: ValueName
  readonly text: string
  readonly first: number
  readonly after: number
  readonly score: number
  readonly pack?: ToldPack
  readonly remains?: true
}

/** Finds the candidates of some kinds; `found` is what the families before it have found. Never throws. */
export type Family = (sentence: Sentence, found: readonly Found[]) => readonly Found[]

/** What a family gives where nothing is. */
export const none: readonly Found[] = []
