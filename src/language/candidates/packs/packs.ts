// Packs as people name them: in full, in part, in any order: "4s1500", "6s 5000 65c lipo", "2200mah 3 cell", "a 1300".

import { wordSet } from '../../../ground/word-set.ts'
import { type Draft, leastPlain_C, measured } from '../../parts/draft.ts'
import { bareCapacityAt, packCapacity_Ah } from '../../parts/pack-capacity.ts'
import { packPart } from '../../parts/pack-parts.ts'
import { formats } from '../../parts/round-cells.ts'
import { writePackParts } from '../../things/pack.ts'
import type { ToldPack } from '../sentence/candidate.ts'
import { type Family, type Found, none, type Sentence } from '../sentence/sentence.ts'
import { decimalText } from '../sentence/written.ts'

interface Run {
  readonly first: number
  readonly after: number
  readonly draft: Draft
}

/** Longest packs have this many parts; it also bounds the work. */
const mostParts = 9
const glueWords = wordSet(
  'of with and pack packs battery batteries rated at built made up from using out cells each total',
)
const mostGlue = 5
const glueSigns = wordSet('- , / ( ) ;')

/** All the parts that stand together from this token on. */
function runAt(sentence: Sentence, first: number): Run | undefined {
  const draft: Draft = { sure: 1, typed: {} }
  let after = first
  for (let parts = 0; parts < mostParts; parts += 1) {
    const start = parts === 0 ? first : gapEnd(sentence, after, draft)
    const end = start === undefined ? undefined : packPart(sentence, start, draft)
    if (end === undefined) break
    after = end
  }
  return after > first ? { first, after, draft } : undefined
}

/** Where the next part may stand: a sign says little, words only where what follows them has its unit. */
function gapEnd(sentence: Sentence, after: number, draft: Draft): number | undefined {
  const sign = sentence.word(after)
  if (glueSigns.has(sign) && sign !== ',') return after + 1
  let at = sign === ',' ? after + 1 : after
  while (at < after + mostGlue && glueWords.has(sentence.word(at))) at += 1
  const next = at > after && sign !== ',' && sentence.word(at) === ',' ? at + 1 : at
  return next === after || isExplicit(sentence, next, draft) ? next : undefined
}

/** A capacity with its unit, a rate that no charge has, round cells, or cells in a word, of which the draft has none yet. */
function isExplicit(sentence: Sentence, at: number, draft: Draft): boolean {
  const numeral = sentence.numerals[at]
  if (!numeral) return false
  const rate = measured(sentence, at, 'rate')
  if (rate && rate.value >= leastPlain_C)
    return draft.dischargeRate_C === undefined && !/^charg/.test(sentence.word(rate.after))
  if (measured(sentence, at, 'capacity')) return draft.capacity_Ah === undefined
  // "6S3P of 3500s".
  const isOfCells = draft.parallel !== undefined && /^\d{4,5}$/.test(sentence.word(at)) && sentence.glued(numeral.after)
  if (isOfCells && sentence.word(numeral.after) === 's') return draft.capacity_Ah === undefined
  if (formats.has(sentence.word(at)))
    return draft.series !== undefined && (draft.format ?? draft.capacity_Ah) === undefined
  if (measured(sentence, at, 'energy')) return draft.capacity_Ah === undefined && draft.nominal !== undefined
  if (measured(sentence, at, 'voltage')) return draft.typed.energy !== undefined && draft.series === undefined
  if (draft.series === undefined && draft.capacity_Ah === undefined) {
    return /^(?:s|cells?)$/.test(sentence.word(numeral.after))
  }
  // "1300, 4S", but not "1300, 4S 1500", which are two packs.
  const isAlone = sentence.word(numeral.after) === 's' && !sentence.numerals[numeral.after + 1]
  if (draft.series === undefined) return isAlone || /^cells?$/.test(sentence.word(numeral.after))
  return draft.capacity_Ah === undefined && /^\d{3,5}$/.test(sentence.word(at)) && sentence.word(at - 1) === ','
}

/** What was told, without what only helped to read it. */
function toldOf({ draft }: Run): ToldPack {
  const { sure: _, typed: _t, nominal, format, cellsSure: _c, ...parts } = draft
  const told = {
    ...parts,
    capacity_Ah: packCapacity_Ah(draft),
    ofCell: (parts.ofCell && parts.parallel === undefined) || undefined,
    isRound: format !== undefined || undefined,
  }
  return told.series === undefined && nominal !== undefined ? { ...told, series: nominal } : told
}

/** Too large to fly, and not so large that it is a slip of the finger. */
export const feedsBySize = (capacity_Ah = 0): boolean => capacity_Ah > 60 && capacity_Ah <= 400

const owners = wordSet(
  'a an the my our his her your this that one of for old new each small big little two three four another',
)

/** How surely these parts are a pack; 0 where they are none. */
function scoreOf(sentence: Sentence, { first, after, draft }: Run): number {
  const { series, capacity_Ah, chemistry, nominal, ofCell, typed } = draft
  if (chemistry === 'AGM') return 0
  // As large a one is told by its volts and feeds things; larger ones there are none.
  if (series === undefined && (capacity_Ah ?? 0) >= 20) return 0.3
  if (feedsBySize(capacity_Ah)) return 0.5
  const named = [series ?? nominal, capacity_Ah, chemistry].filter(part => part !== undefined).length
  if (named === 3) return 0.98 * draft.sure
  if (named === 2) return 0.94 * draft.sure
  if (series !== undefined) return 0.86 * (draft.cellsSure ?? 1)
  if (capacity_Ah === undefined) return 0
  const owned = owners.has(sentence.word(first - 1))
  if (typed.bare && /^(?:pack|battery|accu|akku)$/.test(sentence.word(after))) return 0.8
  if (ofCell) return 0.8
  if (!typed.bare) return owned ? 0.6 : 0.4
  return isYear(sentence, first) ? 0 : owned || capacity_Ah >= 1 ? 0.45 : 0.3
}

const isYear = (sentence: Sentence, at: number): boolean =>
  /^(?:19|20)\d\d$/.test(sentence.word(at)) && /^(?:in|since|from|of|,)$/.test(sentence.word(at - 1))

export const findPacks: Family = sentence => {
  const found: Found[] = []
  let inside = 0
  for (let first = 0; first < sentence.tokens.length; first += 1) {
    if (first >= inside) {
      const run = runAt(sentence, first)
      const score = run && !isBehind(sentence, run) ? scoreOf(sentence, run) : 0
      if (run && score > 0) {
        found.push(foundPack(sentence, run, score))
        inside = run.after
      }
    }
    found.push(...partsAt(sentence, first))
  }
  return found.map(one => (isListed(sentence, one, found) ? { ...one, score: Math.max(one.score, leastListed) } : one))
}

/** "0 to 100 3S 2200": the cells are those of what stands behind them, and the number before is another. */
function isBehind(sentence: Sentence, { first, after, draft }: Run): boolean {
  const isCells = (at: number) => /^(?:s|cells?)$/.test(sentence.word(at))
  const next = bareCapacityAt(sentence, after)?.after
  const isOfNext = next !== undefined && !isCells(sentence.numerals[next]?.after ?? next)
  return isOfNext && isCells(after - 1) && draft.typed.bare === sentence.typed(first, first + 1)
}

/** "900 and 950 5S": a capacity beside another pack is one itself. */
const isListed = (sentence: Sentence, { pack, after }: Found, found: readonly Found[]): boolean =>
  pack?.capacity_Ah !== undefined &&
  /^(?:[/&+]|and|or)$/.test(sentence.word(after)) &&
  found.some(other => other.pack?.series !== undefined && other.first === after + 1)
const leastListed = 0.45

function foundPack(sentence: Sentence, run: Run, score: number): Found {
  const pack = toldOf(run)
  pack.count = countBefore(sentence, run.first)
  return { kind: 'pack', text: writePackParts(pack), first: run.first, after: run.after, score, pack }
}

function countBefore(sentence: Sentence, first: number): number | undefined {
  const at = /^(?:x|of|of my)$/.test(sentence.word(first - 1)) ? first - 2 : first - 1
  const numeral = sentence.wholeNumeral(at, 1, 100)
  return numeral && numeral.after >= first - 1 ? numeral.value : undefined
}

const putIn = wordSet('put puts went took takes gave in into back out used says said counted showed reads of')

/** A capacity by itself: mAh that were put in, or what a label says. */
function partsAt(sentence: Sentence, first: number): readonly Found[] {
  if (sentence.minusBefore(first) !== undefined) return none
  const measure = measured(sentence, first, 'capacity')
  const bare = measure || isYear(sentence, first) ? undefined : bareCapacityAt(sentence, first)
  const told = measure ?? bare
  if (!told || told.value > 300) return none
  const isPut = putIn.has(sentence.word(first - 1)) || putIn.has(sentence.word(told.after))
  const score = measure ? 0.7 * measure.sure : isPut ? 0.5 : 0.35
  return [{ kind: 'capacity', text: `${decimalText(told.value, 3)}mAh`, first, after: told.after, score }]
}
