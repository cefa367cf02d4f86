// What a pack or each of its cells holds, with a unit or, as pilots write it, without one.

import { problemAt } from '../../ground/plain-text.ts'
import type { Wanted } from '../../ground/problem.ts'
import type { Sentence } from '../candidates/sentence/sentence.ts'
import { checked } from '../quantities/quantity.ts'
import { phraseSet } from '../quantities/tokens.ts'
import { decimalText } from '../scan/number.ts'
import { chemistryAt } from './chemistry.ts'
import { type Draft, measured, wantedPack } from './draft.ts'
import { capacityWithUnit, mAhOrAh } from './pack.words.ts'
import { formats } from './round-cells.ts'
import type { PartOf } from './whole.ts'

/** Larger ones are seldom built into packs: common practice. */
const largestCell_Ah = 10
const each = phraseSet('per cell, a cell, each cell, each, apiece')
const cellsSay =
  /(?:^| )(?:(?:single |each |one |per )cell|cells)(?: (?:label|says|is|are|has|have|holds?|of|with|at|:|rated))*$/

/** "3000 mAh cells", "cells of 3 Ah", "3 Ah apiece": what one cell of it holds. */
function cellEnd(
  sentence: Sentence,
  at: number,
  { parallel }: Draft,
  { value, after }: { value: number; after: number },
) {
  if (value > largestCell_Ah) return undefined
  const said = Array.from({ length: 4 }, (_, back) => sentence.word(at - 4 + back)).join(' ')
  const told = sentence.phraseEnd(after, each)
  if (told !== undefined) return told
  // "6S3P of 3500s": of so many cells side by side.
  if (parallel !== undefined && /^(?:of|from)$/.test(sentence.word(at - 1)) && sentence.word(after - 1) === 's')
    return after
  const kind = formats.has(sentence.word(after)) ? after + 1 : (chemistryAt(sentence, after)?.after ?? after)
  return sentence.word(kind) === 'cells' || cellsSay.test(said.trim()) ? after : undefined
}

export const capacity: PartOf<Draft> = (sentence, at, draft) => {
  // Less than nothing is no capacity: it is asked for.
  if (draft.capacity_Ah !== undefined || sentence.minusBefore(at) !== undefined) return undefined
  const measure = measured(sentence, at, 'capacity')
  const bare = measure ? undefined : anyBareCapacity(sentence, at, draft)
  const told = measure ? { value: measure.value, after: measure.after } : bare
  // "2.2 mAh" is a slip, in talk: its reader says what it takes it for.
  if (sentence.isTalk && measure && measure.value < least_Ah) return undefined
  if (!told || (!draft.series && (told.value < least_Ah || told.value > 300))) return undefined
  draft.capacity_Ah = told.value
  draft.sure *= measure?.sure ?? 1
  if (bare) draft.typed.bare = sentence.typed(at, bare.after)
  const ofCell = cellEnd(sentence, at, draft, told)
  if (ofCell !== undefined) draft.ofCell = true
  return ofCell ?? told.after
}

const anyBareCapacity = (sentence: Sentence, at: number, draft: Draft) =>
  sentence.isTalk
    ? (bareCapacityAt(sentence, at) ?? besideCells(sentence, at, draft))
    : formats.has(sentence.word(at))
      ? undefined
      : bareInDetail(sentence, at)

/** Any number that is no count of packs ("6 3S 720 LiHV") and begins no list; throws a Problem where it could be Ah as well. */
function bareInDetail(sentence: Sentence, at: number): { value: number; after: number } | undefined {
  const isSigned = sentence.word(at) === '-' && !sentence.glued(at)
  const numeral = sentence.bareNumeral(isSigned ? at + 1 : at)
  if (!numeral || /^[/-]$/.test(sentence.word(numeral.after))) return undefined
  const cells = sentence.numerals[numeral.after]?.after ?? at
  if (sentence.word(cells) === 's' && sentence.numerals[cells + 1]) return undefined
  const typed = sentence.typed(at, numeral.after)
  const decimal = numeral.spelled ? numeral.decimal : decimalText(typed, asked)
  if (Number(decimal) > 0 && Number(decimal) < leastBare_mAh) throw problemAt(typed, mAhOrAh, asked)
  return {
    value: checked(Number(`${decimal}e-3`), typed, 'capacity', { example: wantedPack.example }),
    after: numeral.after,
  }
}

const least_Ah = 0.02
/** A bare number from here on is mAh, the trade's habit; below it could be Ah as well. */
const leastBare_mAh = 20
const asked: Wanted = { expected: capacityWithUnit, example: wantedPack.example }

/** "4s 2200 wh?": behind cells it is their capacity, whatever is asked about it. */
function besideCells(sentence: Sentence, at: number, draft: Draft): { value: number; after: number } | undefined {
  const numeral = sentence.numerals[at]
  if (draft.series === undefined || !numeral || sentence.glued(numeral.after)) return undefined
  const typed = sentence.word(at)
  return /^[1-9]\d{2,}$/.test(typed) && !formats.has(typed) ? { value: Number(typed) / 1000, after: at + 1 } : undefined
}

/** `1500`, `2200s`, `220ish`, `fifteen hundred`: 60 to 30,000, and nothing behind it that makes it something else. */
export function bareCapacityAt(sentence: Sentence, at: number): { value: number; after: number } | undefined {
  const numeral = sentence.numerals[at]
  // The size of a round cell is no capacity.
  if (!numeral || numeral.needsUnit || formats.has(sentence.word(at))) return undefined
  const mAh = Number(numeral.thousands ?? numeral.decimal)
  if (!Number.isInteger(mAh) || mAh < (numeral.spelled ? 250 : 60) || mAh > 30_000) return undefined
  if (sentence.word(at).startsWith('0') || (sentence.word(at - 1) === ':' && sentence.glued(at))) return undefined
  const suffix = sentence.word(numeral.after)
  if (sentence.glued(numeral.after) && (suffix === 's' || suffix === 'ish'))
    return { value: mAh / 1000, after: numeral.after + 1 }
  const other = sentence.measures[at]?.some(({ after }) => after > numeral.after)
  const isTimes = suffix === 'x' && sentence.numerals[numeral.after + 1] !== undefined
  return other || (sentence.isStuck(numeral.after) && !isTimes)
    ? undefined
    : { value: mAh / 1000, after: numeral.after }
}

/** That of one cell as often as cells stand side by side; so is one that a cell of the named size can hold: "3s2p 21700 4000". */
export const packCapacity_Ah = ({ capacity_Ah, parallel = 1, format = 0, ofCell }: Draft): number | undefined =>
  capacity_Ah !== undefined && (ofCell || capacity_Ah <= format) ? ofStrings_Ah(capacity_Ah, parallel) : capacity_Ah

/** Of so many strings of cells side by side. */
export const ofStrings_Ah = (cell_Ah: number, parallel: number): number => Number((cell_Ah * parallel).toPrecision(12))
