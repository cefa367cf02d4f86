// How many charges a source carries, one after the other, and what is left of it.

import { type ChargeTimes, chargeTimeBand } from '../setting/band.ts'
import { whyNothingToCharge } from '../setting/charged-already.ts'
import { adviseSetting, type Setting, type SettingRequest } from '../setting/old-setting.ts'
import { chargeOf } from '../setting/old-timed-charge.ts'
import type { Refused } from '../setting/refusal.ts'
import { drawsOf, supplyOf, totalsOf } from '../simulation/supply-run.ts'
import type { State } from '../things/level.ts'
import type { Source } from '../things/source.ts'

export interface SourcePlanRequest extends SettingRequest {
  readonly source: Source
  readonly from: State
  /** How many packs are wanted; as many as the source carries when absent. */
  readonly count?: number
}

export interface EnergyBalance {
  /** Taken out of the source's store, in Wh: the sum of the other three. */
  readonly sourceOut_Wh: number
  readonly intoPacks_Wh: number
  readonly converterLoss_Wh: number
  readonly sourceLoss_Wh: number
}

export interface SourcePlan {
  readonly setting: Setting
  /** One charge; every pack is taken to be alike. */
  readonly each: ChargeTimes
  /** Most packs that the source carries whole, rounded down; absent where it is not drained. */
  readonly most?: number
  /** Packs of this plan: the wanted count where the source carries it, else the most. */
  readonly planned: number
  /** Whether the wanted count is carried; true where none was named and at least one is. */
  readonly enough: boolean
  /** For the planned packs. */
  readonly balance: EnergyBalance
  /** Energy that it could still deliver above its floor after the planned packs, in Wh. */
  readonly left_Wh?: number
  readonly leftSoc?: number
}

/** Simulates the charges on the source until the count is reached or the floor is met. */
export function planSource(request: SourcePlanRequest): SourcePlan | Refused {
  const { from, source } = request
  const setting = adviseSetting({
    ...request,
    ...(from.kind === 'rest' && { restPerCell_V: from.perCell_V }),
  })
  if ('refusal' in setting) return setting
  const charged = whyNothingToCharge(request.pack, from, chargeOf(request, setting).target)
  if (charged) return charged
  const each = chargeTimeBand(chargeOf(request, setting))
  const draws = drawsOf(each.charge, request.pack.series, setting.efficiency)
  const supply = supplyOf(source, setting.feed?.store, draws)
  const { most } = supply
  const wanted = request.count ?? Math.max(1, most ?? 1)
  const planned = Math.min(wanted, most ?? wanted)
  const intoPacks_Wh = planned * each.charge.energy_Wh
  const delivered_Wh = planned * totalsOf(draws).energy_Wh
  const { sourceLoss_Wh, ...left } = supply.after(planned)
  const converterLoss_Wh = delivered_Wh - intoPacks_Wh
  return {
    setting,
    each,
    most,
    planned,
    enough: planned >= wanted,
    balance: { sourceOut_Wh: delivered_Wh + sourceLoss_Wh, intoPacks_Wh, converterLoss_Wh, sourceLoss_Wh },
    ...left,
  }
}
