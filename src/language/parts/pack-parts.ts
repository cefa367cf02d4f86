// The parts that people tell a pack by, each read where it stands.

import { cellClassNames } from '../../charging/things/cell-class.ts'
import { chemistryNamed } from '../../charging/things/chemistries.ts'
import type { Sentence } from '../candidates/sentence/sentence.ts'
import { phraseSet } from '../quantities/tokens.ts'
import { chemistryAt } from './chemistry.ts'
import { type Draft, leastDischargeRate_C, leastPlain_C, measured, mostParallel, mostSeries } from './draft.ts'
import { labelled, nominal_V } from './label-volts.ts'
import { bareCapacityAt, capacity } from './pack-capacity.ts'
import { formats } from './round-cells.ts'
import type { PartOf } from './whole.ts'

/** More than this no pack holds that flies here. */
const mostEnergy_Wh = 400

/** `3s`, `3 cell`, `three-cell`, `4s2p`, `four cells in series`. */
const cells: PartOf<Draft> = (sentence, at, draft) => {
  const numeral = sentence.numerals[at]
  if (draft.series !== undefined || !numeral || !Number.isInteger(numeral.value)) return undefined
  if (numeral.value < 1 || numeral.value > mostSeries) return undefined
  if (!sentence.isTalk && numeral.value !== (draft.nominal ?? numeral.value)) return undefined
  const hyphen = sentence.word(numeral.after) === '-' ? numeral.after + 1 : numeral.after
  const word = sentence.word(hyphen)
  if (word !== 's' && word !== 'cell' && word !== 'cells' && word !== 'zellen' && word !== 'series') return undefined
  if (word === 's' && sentence.isTalk && sentence.word(hyphen + 1) === '/') return undefined
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

const strings: PartOf<Draft> = (sentence, at, draft) => {
  const numeral = sentence.numerals[at]
  if (draft.parallel !== undefined || !numeral || sentence.word(numeral.after) !== 'p') return undefined
  if (!Number.isInteger(numeral.value) || numeral.value < 1 || numeral.value > mostParallel) return undefined
  draft.parallel = numeral.value
  return numeral.after + 1
}

const format: PartOf<Draft> = (sentence, at, draft) => {
  if (draft.format || !formats.has(sentence.word(at))) return undefined
  draft.format = formats.get(sentence.word(at))
  return sentence.word(at + 1) === 's' ? at + 2 : at + 1
}

const chemistry: PartOf<Draft> = (sentence, at, draft) => {
  if (draft.chemistry !== undefined) return undefined
  const run = chemistryAt(sentence, at)
  if (!run || !(sentence.isTalk || chemistryNamed(run.name))) return undefined
  draft.chemistry = run.name
  return run.after
}

const classWords = {
  'high drain': phraseSet('high drain, high - drain'),
  energy: phraseSet('energy cells, energy cell, high energy, high - energy'),
}
/** In talk it is told of anything. */
const energyAlone = phraseSet('energy')

const cellClass: PartOf<Draft> = (sentence, at, draft) => {
  for (const name of cellClassNames) {
    const alone = sentence.isTalk || name !== 'energy' ? undefined : sentence.phraseEnd(at, energyAlone)
    const after = draft.cellClass === undefined ? (sentence.phraseEnd(at, classWords[name]) ?? alone) : undefined
    if (after === undefined) continue
    draft.cellClass = name
    return after
  }
  return undefined
}

/** "Can my 40C 2200 give that": before what is told of a pack, and no word says that it is to be charged so. */
const opening = /^(?:|[,.;:(]|a|an|the|my|this)$/

const rate: PartOf<Draft> = (sentence, at, draft) => {
  const labelled = /^(?:label|labelled|labeled|rated|max)$/.test(sentence.word(at))
  const measure = measured(sentence, labelled ? at + 1 : at, 'rate')
  if (!measure || (measure.numeral.spelled && !labelled)) return undefined
  const isBeside =
    draft.series !== undefined ||
    draft.capacity_Ah !== undefined ||
    draft.chemistry !== undefined ||
    (measure.value >= leastPlain_C && sentence.numerals[measure.after] && opening.test(sentence.word(at - 1)))
  if (sentence.isTalk && !isBeside) return undefined
  const max = sentence.word(measure.after) === 'max' ? measure.after + 1 : measure.after
  const use = sentence.word(max)
  const charging = /^(?:charge|charging)$/.test(use)
  const giving = /^(?:discharge|burst|continuous|cont|peak)$/.test(use)
  const after = charging || giving ? max + 1 : measure.after
  const isLimit = charging || (!giving && (labelled || measure.value < leastDischargeRate_C))
  const isBare = !(charging || giving || labelled)
  const typed = sentence.typed(at, measure.after)
  if (!isLimit) {
    if (draft.dischargeRate_C === undefined && isBare) draft.typed.dischargeRate = typed
    draft.dischargeRate_C ??= measure.value
    return after
  }
  // "4s 1500 2C": the rate that is asked about.
  // One that no pack has is questioned where it is named as such, not left out.
  const isLabel = charging || (labelled && measure.value <= 20) || !sentence.isTalk
  if (!isLabel || draft.labelRate_C !== undefined) return undefined
  if (isBare) draft.typed.labelRate = typed
  draft.labelRate_C = measure.value
  return after
}

/** `11.1V` beside cells or capacity is what the label says, where it is that. */
const nominal: PartOf<Draft> = (sentence, at, draft) => {
  const volts = measured(sentence, at, 'voltage') ?? bareLabel(sentence, at)
  if (volts && isOfOne(sentence, volts, draft)) return volts.after
  const label = labelled(volts)
  if (draft.nominal !== undefined || !volts || !label) return undefined
  const { series, likely, perCell_V } = label
  if (draft.series !== undefined && draft.series !== series) return undefined
  // "4S 1500 15.2V": of cells that were counted other volts than the commonest are where they stand.
  const type = chemistryNamed(draft.chemistry ?? '')
  const isRead = draft.series !== undefined && perCell_V !== (type?.nominal_V.value ?? nominal_V)
  if (sentence.isTalk && isRead) return undefined
  draft.nominal = series
  if (sentence.isTalk) draft.likely = likely
  return volts.after
}

/** "1S 3.7V 300mAh": told between its cell and what that holds. */
const isOfOne = (sentence: Sentence, { value, after }: { value: number; after: number }, draft: Draft): boolean =>
  sentence.isTalk &&
  draft.series === 1 &&
  draft.capacity_Ah === undefined &&
  (value === 3.7 || value === 3.8) &&
  (measured(sentence, after, 'capacity') ?? bareCapacityAt(sentence, after)) !== undefined

/** "14.8 5000": right before a capacity, and no word says that something stands at so many volts. */
function bareLabel(sentence: Sentence, at: number) {
  const numeral = sentence.isTalk && !standing.test(sentence.word(at - 1)) ? sentence.bareNumeral(at) : undefined
  if (!numeral?.decimal.includes('.')) return undefined
  return (measured(sentence, numeral.after, 'capacity') ?? bareCapacityAt(sentence, numeral.after)) && numeral
}
const standing = /^(?:at|from|to|is|are|was|reads?|shows?|says?|rests?|sits?|only|down|until|=|@)$/

/** "35 Wh, 3S", "a 35 Wh pack of 3 cells". */
function cellsBehind(sentence: Sentence, behind: number): number | undefined {
  let at = behind
  while (/^(?:pack|battery|of|with|,)$/.test(sentence.word(at))) at += 1
  const numeral = sentence.wholeNumeral(at, 1, mostSeries)
  return numeral && /^(?:s|cells?)$/.test(sentence.word(numeral.after)) ? numeral.value : undefined
}

const energy: PartOf<Draft> = (sentence, at, draft) => {
  const measure = measured(sentence, at, 'energy')
  if (!measure || draft.typed.energy) return undefined
  if (draft.capacity_Ah === undefined && sentence.isTalk) {
    // Of named cells, or of volts on a label, the watt-hours tell the capacity.
    const behind = /^[,/]$/.test(sentence.word(measure.after)) ? measure.after + 1 : measure.after
    const series =
      draft.series ??
      draft.nominal ??
      labelled(measured(sentence, behind, 'voltage'))?.series ??
      cellsBehind(sentence, behind)
    if (series === undefined || measure.value > mostEnergy_Wh) return undefined
    const perCell_V = chemistryNamed(draft.chemistry ?? '')?.nominal_V.value ?? nominal_V
    draft.capacity_Ah = Number((measure.value / series / perCell_V).toPrecision(4))
    draft.label_Wh = measure.value
  }
  draft.typed.energy = sentence.typed(at, measure.after)
  return measure.after
}

const resistance: PartOf<Draft> = (sentence, at, draft) => {
  const measure = measured(sentence, at, 'resistance')
  if (!measure || draft.cellResistance_ohm !== undefined || measure.value > 1) return undefined
  // Readings of several cells may stand before a pack, as its own figure never does.
  if (sentence.isTalk && draft.series === undefined && draft.capacity_Ah === undefined) return undefined
  draft.cellResistance_ohm = measure.value
  return measure.after
}

/** In the order in which they are tried. */
const parts: readonly PartOf<Draft>[] = [
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

export function packPart(sentence: Sentence, at: number, draft: Draft): number | undefined {
  for (const part of parts) {
    const end = part(sentence, at, draft)
    if (end !== undefined) return end
  }
  return undefined
}
