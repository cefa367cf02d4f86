// Dangers that a text tells in words, whatever else it asks.

import { type Danger, isEmergency } from '../../charging/situation/dangers.ts'
import { lately } from '../../ground/lately.ts'
import { glossed } from '../tongues/gloss.ts'
import { isReadInPart, languageOf } from '../tongues/tongue.ts'
import type { Evidence } from './engine/evidence.ts'
import type { Marked } from './engine/matcher.ts'
import { isOfThePack } from './of-the-pack.ts'
import { featuresOf } from './opinion/features.ts'
import { judged, type Opinion, opinionOf, readWeights } from './opinion/opinion.ts'
import { conceptNumbers, lexicon, ready } from './reader.ts'
import { figuresIn } from './relations/figures.ts'
import { asksInGeneral, preventedFrom } from './relations/general.ts'
import { relations } from './relations/index.ts'
import { alsoSuspected, besideOthers, disproved, ofOthers } from './relations/otherwise.ts'
import { toldOf } from './relations/relation.ts'
import { valuesOf } from './relations/values.ts'

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

/**
 * Likelihoods from which a danger counts as told and as suspected; with what a rule found, excused or not, or a clue,
 * less is enough; of an emergency that a rule found both likelihoods in one. Chosen on people left out of the training:
 * of their ordinary messages 14 % are suspected or told.
 */
const likely = {
  told: 0.48,
  toldByRule: 0.38,
  plainly: 0.03,
  emergency: 0.12,
  named: 0.35,
  barely: 0.25,
  anything: 0.15,
  suspected: 0.26,
  suspectedByClue: 0.19,
  suspectedByRule: 0.075,
} as const
/** Of so few words nothing stands around that would make it another matter. */
const fewWords = { told: 9, suspected: 21 } as const
/** A share from which the opinion agrees with what a rule found. */
const agreed = 0.4
/** Of words that were put into English one by one, where a suspicion can say little. */
const likelyInGloss = { ...likely, told: 0.5, toldByRule: 0.3 } as const
/** What a rule found of a danger adds so much to its share, more where little else is said. */
const worthOfRule = { amid: 0.05, plainly: 0.6 } as const
/** A further danger is suspected, and told, from this share on: the first line must not speak of the wrong one. */
const alsoLikely = { suspected: 0.25, told: 0.45 } as const

const weights = readWeights()

/** All dangers that a text tells, from its words; relations that values alone show are for the core. Never throws. */
export const dangersIn = lately((text: string): DangersIn => {
  const language = languageOf(text)
  if (!isReadInPart(language)) return dangersInEnglish(text)
  const { text: english, spanOf } = glossed(text, language)
  const { told, suspected } = dangersInGloss(english)
  const typed = told.map(({ danger, start, end }) => ({ danger, ...spanOf(start, end) }))
  return { told: typed.map(one => ({ ...one, typed: text.slice(one.start, one.end) })), suspected }
})

/** Those that values alone show, beside each other. Never throws. */
export function dangersBetweenValues(text: string): readonly Danger[] {
  const marked = ready.mark(text)
  const values = toldOf(marked, valuesOf(marked.words), lexicon)
  return relations.map(relation => relation(values)?.danger).filter(danger => danger !== undefined)
}

/** What the opinion says of words that were put into English one by one counts for little: the rules alone will do. */
export const dangersInGloss = (text: string): DangersIn => dangersInEnglish(text, () => true)

const nothing: DangersIn = { told: [], suspected: [] }

function dangersInEnglish(text: string, isByRule?: (one: Evidence) => boolean): DangersIn {
  const marked = ready.mark(text)
  const evidence = ready.evidenceIn(marked)
  const values = toldOf(marked, valuesOf(marked.words), lexicon)
  if (asksInGeneral(values)) return nothing
  const prevented = preventedFrom(values)
  if (prevented !== undefined) return dangersInEnglish(text.slice(0, marked.words[prevented]?.start ?? 0), isByRule)
  const features = featuresOf(marked, evidence, figuresIn(values.values), conceptNumbers)
  const opinion = opinionOf(features, weights)
  const lifted = new Set(evidence.filter(isLifted).map(({ danger }) => danger))
  const isElse = (danger: Danger) => ofOthers[danger]?.(values) ?? false
  const isOut = (danger: Danger) => lifted.has(danger) || isElse(danger) || (disproved[danger]?.(values) ?? false)
  const possible = opinion.shares.filter((_, n) => !isOut(judged[n] as Danger))
  const any = asSureAsWhich(withoutThose(opinion, isOut), Math.max(...possible))
  const standing = evidence.filter(one => !isElse(one.danger))
  const tells = standing.filter(one => one.tells.length > 0 && !one.excused)
  const isPlain = marked.words.length <= fewWords.told
  const worth = worthOfRule[isPlain ? 'plainly' : 'amid']
  const all = ranked(opinion.shares, tells, worth).filter(({ danger }) => !isOut(danger))
  const shareOf = (danger: Danger) => opinion.shares[judged.indexOf(danger)] ?? 0
  const isFound = (danger: Danger) => evidence.some(one => one.danger === danger)
  const isLikelyEmergency = (danger: Danger) => any * shareOf(danger) > likely.emergency
  const isLikelyNamed = (danger: Danger) =>
    isEmergency({ danger })
      ? shareOf(danger) > likely.named && isLikelyEmergency(danger)
      : isFound(danger) || shareOf(danger) > likely.barely
  const { told: sure, toldByRule } = isByRule ? likelyInGloss : likely
  const isByWords = any > (tells.length === 0 ? sure : toldByRule)
  const isTold = (danger: Danger) =>
    isByWords || (isPlain && any > likely.plainly && tells.some(one => one.danger === danger))
  // Nobody is sent away from a fire that is only the likeliest of many things, nor told of what may be anything.
  const byWords = likeliest(all, alsoLikely.told).filter(danger => isTold(danger) && isLikelyNamed(danger))
  const isOfOther = (danger: Danger) => besideOthers[danger]?.(values) ?? false
  const found = once([
    ...relations.map(relation => relation(values)).filter(found => found !== undefined),
    ...[
      ...tells
        .filter(
          one => isByRule?.(one) ?? ((isEmergency(one) && isLikelyEmergency(one.danger)) || isOfThePack(one, marked)),
        )
        .map(({ danger }) => danger),
      ...byWords,
    ].map(danger => spanOf(danger, evidence, marked)),
  ])
  const told = found.filter(({ danger }) => !isOfOther(danger))
  const others = found.flatMap(({ danger }) => (isOfOther(danger) ? [danger] : []))
  const has = (part: 'tells' | 'hints'): boolean => standing.some(one => one[part].length > 0)
  const enough = has('tells') ? likely.suspectedByRule : has('hints') ? likely.suspectedByClue : likely.suspected
  const isAgreed = tells.some(({ danger }) => shareOf(danger) > agreed)
  // Rules that find two dangers bear each other out.
  const isSaid = tells.length > 1 || (tells.length > 0 && (isAgreed || marked.words.length <= fewWords.suspected))
  // What is only found of dangers that it shows to be none is no reason for another.
  const isAnything = standing.some(one => !isOut(one.danger)) || shareOf(all[0]?.danger as Danger) > likely.anything
  const isSuspected = told.length === 0 && isAnything && (isSaid || any > enough)
  const mayBurn = tells.filter(isEmergency).map(({ danger }) => danger)
  const suspected = others.length > 0 ? others : isSuspected ? likeliest(all, alsoLikely.suspected) : []
  return {
    told: told.map(span => toldDanger(span, marked, text)),
    // Whatever else is told, smoke that may be is spoken of.
    suspected: [...new Set([...suspected, ...mayBurn, ...alsoSuspected(values)])].filter(
      danger => !told.some(one => one.danger === danger),
    ),
  }
}

/** Whether nothing tells it, and what sounds like it is all denied or said to be otherwise. */
const isLifted = ({ tells, hints, denied, excused }: Evidence): boolean =>
  tells.length === 0 && (excused || (denied > 0 && hints.length === 0))

/** How likely any danger is that is not out of the question: what looked like another one is little reason to see one. */
function withoutThose({ any, shares }: Opinion, isOut: (danger: Danger) => boolean): number {
  const out = judged.reduce((sum, danger, n) => sum + (isOut(danger) ? (shares[n] ?? 0) : 0), 0)
  return (any * (1 - out) ** 2) / (1 - any * out)
}

/** Who cannot tell which danger it is has little to say for there being any. Fitted on people left out of the training. */
function asSureAsWhich(any: number, share: number): number {
  const odds = (any / (1 - any)) * Math.exp(1.9 * (share - 0.45))
  return odds / (1 + odds)
}

interface Span {
  readonly danger: Danger
  /** Words from, up to, not including. */
  readonly from: number
  readonly to: number
}

interface Share {
  readonly danger: Danger
  readonly share: number
}

/** In the order of likelihood, with what the rules found. */
function ranked(shares: readonly number[], tells: readonly Evidence[], worth: number): readonly Share[] {
  const found = (of: Danger) => (tells.some(({ danger }) => danger === of) ? worth : 0)
  return judged
    .map((danger, n) => ({ danger, share: (shares[n] ?? 0) + found(danger) }))
    .sort((a, b) => b.share - a.share)
}

/** The likeliest, and another where it is nearly as likely. */
const likeliest = (of: readonly Share[], also: number): readonly Danger[] =>
  of
    .slice(0, 2)
    .filter(({ share }, n) => n === 0 || share > also)
    .map(({ danger }) => danger)

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
