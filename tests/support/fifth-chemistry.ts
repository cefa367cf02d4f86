// A fifth chemistry, and the list of all with it: what a test has in place of the sources' own list.

import { chemistries as four } from '../../src/charging/things/chemistries.ts'
import type { Chemistry, Cited } from '../../src/charging/things/chemistry.ts'

const sheet = <T>(value: T): Cited<T> => ({
  value,
  standing: 'memory',
  source: 'from memory of a published 2.4 V LTO cell datasheet',
})

const curve = sheet({
  soc: [0, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1],
  perCell_V: [1.8, 2.05, 2.12, 2.18, 2.21, 2.24, 2.28, 2.33, 2.39, 2.45, 2.53, 2.6, 2.8],
})

export const lto: Chemistry = {
  name: 'LTO',
  written: ['lithium titanate', 'li-titanate'],
  nominal_V: sheet(2.4),
  full_V: sheet(2.8),
  storage_V: sheet(2.3),
  restFloor_V: sheet(2.0),
  loadFloor_V: sheet(1.9),
  damage_V: sheet(1.5),
  precharge_V: sheet(1.7),
  recommendedRate_C: sheet(1),
  // The sheet allows 5C; without a label that says so no more than for the others.
  highestRate_C: sheet(2),
  temperatureBands: sheet([
    { from_C: 0, to_C: 10, maxRate_C: 1, maxPerCell_V: 2.8 },
    { from_C: 10, to_C: 45, maxRate_C: 2, maxPerCell_V: 2.8 },
  ]),
  curve,
  cells: [curve],
  curves: [curve],
  classes: sheet([
    {
      name: 'high drain',
      share: 1,
      atOnce_ohmAh: { middle: 0.01, times: 1.4 },
      diffusion_h: { middle: 0.015, times: 1.4 },
      measuredCells: 0,
    },
  ]),
  restSpread_V: sheet(0.006),
  energyPerMass_Whkg: sheet(80),
  capacitySpread: sheet(0.18),
  resistanceSpread: sheet(0.5),
}

export * from '../../src/charging/things/chemistries.ts'
export const chemistries: readonly Chemistry[] = [...four, lto]
export const chemistryNamed = (name: string): Chemistry | undefined => chemistries.find(one => one.name === name)
