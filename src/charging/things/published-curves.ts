// Open-circuit voltage curves and charge fractions as published, each with its source.

import type { ChargeTable, Cited, VoltageCurve } from './chemistry.ts'
import { computed, published } from './cited.ts'
import curves from './published-curves.json' with { type: 'json' }

interface Stored {
  readonly source: string
  /** At every twentieth of the charge, empty first. */
  readonly perCell_V: readonly number[]
}

const soc: readonly number[] = Array.from({ length: 21 }, (_, i) => i / 20)
const curve = ({ source, perCell_V }: Stored): Cited<VoltageCurve> => published({ soc, perCell_V }, source)

/** LiCoO2/graphite pouch. */
export const lcoPouch = curve(curves.lcoPouch)

const cansAndPouches = curves.cansAndPouches.map(curve)

/** Five Li-ion cells: two Ni-rich measured, then NMC811, NMC532 and NCA computed from half cells. */
export const liIonCells: readonly Cited<VoltageCurve>[] = [...curves.niRichCans.map(curve), ...cansAndPouches]

/** LiFePO4 cells: one measured, one computed from half cells. */
export const liFeCells: readonly Cited<VoltageCurve>[] = curves.liFeCells.map(curve)

/** High-voltage pouch, worked back from one measured C/3 charge, to 4.335 V. */
export const highVoltagePouch = curve(curves.highVoltagePouch)

/** Mean of four high-voltage phone cells, to 4.326 V. */
export const highVoltagePhoneCells = curve(curves.highVoltagePhoneCells)

const { source, ...table } = curves.chargeOf4V20Cells

/** Least and most charge, in percent of the 4.20 V capacity, of twelve published 4.20 V cells. */
export const chargeOf4V20Cells = computed<ChargeTable>(table, source)

/** Pouches of 4.20 V: cobalt, a power cell and two that are sold as cans too. */
export const pouchCells: readonly Cited<VoltageCurve>[] = [lcoPouch, curve(curves.powerPouch), ...cansAndPouches]
