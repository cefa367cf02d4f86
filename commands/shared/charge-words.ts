// The working of a charge in words: where it starts, its stages, when it ends, and what the band comes from.

import type { TimedCharge } from '../../src/charging/setting/old-timed-charge.ts'
import type { Band } from '../../src/charging/simulation/charge.ts'
import type { State } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Show } from '../../src/ground/show.ts'
import { cite } from './working.ts'

export interface ChargeWorkingRequest {
  readonly pack: Pack
  readonly from: State
  readonly termination_A?: number
  readonly measuredCapacity_Ah?: number
}

export function chargeWorking(request: ChargeWorkingRequest, timed: TimedCharge, show: Show): string[] {
  const { pack, from, termination_A, measuredCapacity_Ah } = request
  const { charge, current_A } = timed
  const { curve, resistance, capacitySpread, resistanceSpread } = pack.chemistry
  const start = from.kind === 'rest' ? `${show.perCell(from.perCell_V)} per cell at rest is ` : ''
  const stages = charge.stages.map(
    ({ kind, duration_s, charge_Ah }) => `${kind} ${show.duration(duration_s)} (${show.capacity(charge_Ah)})`,
  )
  const taper = charge.stages.some(({ kind }) => kind === 'constant voltage')
  const end_A = termination_A ?? current_A / 10
  const rule = termination_A === undefined ? ', a tenth of the set one (common practice)' : ''
  const measured = [
    ...(measuredCapacity_Ah === undefined ? [] : ['capacity']),
    ...(pack.cellResistance_ohm === undefined ? [] : ['resistance']),
  ]
  return [
    `Start: ${start}${show.percent(charge.startSoc)} of the charge (curve ${cite(curve)}).`,
    `Stages: ${stages.join(', then ')}.`,
    ...(taper ? [`It ends when the current is down to ${show.current(end_A)}${rule}.`] : []),
    `Cell model: that curve, a series resistance and two resistor-capacitor pairs (${cite(resistance)}).`,
    measured.length > 0
      ? `Band: narrowed by the measured ${measured.join(' and ')}.`
      : `Band: packs differ by about ${show.percent(capacitySpread.value)} in capacity (${cite(capacitySpread)}) and ${show.percent(resistanceSpread.value)} in resistance (${cite(resistanceSpread)}); a measured capacity or resistance narrows it.`,
  ]
}

/** When it would end if it started now, by the clock of the machine that answers. */
export function clockWords({ low, high }: Band, now: Date): string {
  const at = (later_s: number) => {
    const end = new Date(now.getTime() + later_s * 1000)
    return [end.getHours(), end.getMinutes()].map(part => String(part).padStart(2, '0')).join(':')
  }
  return `Started now (${at(0)} by my clock) it would end between ${at(low)} and ${at(high)}.`
}
