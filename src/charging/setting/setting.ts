// What to set on the charger for a pack that may be charged: the cutoff, the current, and what held it down.

import type { Permit } from '../situation/permit.ts'
import type { Charger } from '../things/charger.ts'
import { nearestStep_A } from '../things/steps.ts'
import { type Bounds, boundsOf } from './bounds.ts'
import type { Feed } from './input.ts'
import type { Limit } from './limit.ts'

export interface Setting extends Bounds {
  readonly current_A: number
  readonly rate_C: number
  /** What kept the current from the wanted one: a limit, or the steps that the charger has. */
  readonly bound: Limit | 'steps' | undefined
  /** Power into the charger at its highest, at the cutoff, in W. */
  readonly input_W: number
  /** The same in A, at the source's lowest voltage; absent where no source is known. */
  readonly input_A: number | undefined
  readonly feed: Feed | undefined
}

/**
 * The setting for the pack of the permit. The current exceeds no limit: where charger or source have too little
 * power at the cutoff it is lowered, as a supply that is asked for more switches off.
 */
export function settingFor(permit: Permit): Setting {
  const bounds = boundsOf(permit.situation)
  const { wanted_A, limits } = bounds
  return settingAt(permit, bounds, settable_A(permit.situation.charger, wanted_A, limits[0].value_A))
}

/** The same at the current that was asked for, in A: the charger's largest step not above it, within what it can give. */
export function settingAsAsked(permit: Permit, asked_A: number): Setting {
  const bounds = boundsOf(permit.situation)
  const given = bounds.limits.filter(({ rate_C }) => rate_C === undefined)
  const most_A = Math.min(asked_A, ...given.map(({ value_A }) => value_A))
  return settingAt(permit, bounds, settable_A(permit.situation.charger, most_A, most_A))
}

/** The same in a hurry: the charger's largest step within every limit. */
export function hurriedSettingFor(permit: Permit): Setting {
  const bounds = boundsOf(permit.situation)
  const [{ value_A }] = bounds.limits
  return settingAt(permit, bounds, settable_A(permit.situation.charger, value_A, value_A))
}

function settingAt({ situation: { pack, charger } }: Permit, bounds: Bounds, current_A: number): Setting {
  const { cutoffPack_V, efficiency, limits, wanted_A, input } = bounds
  const input_W = (cutoffPack_V * current_A) / efficiency
  const [limit] = limits
  return {
    ...bounds,
    current_A,
    rate_C: current_A / pack.capacity_Ah,
    bound: limit.value_A < wanted_A ? limit : charger && current_A !== wanted_A ? 'steps' : undefined,
    input_W,
    input_A: input?.feed?.lowest_V && input_W / input.feed.lowest_V,
    feed: input?.feed,
  }
}

/** Without a charger any current to the digits that are shown (0.01 A, from 10 A 0.1 A), rounded down. */
function settable_A(charger: Charger | undefined, wanted_A: number, limit_A: number): number {
  const step_A = charger ? nearestStep_A(charger.currents, wanted_A, limit_A) : roundedDown(Math.min(wanted_A, limit_A))
  if (step_A === undefined || step_A <= 0) throw new RangeError('a permit for a charger without a fitting step')
  return step_A
}

function roundedDown(current_A: number): number {
  const perAmpere = current_A < 10 ? 100 : 10
  return Math.floor(current_A * perAmpere + 1e-9) / perAmpere
}
