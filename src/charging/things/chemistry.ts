// What a cell chemistry allows: its voltages, charge rates and temperatures, each with where it comes from.

import type { CellClass } from './cell-class.ts'

/** What house rules and stored things call a chemistry: the `name` of its entry. */
export type ChemistryName = string

/** How firmly a number stands: `published` = read in the named source, `memory` = from memory of it. */
export type Standing = 'published' | 'computed' | 'common practice' | 'memory'

/** A number with the least and the most that real packs of its kind may have. */
export interface Band {
  readonly low: number
  readonly high: number
}

/** A number (or small table) with its provenance, so that a reply can show where it comes from. */
export interface Cited<T = number> {
  readonly value: T
  readonly standing: Standing
  readonly source: string
}

/** One band of cell temperature and what charging is allowed in it. */
export interface TemperatureBand {
  readonly from_C: number
  readonly to_C: number
  /** Highest charge rate in the band, in C; the chemistry's own limit still applies. */
  readonly maxRate_C: number
  /** Highest charge voltage per cell in the band, in V; the chemistry's own full voltage still applies. */
  readonly maxPerCell_V: number
}

/** Open-circuit voltage against state of charge: `soc` rises from 0 to 1, `perCell_V` rises with it. */
export interface VoltageCurve {
  readonly soc: readonly number[]
  readonly perCell_V: readonly number[]
}

/** Least and most charge that published cells have at rest, in percent of their capacity when full. */
export interface ChargeTable {
  readonly perCell_V: readonly number[]
  readonly least: readonly number[]
  readonly most: readonly number[]
}

export interface Chemistry {
  readonly name: ChemistryName
  /**
   * How people write it besides the name: letters, digits, spaces and hyphens, in lower case. A hyphen may also be
   * read as a space or be left out, a space as a hyphen.
   */
  readonly written: readonly string[]
  /** What labels print besides the name, where only cells so labelled may be charged as these. */
  readonly onlyAsLabelled?: readonly string[]
  /** Sold as round cells, some of which print the volts of another type. */
  readonly roundCells?: true
  /** Voltages are per cell. */
  readonly nominal_V: Cited
  readonly full_V: Cited
  /** A gentler full voltage that a pilot may choose for longer life, where practice knows one. */
  readonly gentleFull_V?: Cited
  readonly storage_V: Cited
  /** Do not discharge a resting cell below this. */
  readonly restFloor_V: Cited
  /** Do not drain a cell that serves as a source below this while it carries load. */
  readonly loadFloor_V: Cited
  /** Below this a cell counts as damaged: never charge it. */
  readonly damage_V: Cited
  /** Below this (and above damage) a charge starts with a small precharge current. */
  readonly precharge_V: Cited
  readonly recommendedRate_C: Cited
  /** Highest charge rate that practice allows without the label saying more. */
  readonly highestRate_C: Cited
  readonly temperatureBands: Cited<readonly TemperatureBand[]>
  readonly curve: Cited<VoltageCurve>
  /** Published cells that tell how far the charge lies apart at one voltage: their table, or their curves. */
  readonly cells: Cited<ChargeTable> | readonly Cited<VoltageCurve>[]
  /** Curves of published cells, between the ends of `curve`. */
  readonly curves: readonly Cited<VoltageCurve>[]
  readonly classes: Cited<readonly CellClass[]>
  /** How far two of three rested cells stand from their curve, in V. */
  readonly restSpread_V: Cited
  /** Energy at nominal voltage over the mass of the cells: the lighter, the faster they warm. */
  readonly energyPerMass_Whkg: Cited
  /** Relative spread of real packs of this chemistry about the model (0.1 = ±10 %). */
  readonly capacitySpread: Cited
  readonly resistanceSpread: Cited
}
