// The parts that people tell a pack by, each read where it stands.

import { cellClassNames } from '../../charging/things/cell-class.ts'
import { chemistryNamed } from '../../charging/things/chemistries.ts'
import type { Sentence } from '../candidates/sentence/sentence.ts'
import { phraseSet } from '../candidates/sentence/tokens.ts'
import { chemistryAt } from './chemistry.ts'
import { type Draft, type DraftPart, leastDischargeRate_C, measured, mostParallel, mostSeries } from './draft.ts'
import { labelledSeries, nominal_V } from './label-volts.ts'
import { formats } from './round-cells.ts'

/** More than this no pack holds that flies here. */
const mostEnergy_Wh = 400

/** `3s`, `3 cell`, `three-cell`, `4s2p`, `four cells in series`. */
const cells: DraftPart = (sentence, at, draft) => {
  const numeral = sentence.numerals[at]
  if (draft.series !== undefined || !numeral || !Number.isInteger(numeral.value)) return undefined
  if (numeral.value < 1 || numeral.value > mostSeries) return undefined
  const hyphen = sentence.word(numeral.after) === '-' ? numeral.after + 1 : numeral.after
  const word = sentence.word(hyphen)
  if (word !== 's' && word !== 'cell' && word !== 'cells' && word !== 'zellen' && word !== 'series') return undefined
  if (word === 's' && sentence.word(hyphen + 1) === '/') return undefined
  // "5 mohm a cell": of each.
  if (numeral.needsUnit && sentence.measures.some(row => row.some(({ after }) => after === at))) return undefined
  draft.series = numeral.value
  draft.cellsSure = cellsSure(sentence, numeral.after, hyphen, numeral.value)
  return sentence.phraseEnd(hyphen, inSeries) ?? hyphen + 1
}

const inSeries = phraseSet('cells in series, cell in series')

function cellsSure(sentence: Sentence, after: number, at: number, value: number): number {
  const word = sentence.word(at)
  // "one cell is lower" counts a cell; "2 cell" counts those of a pack.
  if (word !== 's') return value === 1 ? 0.35 : word === 'cells' ? 0.7 : 0.95
  return sentence.glued(after) ? 1 : 0.9
}

const strings: DraftPart = (sentence, at, draft) => {
  const numeral = sentence.numerals[at]
  if (draft.parallel !== undefined || !numeral || sentence.word(numeral.after) !== 'p') return undefined
  if (!Number.isInteger(numeral.value) || numeral.value < 1 || numeral.value > mostParallel) return undefined
  draft.parallel = numeral.value
  return numeral.after + 1
}

/** Larger ones are seldom built into packs: common practice. */
const largestCell_Ah = 10
const each = phraseSet('per cell, a cell, each cell, each, apiece')
const cellsSay =
  /(?:^| )(?:(?:single |each |one |per )cell|cells)(?: (?:label|says|is|are|has|have|holds?|of|with|at|:|rated))*$/

/** "3000 mAh cells", "cells of 3 Ah", "3 Ah apiece": what one cell of it holds. */
function cellEnd(sentence: Sentence, at: number, { value, after }: { value: number; after: number }) {
  if (value > largestCell_Ah) return undefined
  const said = Array.from({ length: 4 }, (_, back) => sentence.word(at - 4 + back)).join(' ')
  const told = sentence.phraseEnd(after, each)
  if (told !== undefined) return told
  const kind = formats.has(sentence.word(after)) ? after + 1 : (chemistryAt(sentence, after)?.after ?? after)
  return sentence.word(kind) === 'cells' || cellsSay.test(said.trim()) ? after : undefined
}

const capacity: DraftPart = (sentence, at, draft) => {
  // Less than nothing is no capacity: it is asked for.
  if (draft.capacity_Ah !== undefined || sentence.minusBefore(at) !== undefined) return undefined
  const measure = measured(sentence, at, 'capacity')
  const bare = measure ? undefined : (bareCapacityAt(sentence, at) ?? besideCells(sentence, at, draft))
  const told = measure ? { value: measure.value, after: measure.after } : bare
  if (!told || (!draft.series && (told.value < 0.02 || told.value > 300))) return undefined
  draft.capacity_Ah = told.value
  draft.sure *= measure?.sure ?? 1
  if (bare) draft.bare = true
  const ofCell = cellEnd(sentence, at, told)
  if (ofCell !== undefined) draft.ofCell = true
  return ofCell ?? told.after
}

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

const format: DraftPart = (sentence, at, draft) => {
  if (draft.format || !formats.has(sentence.word(at))) return undefined
  draft.format = formats.get(sentence.word(at))
  return sentence.word(at + 1) === 's' ? at + 2 : at + 1
}

/** That of one cell as often as cells stand side by side; so is one that a cell of the named size can hold: "3s2p 21700 4000". */
export const packCapacity_Ah = ({ capacity_Ah, parallel = 1, format = 0, ofCell }: Draft): number | undefined =>
  capacity_Ah !== undefined && (ofCell || capacity_Ah <= format) ? ofStrings_Ah(capacity_Ah, parallel) : capacity_Ah

/** Of so many strings of cells side by side. */
export const ofStrings_Ah = (cell_Ah: number, parallel: number): number => Number((cell_Ah * parallel).toPrecision(12))

const chemistry: DraftPart = (sentence, at, draft) => {
  if (draft.chemistry !== undefined) return undefined
  const run = chemistryAt(sentence, at)
  if (!run) return undefined
  draft.chemistry = run.name
  return run.after
}

const classWords = {
  'high drain': phraseSet('high drain, high - drain'),
  energy: phraseSet('energy cells, energy cell, high energy, high - energy'),
}

const cellClass: DraftPart = (sentence, at, draft) => {
  for (const name of cellClassNames) {
    const after = draft.cellClass === undefined ? sentence.phraseEnd(at, classWords[name]) : undefined
    if (after === undefined) continue
    draft.cellClass = name
    return after
  }
  return undefined
}

const rate: DraftPart = (sentence, at, draft) => {
  const labelled = /^(?:label|labelled|labeled|rated|max)$/.test(sentence.word(at))
  const measure = measured(sentence, labelled ? at + 1 : at, 'rate')
  if (!measure || (measure.numeral.spelled && !labelled)) return undefined
  if (draft.series === undefined && draft.capacity_Ah === undefined && draft.chemistry === undefined) {
    return undefined
  }
  const max = sentence.word(measure.after) === 'max' ? measure.after + 1 : measure.after
  const use = sentence.word(max)
  const charging = /^(?:charge|charging)$/.test(use)
  const giving = /^(?:discharge|burst|continuous|cont|peak)$/.test(use)
  const after = charging || giving ? max + 1 : measure.after
  const isLimit = charging || (!giving && (labelled || measure.value < leastDischargeRate_C))
  if (!isLimit) {
    draft.dischargeRate_C ??= measure.value
    return after
  }
  // "4s 1500 2C": the rate that is asked about.
  // One that no pack has is questioned where it is named as such, not left out.
  const isLabel = charging || (labelled && measure.value <= 20)
  if (!isLabel || draft.labelRate_C !== undefined) return undefined
  draft.labelRate_C = measure.value
  return after
}

/** `11.1V` beside cells or capacity is what the label says, where it is that. */
const nominal: DraftPart = (sentence, at, draft) => {
  const measure = measured(sentence, at, 'voltage')
  const series = labelledSeries(measure)
  if (draft.nominal !== undefined || !measure || series === undefined) return undefined
  if (draft.series !== undefined && draft.series !== series) return undefined
  draft.nominal = series
  return measure.after
}

const energy: DraftPart = (sentence, at, draft) => {
  const measure = measured(sentence, at, 'energy')
  if (!measure || draft.energy) return undefined
  if (draft.capacity_Ah === undefined) {
    // Of named cells, or of volts on a label, the watt-hours tell the capacity.
    const behind = /^[,/]$/.test(sentence.word(measure.after)) ? measure.after + 1 : measure.after
    const series = draft.series ?? draft.nominal ?? labelledSeries(measured(sentence, behind, 'voltage'))
    if (series === undefined || measure.value > mostEnergy_Wh) return undefined
    const perCell_V = chemistryNamed(draft.chemistry ?? '')?.nominal_V.value ?? nominal_V[0]
    draft.capacity_Ah = Number((measure.value / series / perCell_V).toPrecision(4))
    draft.label_Wh = measure.value
  }
  draft.energy = true
  return measure.after
}

const resistance: DraftPart = (sentence, at, draft) => {
  const measure = measured(sentence, at, 'resistance')
  if (!measure || draft.cellResistance_ohm !== undefined || measure.value > 1) return undefined
  // Readings of several cells may stand before a pack, as its own figure never does.
  if (draft.series === undefined && draft.capacity_Ah === undefined) return undefined
  draft.cellResistance_ohm = measure.value
  return measure.after
}

/** In the order in which they are tried. */
export const draftParts: readonly DraftPart[] = [
  cells,
  strings,
  format,
  capacity,
  nominal,
  rate,
  energy,
  resistance,
  chemistry,
  cellClass,
]
