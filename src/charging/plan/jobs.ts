// One charge of one pack as a job: simulated once, the long end of its band, and the most that may go in.

import { judge } from '../envelope/judge.ts'
import { chargeTimeBand } from '../setting/band.ts'
import { hurriedSettingFor, settingAsAsked, settingFor } from '../setting/setting.ts'
import { chargeOf } from '../setting/timed-charge.ts'
import type { Situation } from '../situation/situation.ts'
import { efficienciesOf } from '../things/practice.ts'
import { smallestStep_A } from '../things/steps.ts'
import type { Pace, SetCharge } from './field.ts'
import type { Job } from './model.ts'

/** Common practice: a minute to look at a pack, connect it and check the setting. */
const connect_min = 1

/** The charge and its setting where the situation permits it. */
export function permitted(situation: Situation, pace: Pace): SetCharge | undefined {
  const { permit } = judge(situation)
  if (!permit) return undefined
  const { current_A, charger } = situation
  const isSettable = current_A !== undefined && (!charger || smallestStep_A(charger.currents) <= current_A)
  if (isSettable) return { permit, setting: settingAsAsked(permit, current_A) }
  return { permit, setting: pace === 'calm' ? settingFor(permit) : hurriedSettingFor(permit) }
}

/** Makes jobs, and remembers charges of a kind of pack that come up again on another port or source. */
export function jobMaker(): (kind: number, charge: SetCharge) => Job {
  const known = new Map<string, { readonly high_s: number; readonly high_Wh: number }>()
  return (kind, charge) => {
    const { current_A, cutoff } = charge.setting
    const { low } = efficienciesOf(charge.permit.situation.charger)
    const key = [kind, current_A, cutoff.perCell_V].join(' ')
    const high = known.get(key) ?? longest(charge)
    known.set(key, high)
    return { duration_min: connect_min + Math.ceil(high.high_s / 60), energy_Wh: high.high_Wh / low }
  }
}

function longest({ permit, setting }: SetCharge) {
  const { charge, time_s, bands } = chargeTimeBand(chargeOf(permit, setting))
  // A tired pack takes longer and holds less: its time says nothing of the energy.
  const more = charge.charge_Ah > 0 ? bands().charge_Ah.high / charge.charge_Ah : 1
  return { high_s: time_s.high, high_Wh: charge.energy_Wh * more }
}
