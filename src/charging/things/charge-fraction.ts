// How far the charge of real cells at one resting voltage lies apart.

import type { Band, Chemistry, VoltageCurve } from './chemistry.ts'
import { interpolate, socAt } from './curve.ts'

/** Least and most state of charge, 0 to 1, that published cells of the chemistry have at rest at `perCell_V`. */
export function socBandAt(chemistry: Chemistry, perCell_V: number): Band {
  const own = socAt(chemistry, perCell_V)
  const { cells } = chemistry
  if ('value' in cells) {
    const { perCell_V: volts, least, most } = cells.value
    const low = interpolate(volts, least, perCell_V) / 100
    const high = interpolate(volts, most, perCell_V) / 100
    return { low: within(Math.min(low, own)), high: within(Math.max(high, own)) }
  }
  const socs = cells.map(cell => socOn(cell.value, perCell_V))
  return { low: Math.min(own, ...socs), high: Math.max(own, ...socs) }
}

function socOn({ perCell_V, soc }: VoltageCurve, volts: number): number {
  return within(interpolate(perCell_V, soc, volts))
}

function within(soc: number): number {
  return Math.min(1, Math.max(0, soc))
}
