// Volts at which a pack is full: a charger that still works at them does what it should.

import { cutoffOf } from './cutoff.ts'
import { isWhole, type Told, textOf } from './relation.ts'
import { type Chemistry, countIn, type Value } from './values.ts'

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
