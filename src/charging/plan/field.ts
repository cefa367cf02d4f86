// A field session as a pilot tells it: packs, chargers and sources, a time and a number of flights; and its plan.

import type { Found } from '../envelope/judge.ts'
import type { Setting } from '../setting/setting.ts'
import type { Permit } from '../situation/permit.ts'
import type { Around, BesidePack, SourceLead } from '../situation/situation.ts'
import type { Charger } from '../things/charger.ts'
import type { Source } from '../things/source.ts'
import type { Worth } from './model.ts'

/** Packs that are alike and stand alike; landed where nobody told where. */
export interface PackGroup extends BesidePack {
  readonly count: number
  /** What it is to be charged with, in A; the usual one when absent. */
  readonly current_A?: number
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
  /** What all outputs together give, in W, where they share it. */
  readonly shared_W?: number
  /** None where the chargers are taken to get what they ask for. */
  readonly sources: readonly FieldSource[]
  /** One's own between each source and its chargers; none when absent. */
  readonly lead?: SourceLead | undefined
  /** From the start, in s. */
  readonly readyBy_s?: number
  /** How many packs are wanted ready; all when absent. */
  readonly flights?: number
  readonly around: Around
  readonly temperature_C?: number
  /** How far the cells of a pack lie apart at rest, in V. */
  readonly apart_V?: number | undefined
}

/** In a hurry a charge may go above the recommended current, up to the smallest limit. */
export type Pace = 'calm' | 'hurried'

export interface SetCharge {
  readonly permit: Permit
  readonly setting: Setting
}

export interface PlannedCharge extends SetCharge {
  /** Index in `FieldSession.packs`. */
  readonly group: number
  /** Which of its packs, from 1. */
  readonly number: number
  /** Index in `FieldSession.chargers`. */
  readonly port: number
  /** Index in `FieldSession.sources`; absent where there are none. */
  readonly source?: number
  /** When the pack is connected and when it is ready at the latest, from the start of the session, in s. */
  readonly start_s: number
  readonly end_s: number
  /** Most that the source gives for it, in Wh. */
  readonly energy_Wh: number
}

export type WhyLeft =
  /** It must not be charged, whatever charger and source. */
  | { readonly kind: 'never'; readonly found: Found }
  /** None of these chargers and sources may charge it: why not the first of them. */
  | { readonly kind: 'nowhere'; readonly found: Found }
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
  /** What all outputs at once would take, in W. */
  readonly output_W: number
  /** What is left to each of the outputs that share too few watts for that, in W. */
  readonly share_W?: number
  /** No plan in which each port keeps to one source and one share of its power is better. */
  readonly bound: Worth
}
