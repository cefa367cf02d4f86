// One charge of one pack as a job: simulated once, the long end of its band, and energy by the same measure.

import { chargeTimeBand } from '../setting/band.ts'
import { type Care, isHurried } from '../setting/fitness.ts'
import { adviseSetting, type Setting } from '../setting/old-setting.ts'
import { chargeOf } from '../setting/old-timed-charge.ts'
import type { Refused } from '../setting/refusal.ts'
import type { Charger } from '../things/charger.ts'
import type { Pack } from '../things/pack.ts'
import { nearestStep_A } from '../things/steps.ts'
import type { FieldSession, FieldSource, PackGroup } from './field.ts'
import type { Job } from './model.ts'

/** Common practice: a minute to look at a pack, connect it and check the setting. */
const connect_min = 1

/** In a hurry a charge may go above the recommended current, up to the smallest limit. */
export type Pace = 'calm' | 'hurried'

/** The setting for a pack of the group on this charger and source, or why there is none. */
export function settingFor(
  { limits, temperature_C }: FieldSession,
  { pack, from }: PackGroup,
  charger: Charger,
  fieldSource: FieldSource | undefined,
  pace: Pace,
): Setting | Refused {
  const setting = adviseSetting({
    pack,
    charger,
    ...(fieldSource && { source: fieldSource.source, sourceSoc: fieldSource.soc ?? 1 }),
    ...(from.kind === 'rest' && { restPerCell_V: from.perCell_V }),
    temperature_C,
    limits,
  })
  return 'refusal' in setting || pace === 'calm' ? setting : hurried(setting, pack, charger)
}

/** The same at the charger's largest step within every limit. */
function hurried(setting: Setting, pack: Pack, charger: Charger): Setting {
  const [{ value_A: limit_A }] = setting.limits
  const current_A = nearestStep_A(charger.currents, limit_A, limit_A) ?? setting.current_A
  const care: Care = 'above the wanted current'
  const hurry = isHurried(current_A, setting.wanted_A) && !setting.cares.includes(care)
  const times = current_A / setting.current_A
  return {
    ...setting,
    current_A,
    rate_C: current_A / pack.capacity_Ah,
    input_W: setting.input_W * times,
    ...(setting.input_A !== undefined && { input_A: setting.input_A * times }),
    ...(hurry && { verdict: 'go with care', cares: [...setting.cares, care] }),
  }
}

/** Makes jobs, and remembers charges that come up again on another port or source. */
export function jobMaker(field: FieldSession): (group: PackGroup, setting: Setting) => Job {
  const known = new Map<string, { readonly high_s: number; readonly high_Wh: number }>()
  return (group, setting) => {
    const key = [field.packs.indexOf(group), setting.current_A, setting.cutoff.perCell_V].join(' ')
    const high = known.get(key) ?? longest(field, group, setting)
    known.set(key, high)
    return {
      duration_min: connect_min + Math.ceil(high.high_s / 60),
      energy_Wh: high.high_Wh / setting.efficiency,
    }
  }
}

function longest({ temperature_C }: FieldSession, { pack, from }: PackGroup, setting: Setting) {
  const { charge, time_s } = chargeTimeBand(chargeOf({ pack, from, temperature_C }, setting))
  const longer = charge.duration_s > 0 ? time_s.high / charge.duration_s : 1
  return { high_s: time_s.high, high_Wh: charge.energy_Wh * longer }
}
