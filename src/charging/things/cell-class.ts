// Classes of cell within a chemistry: made for high drain or for energy, and what a reading tells of which it is.

/** A quantity of many cells: the middle one, and the factor that two of three stay within either way. */
export interface Spread {
  readonly middle: number
  readonly times: number
}

export type CellClassName = 'high drain' | 'energy'

/** Resistances in ohm·Ah at 25 °C: divided by the capacity in Ah they are those of one cell, whatever its size. */
export interface CellClass {
  readonly name: CellClassName
  /** Of the cells of its chemistry, where nothing is told. */
  readonly share: number
  /** What a reading within seconds shows. */
  readonly atOnce_ohmAh: Spread
  /** What comes on top within minutes. */
  readonly later_ohmAh: Spread
  /** Measured cells that these rest on; fewer than three stand beside published parameter sets. */
  readonly measuredCells: number
}

/** Resistances of a cell of 1 Ah at 25 °C, in ohm: what a reading within seconds shows, and what comes on top. */
export interface Resistances {
  readonly atOnce_ohmAh: number
  readonly later_ohmAh: number
}

/** What is told of a cell's class. */
interface ClassTold {
  readonly class?: CellClassName | undefined
  /** The large C number on the label. */
  readonly dischargeRate_C?: number | undefined
  readonly reading_ohmAh?: number | undefined
}

/** A label that prints so high a discharge is of a cell made for it; from datasheets of both kinds. */
const highDrainRate_C = 5
/** A reading is believed to tell the class only so firmly: some are taken at a thousand hertz, some after ten seconds. */
const leastTimes = 1.5
/** What a long charge meets is steadier than its parts: a reading that shows more leaves so much less to come. */
const laterByReading = -0.5
const leastLater = 0.5
const mostLater = 1.5

/** The classes with their shares after what is told, which add up to 1. */
export function likelyClasses(
  classes: readonly CellClass[],
  { class: told, dischargeRate_C, reading_ohmAh }: ClassTold,
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
  const whole = weights.reduce((sum, weight) => sum + weight, 0)
  return possible.map((one, index) => ({ ...one, share: (weights[index] as number) / whole }))
}

/** What comes on top within minutes after a reading, over what does so in a middle cell of the class. */
export function laterAfter({ atOnce_ohmAh }: CellClass, reading_ohmAh: number | undefined): number {
  if (reading_ohmAh === undefined) return 1
  return Math.min(mostLater, Math.max(leastLater, (reading_ohmAh / atOnce_ohmAh.middle) ** laterByReading))
}

/** What a typical cell of these classes has, in ohm·Ah: their middles by share. */
export function typicalResistance(classes: readonly CellClass[], reading_ohmAh?: number): Resistances {
  const middle = (of: (one: CellClass) => number) =>
    Math.exp(classes.reduce((sum, one) => sum + one.share * Math.log(of(one)), 0))
  return {
    atOnce_ohmAh: reading_ohmAh ?? middle(one => one.atOnce_ohmAh.middle),
    later_ohmAh: middle(one => one.later_ohmAh.middle * laterAfter(one, reading_ohmAh)),
  }
}
