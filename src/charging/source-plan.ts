// How many charges a source carries, one after the other, and what is left of it.

import { type ChargeTimes, chargeTimeBand } from './band.ts'
import type { Charge, ChargeRequest, CurvePoint, State } from './charge.ts'
import type { Draw } from './drain.ts'
import type { Refused } from './refusal.ts'
import { adviseSetting, type Setting, type SettingRequest } from './setting.ts'
import type { Source } from './source.ts'
import { supplyOf, totalsOf } from './supply-run.ts'

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
  const each = chargeTimeBand(chargeOf(request, setting, from))
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
    ...(most !== undefined && { most }),
    planned,
    enough: planned >= wanted,
    balance: { sourceOut_Wh: delivered_Wh + sourceLoss_Wh, intoPacks_Wh, converterLoss_Wh, sourceLoss_Wh },
    ...left,
  }
}

/** The charge that `setting` gives: its current and cutoff, to the target that was asked for. */
export function chargeOf(
  { pack, target, temperature_C }: SettingRequest,
  { current_A, cutoff }: Setting,
  from: State,
): ChargeRequest {
  const cutoffPerCell_V = cutoff.perCell_V
  return {
    pack,
    current_A,
    from,
    target:
      target?.kind === 'soc'
        ? { ...target, cutoffPerCell_V }
        : { kind: 'voltage', perCell_V: cutoffPerCell_V },
    ...(temperature_C !== undefined && { temperature_C }),
  }
}

/** What one charge draws from the source, span by span. */
function drawsOf({ curve }: Charge, series: number, efficiency: number): Draw[] {
  const power_W = ({ perCell_V, current_A }: CurvePoint) => (perCell_V * series * current_A) / efficiency
  return curve.slice(1).map((to, index) => {
    const from = curve[index] as CurvePoint
    return { power_W: (power_W(from) + power_W(to)) / 2, duration_s: to.time_s - from.time_s }
  })
}
