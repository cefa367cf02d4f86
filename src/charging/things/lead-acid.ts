// The lead-acid battery behind a vehicle outlet: its resting voltage against charge, and how far it may be drained.

import type { Cited, VoltageCurve } from './chemistry.ts'
import { practice, published, remembered } from './cited.ts'
import type { LeadAcidKind, VehicleOutlet } from './source.ts'

/** Resting volts of a whole 12 V flooded battery at 26.7 °C against state of charge. */
export const leadAcidRest = published<VoltageCurve>(
  { soc: [0, 0.25, 0.5, 0.75, 1], perCell_V: [11.89, 12.06, 12.24, 12.45, 12.65] },
  'Battery Council International, flooded 12 V battery at rest',
)

/** How far a battery of 12 V may be drained: whichever comes first. */
interface LeadAcidLimits {
  /** Most that is taken out of it, as a share of its label. */
  readonly share: Cited
  /** Volts to stop at, at rest. */
  readonly restFloor_V: Cited
  /** Volts to stop at under load, at the poles of the battery. */
  readonly loadFloor_V: Cited
}

const table = 'Battery Council International table of volts at rest'

export const leadAcidLimits: Readonly<Record<LeadAcidKind, LeadAcidLimits>> = {
  starter: {
    share: practice(0.2, 'a starter battery gives a fifth of its label at most, so that it starts the engine'),
    restFloor_V: practice(12.3, `a starter battery keeps more than half of its charge; ${table}`),
    loadFloor_V: practice(12.2, 'a tenth of a volt below its rest, while it feeds a charger'),
  },
  'deep-cycle': {
    share: practice(0.5, 'a deep-cycle battery gives half of its label at most'),
    restFloor_V: practice(12.2, `a deep-cycle battery is not drained below about half; ${table}`),
    loadFloor_V: practice(12.1, 'a tenth of a volt below its rest, while it feeds a charger'),
  },
}

export const leadAcidLimitsOf = ({ battery = 'starter' }: VehicleOutlet): LeadAcidLimits => leadAcidLimits[battery]

/** Where it stands when nothing was told: one that is made to be drained is brought full, the other comes off the road. */
export const usualRest_V: Readonly<Record<LeadAcidKind, Cited>> = {
  starter: practice(
    12.45,
    'a vehicle in daily use stands at about 75 %; 12.45 V at rest (Battery Council International)',
  ),
  'deep-cycle': published(12.65, 'a charged battery at rest (Battery Council International)'),
}

export const starterCapacity_Ah = practice(45, 'the starter battery of a small car holds about 45 Ah')

/** Of one battery of 12 V, times its capacity. */
export const leadAcidResistance_ohmAh = remembered(
  0.45,
  'about 10 mΩ for an aged starter battery of 45 Ah, more for a smaller one in proportion',
)

export const leadAcidRate_C = practice(
  0.3,
  'for longer than minutes take no more than 0.3C from a lead-acid battery: its label holds for a current of a twentieth',
)

/** Of all that lies between the poles of one battery and the outlet. */
export const outletWiring_ohm = remembered(0.04, 'about 40 mΩ for fuse, socket and wiring of a vehicle')

/** Batteries of 12 V in series behind an outlet: two where its nominal or its resting voltage says so. */
export const starterBlocks = ({ nominal_V, rest_V = 0 }: VehicleOutlet): 1 | 2 =>
  nominal_V === 24 || rest_V > 16 ? 2 : 1
