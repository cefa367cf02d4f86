// How many: "two 4S 3300", "6x", "x8", "both", "a dozen", "140 cycles".

import { wordSet } from '../../../ground/word-set.ts'
import type { Family, Found, Sentence } from '../sentence/sentence.ts'

const named: ReadonlyMap<string, number> = new Map(
  Object.entries({ both: 2, pair: 2, couple: 2, dozen: 12, single: 1, twice: 2, once: 1, beide: 2, dual: 2, duo: 2 }),
)
const things = wordSet(
  'pack packs battery batteries accu accus akku akkus board boards charger chargers time times cycle cycles charges fills refills pcs pc piece pieces nos no lipos slots slot ports port outputs output outlets sockets channels of sets pairs lipo lihv flights more x others quads models planes identical',
)
/** Before a pack: it is one. */
const definite = wordSet('the a an this that')
const mostCounted = 1000
/** One thing behind such a number is told by it, and not counted. */
const leastCapacity = 60
/** "900 and 950 5S": what stands before it is another thing. */
const parting = /^(?:[,/&+]|and|or|on|at|in|with|for|from|to)$/
const single = /^(?:pack|battery|accu|akku|lipo|of|out)$/

export const findCounts: Family = (sentence, before) => {
  const told = before.filter(({ kind, score }) => kind === 'pack' && score > 0.4)
  const packs = new Set(told.map(({ first }) => first))
  const [only, ...others] = told
  const isOne = only !== undefined && others.length === 0 && definite.has(sentence.word(only.first - 1))
  const behind = new Set(told.map(({ after }) => after))
  return sentence.tokens.flatMap(
    (_, first) => namedAt(sentence, first) ?? numeralAt(sentence, first, packs, behind, isOne) ?? [],
  )
}

function namedAt(sentence: Sentence, first: number): Found | undefined {
  const value = named.get(sentence.word(first))
  // "Two single chargers" are two.
  if (value === undefined || (value === 1 && sentence.numerals[first - 1])) return undefined
  const score = sentence.word(first) === 'single' || value === 1 ? 0.3 : 0.65
  return { kind: 'count', text: String(value), first, after: first + 1, score }
}

function numeralAt(
  sentence: Sentence,
  first: number,
  packs: ReadonlySet<number>,
  behind: ReadonlySet<number>,
  isOne: boolean,
): Found | undefined {
  const numeral = sentence.wholeNumeral(first, 1, mostCounted)
  if (!numeral || /^0|[.,]/.test(sentence.word(first))) return undefined
  if (sentence.word(first) === 'one' && isStandIn(sentence, first)) return undefined
  if (isAllowed(sentence, first, numeral.after) || ofPlace.test(sentence.word(numeral.after))) return undefined
  const times = sentence.word(numeral.after) === 'x'
  // "4s1500x6", "1500 mAh x 6", "300 LiHV x 12": behind a capacity and a pack it counts, as it does by itself.
  const isBehind =
    Number(sentence.word(first - 2)) >= 60 || /^m?ah$/.test(sentence.word(first - 2)) || behind.has(first - 1)
  const isGlued = sentence.word(first - 1) === 'x' && sentence.glued(first)
  const crossed = isGlued || (isBehind && /^[x*]$/.test(sentence.word(first - 1)))
  const before = crossed && (isBehind || !sentence.glued(first - 1)) ? first - 1 : first
  const after = times && sentence.glued(numeral.after) ? numeral.after + 1 : numeral.after
  const units = sentence.measures[first]?.some(({ sure }) => sure > 0.8) ?? false
  const stuck = sentence.isStuck(after) && !times
  if (units || stuck || (sentence.word(first - 1) === ':' && sentence.glued(first))) return undefined
  // "Three climbs on the 6S 4500": one pack, and other things are counted.
  if (isOne && !packs.has(after) && /^\p{L}{3}/u.test(sentence.word(after)) && !things.has(sentence.word(after)))
    return undefined
  // "Three pairs of 6S 5000".
  const isPairs = sentence.word(after) === 'pairs'
  const text = String(numeral.value * (isPairs ? 2 : 1))
  if (times || before < first) return { kind: 'count', text, first: before, after, score: 0.85 }
  return { kind: 'count', text, first, after, score: scoreOf(sentence, first, after, packs, numeral.spelled) }
}

/** "Forty paces off": how far it stands, and nothing that is counted. */
const ofPlace = /^(?:paces?|steps?|strides?|yards?|feet|foot|met(?:re|er)s?|miles?|floors?|doors?|rows?)$/

/** "The label allows five": a rate, of which the unit goes without saying. */
const isAllowed = (sentence: Sentence, first: number, after: number): boolean =>
  /^(?:allows?|permits?|says?|states?)$/.test(sentence.word(first - 1)) &&
  /^(?:label|sticker|datasheet|maker)s?$/.test(sentence.word(first - 2)) &&
  !/^\p{L}/u.test(sentence.word(after))

/** "The 700 Wh one", "one of 65 W": it stands for what is told by that. */
const isStandIn = (sentence: Sentence, first: number): boolean =>
  (sentence.word(first + 1) === 'of' && (sentence.measures[first + 2]?.length ?? 0) > 0) ||
  sentence.measures.some(row => row.some(({ after }) => after === first))

function scoreOf(
  sentence: Sentence,
  first: number,
  after: number,
  packs: ReadonlySet<number>,
  spelled: boolean,
): number {
  const one = sentence.word(first) === 'one'
  // "His 1000 battery": its capacity.
  if (!spelled && Number(sentence.word(first)) >= leastCapacity && single.test(sentence.word(after))) return 0.2
  // "One of 65W" stands for the thing itself.
  if (one && sentence.word(after) === 'of') return 0.1
  const ofPack = packs.has(after) || (packs.has(after + 1) && !parting.test(sentence.word(after)))
  if (ofPack || things.has(sentence.word(behindHow(sentence, after)))) return one ? 0.7 : 0.88
  if (one) return 0.15
  return spelled ? 0.6 : 0.25
}

/** "Two small old chargers": what is counted, whatever it is like. */
export function behindHow(sentence: Sentence, after: number): number {
  let at = after
  while (like.has(sentence.word(at))) at += 1
  // "Three six-port chargers": both are counted.
  const behindHyphen = (next: number) => (sentence.word(next) === '-' ? next + 1 : next)
  const isPort = (next: number) => /^(?:port|output|outlet|channel|slot)$/.test(sentence.word(next))
  const ports = behindHyphen(sentence.numerals[at]?.after ?? at)
  return isPort(behindHyphen(at)) ? behindHyphen(at) : isPort(ports) ? ports + 1 : at
}
const like = wordSet(
  'single small little big old older new cheap simple plain basic identical equal same separate different normal other tiny used full empty flat spare dead loose unlabelled',
)
