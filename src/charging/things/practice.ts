// Numbers of the trade about chargers and supplies that no label told us, each with where it comes from.

import type { Charger } from './charger.ts'
import type { Band } from './chemistry.ts'
import { practice, published } from './cited.ts'
import type { Offer } from './source.ts'

export const chargerEfficiency = practice(0.85, 'a switching charger passes on 80 to 90 % of its input power')
/** Where nobody told it: by the low end a source is emptied soonest. */
export const chargerEfficiencies = practice<Band>({ low: 0.8, high: 0.9 }, chargerEfficiency.source)
export const efficiencyOf = (charger: Charger | undefined): number => charger?.efficiency ?? chargerEfficiency.value
export const efficienciesOf = (charger: Charger | undefined): Band =>
  charger?.efficiency === undefined ? chargerEfficiencies.value : { low: charger.efficiency, high: charger.efficiency }
export const powerBankEfficiency = practice(0.85, 'about 85 % of the label energy of a power bank reaches its output')
/** Of what leaves a power bank at the volts of USB, what leaves it at more. */
export const boostShare = practice(0.95, 'a power bank gives about a twentieth less at 9 to 20 V than at 5 V')
export const fuseShare = practice(0.8, 'load a fuse for long with 80 % of its rating at most')

/** Of the watts of a generator, an inverter or an outlet, what may be drawn at its plug for long. */
export const plugShare = practice(0.8, 'load a generator or an inverter for long with four fifths of its watts')

/** Of the watts on the label of what is told by its watts alone, what reaches the charger. */
export const wattsShare = {
  supply: practice(1, 'a supply gives the watts on its label'),
  mains: practice(
    0.65,
    'load a generator or an inverter for long with four fifths of its watts; the supply behind it passes on 80 to 90 %',
  ),
  panel: practice(
    0.5,
    'a panel in good sun gives 60 to 70 % of its label; regulator and battery behind it pass on about 80 %',
  ),
} as const

export const batterySourceRate_C = practice(
  2,
  'without a discharge rate on the label take no more than 2C from a battery used as a source',
)

/** Of the discharge rate on a label, what a pack gives for many minutes. */
export const longDrainShare = practice(
  0.25,
  'the discharge rate on a label is one for seconds: a quarter of it for long',
)

/** What a power bank gives where it names no output. */
export const plainUsbOffer = published<Offer>(
  { voltage_V: 5, current_A: 1.5 },
  'USB Battery Charging 1.2, dedicated charging port: 5 V, 1.5 A',
)

export const engineRunning_V = practice<readonly [number, number]>(
  [12, 15],
  'a vehicle with its engine running keeps 13.5 to 15 V, and a managed alternator lets it down to 12 V at times',
)

/** A charger that lacks the wanted cutoff may use one this much lower: a little less charge, no harm. */
export const cutoffStepDown_V = practice(
  0.2,
  'a lower cutoff only leaves the pack less full; more than 0.2 V lower hardly charges it',
)

export const mostApart_V = practice(0.1, 'connect packs in parallel only within 0.1 V per cell of each other')
