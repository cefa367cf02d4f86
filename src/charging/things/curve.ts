// The open-circuit curve of a chemistry, read both ways and beyond its empty end, and the energy under it.

import type { Chemistry, VoltageCurve } from './chemistry.ts'

/** What a cell holds between the volts at which it counts as damaged and its empty end: about a hundredth. */
const shareBelowEmpty = 0.01

/** Where the curve falls from its empty end, in V a share of charge. */
export const slopeBelowEmpty_V = ({ curve, damage_V }: Chemistry): number =>
  Math.max(0.1, (curve.value.perCell_V[0] as number) - damage_V.value) / shareBelowEmpty

/** Diffusion of so many hours as a resistance, over a curve that rises evenly from end to end. */
export const diffusion_ohmAh = ({ curve }: Chemistry, diffusion_h: number): number =>
  diffusion_h * ((curve.value.perCell_V.at(-1) as number) - (curve.value.perCell_V[0] as number))

const extended = new WeakMap<Chemistry, VoltageCurve>()

/** The curve of a chemistry with the little that is left in a cell drained below its empty end. */
export function belowEmpty(chemistry: Chemistry): VoltageCurve {
  const known = extended.get(chemistry)
  if (known) return known
  const { soc, perCell_V } = chemistry.curve.value
  const lowest_V = (perCell_V[0] as number) - slopeBelowEmpty_V(chemistry) * shareBelowEmpty
  const curve = { soc: [-shareBelowEmpty, ...soc], perCell_V: [lowest_V, ...perCell_V] }
  extended.set(chemistry, curve)
  return curve
}

/** Straight-line interpolation through rising `xs`; beyond the ends the end segments go on. */
export function interpolate(xs: readonly number[], ys: readonly number[], x: number): number {
  const i = segmentAt(xs, x)
  const x0 = xs[i] as number
  const y0 = ys[i] as number
  return y0 + (((ys[i + 1] as number) - y0) * (x - x0)) / ((xs[i + 1] as number) - x0)
}

/** Index of the segment that holds `x`; the first or last one when `x` lies outside. */
export function segmentAt(xs: readonly number[], x: number): number {
  let low = 0
  let high = xs.length - 1
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if ((xs[middle] as number) <= x) low = middle
    else high = middle
  }
  return low
}

/**
 * Resting voltage of one cell, in V, at a state of charge 0 to 1 (clamped).
 * @throws RangeError when `soc` is not a finite number
 */
export function restingVoltage(chemistry: Chemistry, soc: number): number {
  const { curve } = chemistry
  return interpolate(curve.value.soc, curve.value.perCell_V, clampToUnit(soc))
}

/**
 * State of charge, 0 to 1, of a cell that rests at `perCell_V`; 0 below and 1 above the curve.
 * @throws RangeError when `perCell_V` is not a finite number
 */
export function socAt(chemistry: Chemistry, perCell_V: number): number {
  const { curve } = chemistry
  return clampToUnit(interpolate(curve.value.perCell_V, curve.value.soc, perCell_V))
}

/** Integral of the curve from state of charge `from` to `to`: volts, times capacity in Ah gives Wh. */
export function integrateCurve(curve: VoltageCurve, from: number, to: number): number {
  let sum = 0
  let at = from
  for (let i = segmentAt(curve.soc, from); at < to; i++) {
    const end = i >= curve.soc.length - 2 ? to : Math.min(to, curve.soc[i + 1] as number)
    sum += interpolate(curve.soc, curve.perCell_V, (at + end) / 2) * (end - at)
    at = end
  }
  return sum
}

function clampToUnit(soc: number): number {
  if (!Number.isFinite(soc)) throw new RangeError(`not a finite number: ${soc}`)
  return Math.min(1, Math.max(0, soc))
}
