// Numbers that are only said not to hold: "12 V, not 24", "not 3 A but 2 A", "a 4S instead of a 3S".

import { wordSet } from '../../../ground/word-set.ts'
import type { Measure } from '../../quantities/measures.ts'
import type { Numeral } from '../../quantities/numerals.ts'
import type { Tokens } from '../../quantities/tokens.ts'
import type { Aside } from './asides.ts'

/** A text and the numbers in it, by the token at which each begins. */
interface Numbers {
  readonly tokens: Tokens
  readonly numerals: readonly (Numeral | undefined)[]
  readonly measures: readonly (readonly Measure[])[]
}

interface Told extends Aside {
  /** What it is a number of; undefined where no unit tells. */
  readonly kind: string | undefined
}

const between = wordSet('a an the my our his her at to from with on of for by in about quite exactly')
/** Before these words "not" asks, or leaves it open. */
const asking = wordSet('why or if is are was can could should would may do does did how whether')
/** So large a number without a unit is a capacity. */
const leastCapacity = 60

/** The numbers that do not hold, each where another of its kind does, with the word that says so. */
export function rejectedIn({ tokens, numerals, measures }: Numbers): readonly Aside[] {
  const rejected: Told[] = []
  if (!tokens.mentions(denying)) return rejected
  const told = numerals.flatMap((numeral, at) => (numeral && toldAt(tokens, numeral, measures[at] ?? [])) ?? [])
  for (const at of tokens.tokens.keys()) {
    const isNot = tokens.word(at) === 'not'
    const isInstead = instead.has(`${tokens.word(at)} ${tokens.word(at + 1)}`)
    const chain = isNot || isInstead ? chainFrom(tokens, told, at + (isNot ? 1 : 2)) : []
    if (asking.has(tokens.word(at - 1)) && tokens.word(chain.at(-1)?.after ?? at) !== 'but') continue
    // Of what a reminder or a note is to have in place of something its command reads both.
    const isRead = isNot || chain[0]?.kind === 'cells'
    const others = told.filter(one => !chain.includes(one) && !rejected.some(({ after }) => after === one.after))
    for (const [n, one] of isRead ? chain.entries() : []) {
      const holds = ({ kind, after }: Told) =>
        kind === one.kind || (n === 0 && (one.kind === undefined || (kind === undefined && at - after <= 1)))
      if (others.some(holds)) rejected.push(n === 0 ? { ...one, first: at } : one)
    }
  }
  return rejected.map(({ first, after }) => ({ first, after }))
}

const denying = wordSet('not instead rather')
const instead = wordSet('instead of,rather than', ',')

function toldAt(
  tokens: Tokens,
  { first, after, value, spelled, needsUnit }: Numeral,
  measures: readonly Measure[],
): Told | undefined {
  if (/^(?:s|cells?)$/.test(tokens.word(after))) return { first, after: after + 1, kind: 'cells' }
  // "1C" may be degrees too, and a rate is a current.
  const measure = measures.find(({ dimension }) => dimension === 'rate') ?? measures[0]
  if (measure)
    return { first, after: measure.after, kind: measure.dimension === 'rate' ? 'current' : measure.dimension }
  // "Not one of them".
  if (needsUnit || (spelled && value === 1)) return undefined
  return { first, after, kind: value >= leastCapacity ? 'capacity' : undefined }
}

/** Numbers right behind one another, each with its unit. */
function chainFrom(tokens: Tokens, told: readonly Told[], from: number): readonly Told[] {
  let at = from
  while (between.has(tokens.word(at)) && !told.some(({ first }) => first === at)) at += 1
  const chain: Told[] = []
  for (let next = told.find(({ first }) => first === at); next; next = told.find(({ first }) => first === at)) {
    chain.push(next)
    at = next.after
  }
  return chain
}
