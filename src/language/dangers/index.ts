// Dangers that a text tells in words, whatever else it asks.

import { type Danger, emergencies } from '../../charging/situation/dangers.ts'
import type { Evidence } from './engine/evidence.ts'
import type { Marked } from './engine/matcher.ts'
import { families } from './opinion/families.ts'
import { featuresOf } from './opinion/features.ts'
import { opinionOf, readWeights } from './opinion/opinion.ts'
import { conceptNumbers, lexicon, ready } from './reader.ts'
import { relations } from './relations/index.ts'
import { toldOf } from './relations/relation.ts'
import { valuesOf } from './relations/values.ts'
import { healthyVolts } from './relations/volts.ts'
import { foreignRules } from './tongues/index.ts'

export interface ToldDanger {
  readonly danger: Danger
  /** Where it stands in the text, and how it is typed there. */
  readonly start: number
  readonly end: number
  readonly typed: string
}

export interface DangersIn {
  /** Each danger once, in the order of the text. */
  readonly told: readonly ToldDanger[]
  /** Something sounds dangerous but cannot be named: never a plain go. */
  readonly suspected: boolean
}

/** Likelihoods of the second opinion, as they came out best on authors that it has not seen. */
const likely = { sure: 0.75, suspect: 0.4, withHint: 0.3, unlikely: 0.1 } as const

const weights = readWeights()

/** All dangers that a text tells, from its words; relations that values alone show are for the core. Never throws. */
export function dangersIn(text: string): DangersIn {
  const marked = ready.mark(text)
  const evidence = ready.evidenceIn(marked)
  const opinion = opinionOf(featuresOf(marked, conceptNumbers), weights)
  const values = toldOf(marked, valuesOf(marked.words), lexicon)
  const found = [...byRules(evidence), ...byRelations(values)]
  const isTalk = values.has('adminTalk')
  const isSound = healthyVolts(values)
  const stands = ({ danger, isForeign, isByRule }: Span) =>
    isForeign ||
    !isByRule ||
    emergencies.includes(danger) ||
    (opinion.any > likely.unlikely && !isTalk && !(danger === 'tooLow' && isSound))
  const told = once(found.filter(stands))
  const named =
    told.length === 0 && opinion.any > likely.sure && !isTalk ? bySecondOpinion(evidence, opinion.families) : []
  const hinted = evidence.some(({ hints, tells }) => hints.length + tells.length > 0)
  return {
    told: [...told, ...named].map(span => toldDanger(span, marked, text)),
    suspected: found.length > told.length || opinion.any > (hinted ? likely.withHint : likely.suspect),
  }
}

interface Span {
  readonly danger: Danger
  /** Words from, up to, not including. */
  readonly from: number
  readonly to: number
  /** Told in another tongue than English, of which the second opinion knows little. */
  readonly isForeign?: boolean
  readonly isByRule?: boolean
}

function byRules(evidence: readonly Evidence[]): Span[] {
  return evidence
    .filter(({ tells, excused }) => tells.length > 0 && !excused)
    .map(({ danger, rule, tells }) => ({
      danger,
      from: tells[0]?.from ?? 0,
      to: tells[0]?.to ?? 0,
      isForeign: foreignRules.includes(rule),
      isByRule: true,
    }))
}

function byRelations(values: ReturnType<typeof toldOf>): Span[] {
  return relations.map(relation => relation(values)).filter(judged => judged !== undefined)
}

/** The danger that the likeliest family has a hint of; none where there is no hint. */
function bySecondOpinion(evidence: readonly Evidence[], byFamily: readonly number[]): Span[] {
  const family = families[byFamily.indexOf(Math.max(...byFamily))] ?? []
  for (const { danger, tells, hints } of evidence) {
    const clue = tells[0] ?? hints[0]
    if (clue !== undefined && family.includes(danger)) return [{ danger, from: clue.from, to: clue.to }]
  }
  return []
}

const once = (spans: readonly Span[]): Span[] =>
  spans
    .filter(({ danger }, i) => spans.findIndex(other => other.danger === danger) === i)
    .sort((a, b) => a.from - b.from)

function toldDanger({ danger, from, to }: Span, { words }: Marked, text: string): ToldDanger {
  const start = words[from]?.start ?? 0
  const end = words[to - 1]?.end ?? text.length
  return { danger, start, end, typed: text.slice(start, end) }
}
