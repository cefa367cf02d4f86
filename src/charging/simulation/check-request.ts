// Refuses a charge request whose numbers no pack or charger can have: a mistake of the caller, not of the pilot.

import type { ChargeRequest } from './charge.ts'

/** @throws RangeError naming the number that is not finite or not in its range */
export function checkRequest({ pack, from, target, ...request }: ChargeRequest): void {
  positive('series', pack.series)
  positive('parallel', pack.parallel)
  positive('capacity_Ah', pack.capacity_Ah)
  positive('cellResistance_ohm', pack.cellResistance_ohm)
  positive('current_A', request.current_A)
  positive('termination_A', request.termination_A)
  positive('timer_s', request.timer_s)
  positive('power_W', request.power_W)
  positive('measuredCapacity_Ah', request.measuredCapacity_Ah)
  finite('temperature_C', request.temperature_C ?? 25)
  if (from.kind === 'soc') share('from.soc', from.soc)
  else positive('from.perCell_V', from.perCell_V)
  if (target.kind === 'soc') share('target.soc', target.soc)
  positive('cutoff', target.kind === 'soc' ? target.cutoffPerCell_V : target.perCell_V)
}

function finite(name: string, value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`${name} must be a finite number, got ${value}`)
}

function positive(name: string, value: number | undefined): void {
  if (value === undefined) return
  finite(name, value)
  if (value <= 0) throw new RangeError(`${name} must be above 0, got ${value}`)
}

function share(name: string, value: number): void {
  finite(name, value)
  if (value < 0 || value > 1) throw new RangeError(`${name} must be 0 to 1, got ${value}`)
}
