// Volts that a charge is to end at, against those at which the told cells are full.

import { chemistries } from '../../../charging/things/chemistries.ts'
import type { Relation, Told } from './relation.ts'
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
