// The one place that says go: from a situation, and from what an answer would have somebody do, to a verdict with its reasons.

import { type Danger, dangers } from '../situation/dangers.ts'
import { type Doubt, doubts, ofPack } from '../situation/doubts.ts'
import type { Permit } from '../situation/permit.ts'
import { type Rule, type Weight, weights } from '../situation/rule.ts'
import type { Planned, Situation } from '../situation/situation.ts'
import { type Known, knownOf } from './limits/facts.ts'
import { type LimitKey, limits } from './limits/index.ts'
import type { Limit, Side } from './limits/row.ts'
import { type TraitKey, traits } from './traits.ts'

export type Verdict = 'go' | 'go with care' | 'do not charge'
export type RuleKey = Danger | Doubt | LimitKey | TraitKey

/** A rule that fits, with the limit and the number that met it where it has them. */
export interface Found {
  readonly key: RuleKey
  readonly weight: Weight
  readonly from: string
  readonly than?: number
  readonly met?: number
  readonly known: Known
}

export interface Judgement {
  readonly situation: Situation
  readonly verdict: Verdict
  /** Heaviest first; of one weight in the order of the tables. */
  readonly found: readonly Found[]
  /** Absent where it refuses, and where there is no pack to deal with. */
  readonly permit: Permit | undefined
}

/** `planned` is what an answer would have somebody do: judged again under the permit that it was computed with. */
export function judge(situation: Situation, planned: Planned = {}): Judgement {
  const known = knownOf(situation, planned)
  const { dangers: toldDangers, doubts: toldDoubts } = situation
  const all = [
    ...told(dangers, toldDangers, known),
    ...measured(known),
    ...told(doubts, hangsOnCells(situation) ? toldDoubts : toldDoubts.filter(one => !ofPack.includes(one)), known),
    ...fitting(known),
  ]
  // Who may not charge is told no current to charge with.
  const isForbidden = all.some(one => one.weight === 'refuse' && !guides(one))
  const found = byWeight(isForbidden ? all.filter(one => !guides(one)) : all)
  const verdict = verdictOf(found)
  const permitted = verdict !== 'do not charge' && situation.pack !== undefined
  return { situation, verdict, found, permit: permitted ? ({ situation } as Permit) : undefined }
}

const guides = ({ key }: Found): boolean => (limits as Readonly<Record<string, Limit>>)[key]?.guides === true

const hangsOnCells = ({ pack, labelOnly }: Situation): boolean => pack !== undefined && !labelOnly

export const byWeight = (found: readonly Found[]): readonly Found[] =>
  found.toSorted((a, b) => weights.indexOf(a.weight) - weights.indexOf(b.weight))

export function verdictOf(found: readonly Pick<Found, 'weight'>[]): Verdict {
  const weighs = (weight: Weight) => found.some(one => one.weight === weight)
  if (weighs('refuse')) return 'do not charge'
  return weighs('must') || weighs('care') ? 'go with care' : 'go'
}

const foundOf = (key: RuleKey, { weight, from }: Rule, known: Known): Found => ({ key, weight, from, known })

/** In the order of the table, whatever the order in which they were told. */
const told = <K extends RuleKey>(
  table: Readonly<Record<K, Rule>>,
  keys: readonly K[],
  known: Known,
): readonly Found[] =>
  keys.length === 0
    ? []
    : (Object.keys(table) as K[]).filter(key => keys.includes(key)).map(key => foundOf(key, table[key], known))

const breaks: Readonly<Record<Side, (value: number, than: number) => boolean>> = {
  below: (value, than) => value < than,
  above: (value, than) => value > than,
  upTo: (value, than) => value <= than,
}

/** Of rows on one side of one number the heaviest speaks for the others. */
function measured(known: Known): Found[] {
  const { act } = known.situation
  const spoken = new Set<string>()
  const found: Found[] = []
  for (const [key, limit] of byHeaviness) {
    const met = known.facts[limit.fact]
    if (met === undefined || !limit.acts.includes(act)) continue
    const than = limit.than(known)
    if (than === undefined || !breaks[limit.side](met, than)) continue
    const side = `${limit.fact} ${limit.side === 'above'}`
    if (!limit.besides && spoken.has(side)) continue
    spoken.add(side)
    found.push({ ...foundOf(key, limit, known), than, met })
  }
  return found
}

const byHeaviness = (Object.entries(limits) as [LimitKey, Limit][]).toSorted(
  ([, a], [, b]) => weights.indexOf(a.weight) - weights.indexOf(b.weight),
)

const fitting = (known: Known): Found[] =>
  (Object.keys(traits) as TraitKey[])
    .filter(key => traits[key].fits(known.situation))
    .map(key => foundOf(key, traits[key], known))
