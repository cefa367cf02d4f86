// A pack: cells in series and parallel, a chemistry and a capacity, with what its label adds.

import type { CellClassName } from './cell-class.ts'
import type { Chemistry } from './chemistry.ts'

export interface Pack {
  readonly chemistry: Chemistry
  /** Cells in series, 1 to 14. */
  readonly series: number
  /** Cells in parallel, 1 to 8. */
  readonly parallel: number
  /** Capacity on the label, of the whole pack, in Ah: 0.02 to 60. */
  readonly capacity_Ah: number
  /** Charge-rate limit on the label, in C. */
  readonly labelRate_C?: number
  /** The large C number on the label: what it can give in flight, never a rate of charging. */
  readonly dischargeRate_C?: number
  /** What its cells are made for, where that was told. */
  readonly cellClass?: CellClassName
  /** Measured internal resistance of one cell position in series (all its parallel cells together), in ohm. */
  readonly cellResistance_ohm?: number
}
