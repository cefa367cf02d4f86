// How large a source must be that is to carry so many charges.

import { chargeTimeBand } from '../setting/band.ts'
import { settingFor } from '../setting/setting.ts'
import { chargeOf } from '../setting/timed-charge.ts'
import { drawsOf, totalsOf } from '../simulation/supply-run.ts'
import type { Permit } from '../situation/permit.ts'
import { leadAcidLimits } from '../things/lead-acid.ts'
import { efficienciesOf, powerBankEfficiency } from '../things/practice.ts'
import { otherSpread } from './source-plan.ts'

/** For `count` packs like that of the permit, one after another or at once. */
export function sizeFor(permit: Permit, count: number) {
  const setting = settingFor(permit)
  const request = chargeOf(permit, setting)
  const each = chargeTimeBand(request)
  const one_Wh = totalsOf(drawsOf(each.charge, permit.situation.pack.series, setting.efficiency)).energy_Wh
  const all_Wh = one_Wh * count
  // As `source` counts the packs that are sure of one.
  const { low } = efficienciesOf(permit.situation.charger)
  const sure_Wh = (all_Wh * setting.efficiency) / low / (1 - otherSpread.value)
  const lead_Ah = (kind: 'starter' | 'deep-cycle') => {
    const { share, restFloor_V } = leadAcidLimits[kind]
    return sure_Wh / restFloor_V.value / share.value
  }
  return {
    setting,
    from: request.from,
    each,
    /** At the charger's input, for one pack and for all, in Wh. */
    one_Wh,
    all_Wh,
    /** The same where charger, source and packs are worse than is usual: what each of these is sized for. */
    sure_Wh,
    /** On the label of a power bank or a power station. */
    station_Wh: sure_Wh / powerBankEfficiency.value,
    /** On the label of a lead-acid battery of 12 V that is drained as far as it may be. */
    deepCycle_Ah: lead_Ah('deep-cycle'),
    starter_Ah: lead_Ah('starter'),
  }
}

export type SourceSize = ReturnType<typeof sizeFor>
