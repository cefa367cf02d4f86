// How large a source must be that is to carry so many charges.

import { type ChargeTimes, chargeTimeBand } from '../setting/band.ts'
import { type Setting, settingFor } from '../setting/setting.ts'
import { chargeOf } from '../setting/timed-charge.ts'
import { drawsOf, totalsOf } from '../simulation/supply-run.ts'
import type { Permit } from '../situation/permit.ts'
import { leadAcidLimits } from '../things/lead-acid.ts'
import type { State } from '../things/level.ts'
import { powerBankEfficiency } from '../things/practice.ts'

export interface SourceSize {
  readonly setting: Setting
  readonly from: State
  readonly each: ChargeTimes
  /** At the charger's input, for one pack and for all, in Wh. */
  readonly one_Wh: number
  readonly all_Wh: number
  /** On the label of a power bank or a power station. */
  readonly station_Wh: number
  /** On the label of a lead-acid battery of 12 V that is drained as far as it may be. */
  readonly deepCycle_Ah: number
  readonly starter_Ah: number
}

/** For `count` packs like that of the permit, one after another or at once. */
export function sizeFor(permit: Permit, count: number): SourceSize {
  const setting = settingFor(permit)
  const request = chargeOf(permit, setting)
  const each = chargeTimeBand(request)
  const one_Wh = totalsOf(drawsOf(each.charge, permit.situation.pack.series, setting.efficiency)).energy_Wh
  const all_Wh = one_Wh * count
  const lead_Ah = (kind: 'starter' | 'deep-cycle') => {
    const { share, restFloor_V } = leadAcidLimits[kind]
    return all_Wh / restFloor_V.value / share.value
  }
  return {
    setting,
    from: request.from,
    each,
    one_Wh,
    all_Wh,
    station_Wh: all_Wh / powerBankEfficiency.value,
    deepCycle_Ah: lead_Ah('deep-cycle'),
    starter_Ah: lead_Ah('starter'),
  }
}
