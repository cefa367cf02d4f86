// The voltage curves of the cells that a pack may be made of, and where a rested cell stands on its own.

import { unseen } from '../numbers/unseen.ts'
import type { Chemistry } from '../things/chemistry.ts'
import { interpolate, slopeBelowEmpty_V } from '../things/curve.ts'
import { draws } from './design.ts'

/** Points of a curve at equal steps of charge. */
const points = 41
/** How far off its chemistry's curve a cell is, over how far published ones are. */
const nearest = 0.5
const furthest = 1.7
/** A curve never falls from point to point. */
const leastRise_V = 1e-4
const curvesKnown = new WeakMap<Chemistry, Curves>()

interface Curves {
  /** The chemistry's own. */
  readonly own: Float64Array
  /** One for each draw. */
  readonly drawn: readonly Float64Array[]
}

const sampled = (of: (soc: number) => number): Float64Array =>
  Float64Array.from({ length: points }, (_, point) => of(point / (points - 1)))

/** The chemistry's own curve, and one for each draw: between the chemistry's own and those of its published cells, ends where its own has them. */
export function curvesOf(chemistry: Chemistry): Curves {
  const known = curvesKnown.get(chemistry)
  if (known) return known
  const own = chemistry.curve.value
  const ends_V = [own.perCell_V[0] as number, own.perCell_V.at(-1) as number] as const
  const own_V = (soc: number) => interpolate(own.soc, own.perCell_V, soc)
  const drawn = draws.map((_, index) => {
    // In turn through the cells, as far off the chemistry's own as they are, nearer or further.
    const other = chemistry.curves[index % chemistry.curves.length]?.value ?? own
    const times = unseen(chemistry.curves.length) * (nearest + (furthest - nearest) * ((index * 0.618034) % 1))
    const otherV = [ends_V[0], ...other.perCell_V.slice(1, -1), ends_V[1]]
    let last_V = ends_V[0] - leastRise_V
    return sampled(soc => {
      const there_V = own_V(soc)
      last_V = Math.max(last_V + leastRise_V, there_V + times * (interpolate(other.soc, otherV, soc) - there_V))
      return last_V
    })
  })
  const made = { own: sampled(own_V), drawn }
  curvesKnown.set(chemistry, made)
  return made
}

/** The charge of a cell that rests at `rest_V`; a little below 0 under the curve's empty end, 1 above its full one. */
export function socOn(curve_V: Float64Array, rest_V: number, chemistry: Chemistry): number {
  const empty_V = curve_V[0] as number
  if (rest_V < empty_V) return (rest_V - empty_V) / slopeBelowEmpty_V(chemistry)
  const last = curve_V.length - 1
  let i = 0
  while (i < last - 1 && (curve_V[i + 1] as number) <= rest_V) i++
  const left_V = curve_V[i] as number
  return Math.min(1, (i + (rest_V - left_V) / ((curve_V[i + 1] as number) - left_V)) / last)
}
