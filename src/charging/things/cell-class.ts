// Classes of cell within a chemistry: made for high drain or for energy, and what a reading tells of which it is.

import { sumOf } from '../numbers/sum.ts'

/** A quantity of many cells: the middle one, and the factor that two of three stay within either way. */
export interface Spread {
  readonly middle: number
  readonly times: number
}

export const cellClassNames = ['high drain', 'energy'] as const
export type CellClassName = (typeof cellClassNames)[number]

/** At 25 °C. A resistance in ohm·Ah, divided by the capacity in Ah, is that of one cell, whatever its size. */
export interface CellClass {
  readonly name: CellClassName
  /** Of the cells of its chemistry, where nothing is told. */
  readonly share: number
  /** What a reading within seconds shows. */
  readonly atOnce_ohmAh: Spread
  /** By how much charge the surface of the particles is ahead of the whole, as hours of the current. */
  readonly diffusion_h: Spread
  /** Measured cells that these rest on; fewer than three stand beside published parameter sets. */
  readonly measuredCells: number
}

/** Of a cell of 1 Ah at 25 °C: what a reading within seconds shows, and its diffusion. */
export interface Resistances {
  readonly atOnce_ohmAh: number
  readonly diffusion_h: number
}

/** What is told of a cell's class. */
interface ClassTold {
  readonly cellClass?: CellClassName | undefined
  /** The large C number on the label. */
  readonly dischargeRate_C?: number | undefined
  readonly reading_ohmAh?: number | undefined
}

/** A label that prints so high a discharge is of a cell made for it; from datasheets of both kinds. */
const highDrainRate_C = 5
/** A reading is believed to tell the class only so firmly: some are taken at a thousand hertz, some after ten seconds. */
const leastTimes = 1.5
/** Two of three readings lie within this share. */
const readingSpread = 0.08

/** The classes with their shares after what is told, which add up to 1. */
export function likelyClasses(
  classes: readonly CellClass[],
  { cellClass: told, dischargeRate_C, reading_ohmAh }: ClassTold,
): readonly CellClass[] {
  const name = told ?? (dischargeRate_C !== undefined && dischargeRate_C >= highDrainRate_C ? 'high drain' : undefined)
  const named = classes.filter(one => one.name === name)
  const possible = named.length > 0 ? named : classes
  const weights = possible.map(one => {
    if (reading_ohmAh === undefined) return one.share
    const width = Math.log(Math.max(one.atOnce_ohmAh.times, leastTimes))
    const off = Math.log(reading_ohmAh / one.atOnce_ohmAh.middle) / width
    return (one.share * Math.exp(-(Math.min(Math.abs(off), 6) ** 2) / 2)) / width
  })
  const whole = sumOf(weights)
  return possible.map((one, index) => ({ ...one, share: (weights[index] as number) / whole }))
}

/** Up to so many spreads above the middle of its class a reading is believed whole, of the rest the half: contacts are read too. */
const believedWithin = 2

/** The resistance of a cell of a class with such a reading, in ohm·Ah, and what it may be off. */
export function readAs({ atOnce_ohmAh: { middle, times } }: CellClass, reading_ohmAh: number): Spread {
  const off = Math.log(reading_ohmAh / middle) / Math.log(times)
  const doubted = Math.max(0, off - believedWithin) / 2
  return {
    middle: reading_ohmAh / times ** doubted,
    times: Math.exp(Math.hypot(readingSpread, doubted * Math.log(times))),
  }
}

/** What a typical cell of these classes has: their middles by share. */
export function typicalResistance(classes: readonly CellClass[], reading_ohmAh?: number): Resistances {
  const middle = (of: (one: CellClass) => number) =>
    Math.exp(classes.reduce((sum, one) => sum + one.share * Math.log(of(one)), 0))
  return {
    atOnce_ohmAh: middle(one => (reading_ohmAh ? readAs(one, reading_ohmAh) : one.atOnce_ohmAh).middle),
    diffusion_h: middle(one => one.diffusion_h.middle),
  }
}
