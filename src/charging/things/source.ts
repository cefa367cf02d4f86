// What feeds a charger: a supply, a vehicle outlet, a power bank, a generator, a panel, or another battery with its own floor.

import type { Pack } from './pack.ts'

/** One voltage that a supply offers and the most current it gives there. */
export interface Offer {
  readonly voltage_V: number
  readonly current_A: number
}

/** A bench or wall supply has one offer; a USB PD supply of a named power has several. */
interface RegulatedSupply {
  readonly kind: 'supply'
  readonly offers: readonly Offer[]
  /** The power class of a USB PD supply, in W, where it is one. */
  readonly usbPd_W?: number
}

/** One that starts an engine, or one that is made to be drained further. */
export type LeadAcidKind = 'starter' | 'deep-cycle'

export interface VehicleOutlet {
  readonly kind: 'vehicle outlet'
  readonly fuse_A: number
  readonly engine: 'running' | 'off'
  /** Nominal voltage of the outlet, in V; 12 when absent. */
  readonly nominal_V?: 24
  /** What stands behind it; a starter battery when absent. */
  readonly battery?: LeadAcidKind
  /** Resting voltage of the lead-acid battery with the engine off, in V, where measured. */
  readonly rest_V?: number
  /** Capacity on the label of that battery, in Ah, where known. */
  readonly capacity_Ah?: number
}

export interface PowerBank {
  readonly kind: 'power bank'
  /** Energy on the label, in Wh. */
  readonly label_Wh: number
  /** What it can give: USB PD offers by power class, or a single offer. */
  readonly offers?: readonly Offer[]
  readonly usbPd_W?: number
}

export interface BatterySource {
  readonly kind: 'battery'
  readonly pack: Pack
}

/**
 * Of which only the watts are told: a supply, an outlet of mains or a generator behind which one stands, or a solar
 * panel in good sun with a battery between. Its volts are taken to suit the charger.
 */
export interface WattsSource {
  readonly kind: 'watts'
  readonly of: 'supply' | 'mains' | 'panel'
  /** On its label, in W. */
  readonly power_W: number
}

export type Source = WattsSource | RegulatedSupply | VehicleOutlet | PowerBank | BatterySource
