// How far the charge of real cells at one resting voltage lies apart.

import type { Band } from '../simulation/charge.ts'
import type { Chemistry, Cited, VoltageCurve } from './chemistry.ts'
import { interpolate, socAt } from './curve.ts'
import { highVoltagePhoneCells, highVoltagePouch, liFeCells } from './published-curves.ts'

/** Least and most charge, in percent of the 4.20 V capacity, of twelve published 4.20 V cells. */
export const chargeOf4V20Cells: Cited<{
  readonly perCell_V: readonly number[]
  readonly least: readonly number[]
  readonly most: readonly number[]
}> = {
  value: {
    perCell_V: [3.5, 3.6, 3.7, 3.75, 3.8, 3.85, 3.9, 3.92, 3.95, 4.0, 4.05, 4.1, 4.15, 4.2],
    least: [2.8, 4.2, 15.3, 23.3, 43.4, 55.2, 63.7, 67.0, 70.2, 75.6, 80.9, 91.2, 96.1, 100],
    most: [30.7, 40.2, 54.8, 61.9, 67.6, 72.6, 77.2, 78.9, 81.4, 85.4, 89.2, 94.5, 99.1, 100],
  },
  standing: 'computed',
  source:
    'open-circuit tables of the cells in published-curves.ts and of Ramadass 2004, an NMC111 pouch (BPX examples) and production gauge tables',
}

/** Least and most state of charge, 0 to 1, that published cells of the chemistry have at rest at `perCell_V`. */
export function socBandAt(chemistry: Chemistry, perCell_V: number): Band {
  const own = socAt(chemistry, perCell_V)
  if (chemistry.full_V.value === 4.2) {
    const { perCell_V: volts, least, most } = chargeOf4V20Cells.value
    const low = interpolate(volts, least, perCell_V) / 100
    const high = interpolate(volts, most, perCell_V) / 100
    return { low: within(Math.min(low, own)), high: within(Math.max(high, own)) }
  }
  const cells = chemistry.name === 'LiFe' ? liFeCells : [highVoltagePouch, highVoltagePhoneCells]
  const socs = cells.map(cell => socOn(cell.value, perCell_V))
  return { low: Math.min(own, ...socs), high: Math.max(own, ...socs) }
}

function socOn({ perCell_V, soc }: VoltageCurve, volts: number): number {
  return within(interpolate(perCell_V, soc, volts))
}

function within(soc: number): number {
  return Math.min(1, Math.max(0, soc))
}
