// A field session as a pilot tells it: packs, chargers and sources, a time and a number of flights; and its plan.

import type { Setting } from '../setting/old-setting.ts'
import type { Refusal } from '../setting/refusal.ts'
import type { Charger } from '../things/charger.ts'
import type { HouseLimits } from '../things/house-limits.ts'
import type { State } from '../things/level.ts'
import type { Pack } from '../things/pack.ts'
import type { Source } from '../things/source.ts'
import type { Pace } from './jobs.ts'
import type { Worth } from './model.ts'

/** Packs that are alike and stand alike. */
export interface PackGroup {
  readonly pack: Pack
  readonly count: number
  readonly from: State
  /** What makes them unfit at a glance ("swollen"): they are left out whatever else holds. */
  readonly unsound?: string
}

export interface FieldSource {
  readonly source: Source
  /** State of charge of a battery or power bank, 0 to 1; full when absent. */
  readonly soc?: number
}

export interface FieldSession {
  readonly packs: readonly PackGroup[]
  /** One for each output, all used at once. */
  readonly chargers: readonly Charger[]
  /** None where the chargers are taken to get what they ask for. */
  readonly sources: readonly FieldSource[]
  /** From the start, in s. */
  readonly readyBy_s?: number
  /** How many packs are wanted ready; all when absent. */
  readonly flights?: number
  readonly limits: HouseLimits
  readonly temperature_C?: number
}

export interface PlannedCharge {
  /** Index in `FieldSession.packs`. */
  readonly group: number
  /** Which of its packs, from 1. */
  readonly number: number
  /** Index in `FieldSession.chargers`. */
  readonly port: number
  /** Index in `FieldSession.sources`; absent where there are none. */
  readonly source?: number
  readonly setting: Setting
  /** When the pack is connected and when it is ready at the latest, from the start of the session, in s. */
  readonly start_s: number
  readonly end_s: number
  /** Most that the source gives for it, in Wh. */
  readonly energy_Wh: number
}

export type WhyLeft =
  | { readonly kind: 'unsound'; readonly word: string }
  | { readonly kind: 'refused'; readonly refusal: Refusal }
  | { readonly kind: 'not wanted' }
  /** No source has the energy left above its floor. */
  | { readonly kind: 'energy' }
  | { readonly kind: 'time' }
  /** No port that could charge it gets the power for it beside the others. */
  | { readonly kind: 'power' }

export interface LeftPacks {
  readonly group: number
  readonly count: number
  readonly why: WhyLeft
}

export interface SourceUse {
  /** Most that all charges of the plan take, in Wh. */
  readonly taken_Wh: number
  /** What it gives above its floor, in Wh; Infinity where it is not drained. */
  readonly available_Wh: number
  /** Most power that the ports on it draw at once, in W, and that it gives. */
  readonly drawn_W: number
  readonly most_W: number
  /** Where to stop a battery: its voltage under load, or at rest for a starter battery, in V. */
  readonly stop?: { readonly volts: number; readonly at: 'load' | 'rest' }
}

export interface FieldPlan extends Worth {
  /** Hurried where only that has more packs ready in time: above the recommended currents, within every limit. */
  readonly pace: Pace
  /** In the order in which they start. */
  readonly charges: readonly PlannedCharge[]
  /** Packs that are full from the start, by group. */
  readonly fullAlready: readonly number[]
  readonly left: readonly LeftPacks[]
  readonly sources: readonly SourceUse[]
  /** No plan in which each port keeps to one source and one share of its power is better. */
  readonly bound: Worth
}
