// What the cells that a pack may be made of are like, by its label and by what was measured of it.

import { unseen } from '../numbers/unseen.ts'
import { type CellClass, readAs, type Spread } from '../things/cell-class.ts'
import { computed } from '../things/cited.ts'
import { interpolate } from '../things/curve.ts'
import type { Traits } from '../things/learned.ts'
import type { Pack } from '../things/pack.ts'
import { classesOf, readingOf } from './cell.ts'
import { drawnShares, draws } from './design.ts'
import { agedBy_h, growth_h, newShare } from './resistance.ts'

/** Share of the label that packs in use hold, at standard normal numbers: a long tail to the tired ones. */
const capacityShares = computed(
  { at: [-2.4, -1.6, -0.7, 0, 0.7, 1.6, 2.4], share: [0.68, 0.81, 0.915, 0.965, 1.02, 1.13, 1.17] },
  'cells of nine open datasets: new 0.90 to 1.11 of their label; packs in use lose up to a fifth before they retire',
)

/** Two of three lie within these shares of a measured capacity; of the label when new. */
const spreads = { capacity: 0.018, newShare: 0.03 } as const

/** One for each draw of the design. */
export const likelyTraits = (pack: Pack, temperature_C: number, measuredCapacity_Ah?: number): readonly Traits[] =>
  traitsWithin(pack, temperature_C, made => made, measuredCapacity_Ah)

/**
 * The same before charges of its own are weighed: they may tell of a cell beyond the few that its class was measured on,
 * so each class reaches as far as a cell that nobody measured may lie.
 */
export const possibleTraits = (pack: Pack, temperature_C: number): readonly Traits[] =>
  traitsWithin(pack, temperature_C, reachingFurther)

function reachingFurther(made: CellClass): CellClass {
  const further = ({ middle, times }: Spread) => ({ middle, times: times ** unseen(made.measuredCells) })
  return { ...made, atOnce_ohmAh: further(made.atOnce_ohmAh), diffusion_h: further(made.diffusion_h) }
}

function traitsWithin(
  pack: Pack,
  temperature_C: number,
  reach: (made: CellClass) => CellClass,
  measuredCapacity_Ah?: number,
): readonly Traits[] {
  const reading_ohmAh = readingOf(pack, temperature_C)
  const classes = classesOf(pack, reading_ohmAh).map(reach)
  return draws.map((draw, index) => {
    const { 0: capacity = 0, 1: atOnce = 0, 2: diffusion = 0, 4: growth = 0, 5: whenNew = 0 } = draw
    const share =
      measuredCapacity_Ah === undefined
        ? interpolate(capacityShares.value.at, capacityShares.value.share, capacity)
        : (measuredCapacity_Ah / pack.capacity_Ah) * (1 + spreads.capacity * capacity)
    const made = classAt(classes, drawnShares[index]?.[3] ?? 0)
    const aged_h = agedBy_h(share, newShare.value + spreads.newShare * whenNew, drawn(growth_h.value, growth))
    return {
      share,
      atOnce_ohmAh: drawn(reading_ohmAh === undefined ? made.atOnce_ohmAh : readAs(made, reading_ohmAh), atOnce),
      diffusion_h: drawn(made.diffusion_h, diffusion) + aged_h,
    }
  })
}

const drawn = ({ middle, times }: Spread, z: number): number => middle * times ** z

function classAt(classes: readonly CellClass[], share: number): CellClass {
  let left = share
  for (const one of classes) {
    if (left <= one.share) return one
    left -= one.share
  }
  return classes.at(-1) as CellClass
}

export function typicalTraits(traits: readonly Traits[]): Traits {
  const middle = (of: (one: Traits) => number) =>
    Math.exp(traits.reduce((sum, one) => sum + Math.log(of(one)), 0) / traits.length)
  return {
    share: middle(one => one.share),
    atOnce_ohmAh: middle(one => one.atOnce_ohmAh),
    diffusion_h: middle(one => one.diffusion_h),
  }
}
