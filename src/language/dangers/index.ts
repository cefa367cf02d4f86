// Dangers that a text tells in words, whatever else it asks.

import { type Danger, emergencies } from '../../charging/situation/dangers.ts'
import { glossed } from '../tongues/gloss.ts'
import { isReadInPart, languageOf } from '../tongues/tongue.ts'
import type { Evidence } from './engine/evidence.ts'
import type { Marked } from './engine/matcher.ts'
import { featuresOf } from './opinion/features.ts'
import { judged, opinionOf, readWeights } from './opinion/opinion.ts'
import { conceptNumbers, lexicon, ready } from './reader.ts'
import { relations } from './relations/index.ts'
import { toldOf } from './relations/relation.ts'
import { valuesOf } from './relations/values.ts'
import { healthyVolts } from './relations/volts.ts'

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
  /** Dangers that it may well tell, the likeliest first: said before any answer, never a plain go. */
  readonly suspected: readonly Danger[]
}

/** Likelihoods from which a danger counts as told and as suspected; with what a rule found, or a clue, less is enough. */
const likely = { told: 0.7, suspected: 0.5, toldByRule: 0.35, suspectedByClue: 0.3 } as const
/** What a rule found of a danger adds so much to its share. */
const worthOfRule = 0.3
/** A further danger is named from this share on. */
const alsoLikely = 0.25

const weights = readWeights()

/** All dangers that a text tells, from its words; relations that values alone show are for the core. Never throws. */
export function dangersIn(text: string): DangersIn {
  const language = languageOf(text)
  if (!isReadInPart(language)) return dangersInEnglish(text)
  const { text: english, spanOf } = glossed(text, language)
  const { told, suspected } = dangersInGloss(english)
  const typed = told.map(({ danger, start, end }) => ({ danger, ...spanOf(start, end) }))
  return { told: typed.map(one => ({ ...one, typed: text.slice(one.start, one.end) })), suspected }
}

/** What the opinion says of words that were put into English one by one counts for little: the rules alone will do. */
export const dangersInGloss = (text: string): DangersIn => dangersInEnglish(text, () => true)

function dangersInEnglish(text: string, isByRule = isEmergency): DangersIn {
  const marked = ready.mark(text)
  const evidence = ready.evidenceIn(marked)
  const { any, shares } = opinionOf(featuresOf(marked, evidence, conceptNumbers), weights)
  const values = toldOf(marked, valuesOf(marked.words), lexicon)
  const tells = evidence.filter(one => one.tells.length > 0 && !one.excused)
  const likeliest = named(shares, tells).filter(danger => !(danger === 'tooLow' && healthyVolts(values)))
  const byWords = any > (tells.length > 0 ? likely.toldByRule : likely.told) ? likeliest : []
  const told = once([
    ...relations.map(relation => relation(values)).filter(found => found !== undefined),
    ...[...tells.filter(isByRule).map(({ danger }) => danger), ...byWords].map(danger =>
      spanOf(danger, evidence, marked),
    ),
  ])
  const hasClue = evidence.some(one => one.danger === likeliest[0] && one.tells.length + one.hints.length > 0)
  const isLikely = any > (hasClue ? likely.suspectedByClue : likely.suspected)
  const isSuspected = told.length === 0 && (tells.length > 0 || isLikely)
  return { told: told.map(span => toldDanger(span, marked, text)), suspected: isSuspected ? likeliest : [] }
}

interface Span {
  readonly danger: Danger
  /** Words from, up to, not including. */
  readonly from: number
  readonly to: number
}

/** The likeliest, and another where it is nearly as likely; in the order of likelihood. */
function named(shares: readonly number[], tells: readonly Evidence[]): readonly Danger[] {
  const worth = new Map(judged.map((danger, n) => [danger, shares[n] ?? 0]))
  for (const { danger } of tells) worth.set(danger, (worth.get(danger) ?? 0) + worthOfRule)
  return [...worth]
    .sort(([, a], [, b]) => b - a)
    .slice(0, 2)
    .filter(([, share], n) => n === 0 || share > alsoLikely)
    .map(([danger]) => danger)
}

/** What rules alone decide. */
const isEmergency = ({ danger }: Evidence): boolean => emergencies.includes(danger)

/** Where the rules have a clue of it, else the whole. */
function spanOf(danger: Danger, evidence: readonly Evidence[], { words }: Marked): Span {
  const clues = evidence.filter(one => one.danger === danger).flatMap(({ tells, hints }) => [...tells, ...hints])
  return { danger, from: clues[0]?.from ?? 0, to: clues[0]?.to ?? words.length }
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
