// Volts against those at which the told cells are full: those that a charge is to end at, and those that a charger shows.

import { chemistries } from '../../../charging/things/chemistries.ts'
import { isWhole, type Relation, type Told, textOf } from './relation.ts'
import { isDeniedAt } from './setting.ts'
import { type Chemistry, chemistryIn, countIn, keyOf, type Value } from './values.ts'

/** So far above full, in V, is no rounding; LiFe is charged to 3.60 and to 3.65 V: common practice. */
const margin = { life: 0.06, others: 0.02 } as const
/** More volts a cell are those of something else. */
const most_V = 6

/** A cutoff above what cells of the told type take; without a type above what any take. */
export const cutoffTooHigh: Relation = told => {
  // "To extend its life": a word like any, unless it stands behind the numbers of a pack; what is meant the core knows.
  const named = chemistryIn(told.values)
  const chemistry = named === 'life' && !isBehindNumber(told) ? undefined : named
  if (chemistry === 'nickel' || chemistry === 'lead') return undefined
  const allowed_V = fullOf(chemistry) + (chemistry === 'life' ? margin.life : margin.others)
  const count = countIn(told.values) ?? 1
  const high = told.values.find(one => {
    if (one.kind !== 'volts' && (one.kind !== 'bare' || Number.isInteger(one.value))) return false
    const perCell_V = one.value < most_V ? one.value : one.value / count
    return perCell_V > allowed_V && perCell_V < most_V && isEnd(told, one) && !isDeniedAt(told, one)
  })
  return high && { danger: 'wrongMode', from: high.from, to: high.to }
}

/** Where cells of that type are full, plain ones without one, in V. */
export const cutoffOf = (chemistry: Chemistry | undefined): number => fullOf(chemistry ?? 'lipo')

const fullOf = (chemistry: Chemistry | undefined): number =>
  Math.max(
    ...chemistries.filter(one => chemistry === undefined || keyOf(one) === chemistry).map(({ full_V }) => full_V.value),
  )

const isBehindNumber = ({ values }: Told): boolean =>
  values.some(
    ({ chemistry, from }) => chemistry === 'life' && values.some(({ kind, to }) => kind !== 'chemistry' && to === from),
  )

const ending = /^(?:cut\w*|end\w*|until|till?|stop\w*|terminat\w*|target|finish\w*)$/
const between = /^(?:off|volts?|voltage|is|was|are|at|of|to|set|the|a|an|up|around|about)$/

/** What ends is said right before the volts, with small words between: "the cutoff is set to 4.5 V". */
function isEnd({ marked: { words } }: Told, { from }: Value): boolean {
  let at = from - 1
  while (between.test(words[at]?.w ?? '')) at -= 1
  return ending.test(words[at]?.w ?? '')
}

/** So near to full, in V per cell, a meter shows full. */
const margin_V = 0.01
const mostCells = 14
/** What it does at full does not last, and ends in no more. */
const isOdd =
  /\b(?:over|past|beyond|above|hours?|ages|forever|never|always|long|day|days|night|since|more|went|gone|took|taken|wont|mah|hot|warm|smell\w*|puff\w*|swell\w*|climb\w*|ris\w*)\b/

function typesIn(values: readonly Value[]): readonly (Chemistry | undefined)[] {
  const types = values.flatMap(({ chemistry }) => chemistry ?? [])
  return types.length > 0 ? types : [undefined]
}

/** "It shows 25.2 V and still says charging": exactly what so many cells have when they are full, and nothing odd of it. */
export function isJustFull(told: Told): boolean {
  // Of several types the one that is full first: the others' volts may have gone into it.
  const full_V = Math.min(...typesIn(told.values).map(cutoffOf))
  const count = countIn(told.values)
  const read = told.values.filter(one => one.kind === 'volts' || (one.kind === 'bare' && !isWhole(told, one)))
  const isFull = ({ value }: { readonly value: number }) => {
    const cells = value < full_V + 1 ? 1 : (count ?? Math.round(value / full_V))
    return cells <= mostCells && Math.abs(value / cells - full_V) <= margin_V
  }
  return read.length > 0 && read.every(isFull) && !isOdd.test(textOf(told.marked.words))
}
