// The starter battery behind a vehicle outlet: its resting voltage against charge, and how far to drain it.

import type { Cited, VoltageCurve } from './chemistry.ts'
import type { VehicleOutlet } from './source.ts'

/** Resting volts of a whole 12 V flooded battery at 26.7 °C against state of charge. */
export const leadAcidRest: Cited<VoltageCurve> = {
  value: { soc: [0, 0.25, 0.5, 0.75, 1], perCell_V: [11.89, 12.06, 12.24, 12.45, 12.65] },
  standing: 'published',
  source: 'Battery Council International, flooded 12 V battery at rest',
}

const practice = (value: number, source: string): Cited => ({ value, standing: 'common practice', source })

export const starterFloor_V = practice(
  12.24,
  'leave a starter battery half charged so that it starts the engine; 12.24 V at rest (Battery Council International)',
)

export const starterRest_V = practice(
  12.45,
  'a vehicle in daily use stands at about 75 %; 12.45 V at rest (Battery Council International)',
)

export const starterCapacity_Ah = practice(45, 'the starter battery of a small car holds about 45 Ah')

/** Battery, wiring and outlet together. */
export const starterResistance_ohm: Cited = {
  value: 0.05,
  standing: 'memory',
  source: 'about 10 mΩ for an aged starter battery, the rest for the wiring to the outlet',
}

/** Batteries of 12 V in series behind an outlet: two where its nominal or its resting voltage says so. */
export const starterBlocks = ({ nominal_V, rest_V = 0 }: VehicleOutlet): 1 | 2 =>
  nominal_V === 24 || rest_V > 16 ? 2 : 1
