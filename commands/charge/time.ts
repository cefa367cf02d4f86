// How long a charge takes, from where the pack stands to where it is to go.

import { type Asked, command, optional } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { type TimedCharge, timedCharge } from '../../src/charging/setting/timed-charge.ts'
import type { StageKind } from '../../src/charging/simulation/charge.ts'
import { capacityKind, currentKind, resistanceKind } from '../../src/language/kinds/values.ts'
import { recallFromLog } from '../log/log-recall.ts'
import { currentOn, refuseLateEnd } from '../shared/asked-current.ts'
import { chargeTold, ofCharge } from '../shared/charging.ts'
import { stopFigures } from '../shared/stop-figures.ts'

const { pack, charger, source, from, to, temperature } = ofCharge
const takes = {
  pack,
  current: optional(currentKind),
  charger,
  source,
  from,
  to,
  until: optional(currentKind),
  resistance: optional(resistanceKind),
  capacity: optional(capacityKind),
  temperature,
}

/** A resistance given apart counts as one on the pack; a current is one that the charger can be set to. */
const asTold = ({ resistance, ...asked }: Asked<typeof takes>) => ({
  ...asked,
  pack: { ...asked.pack, cellResistance_ohm: resistance ?? asked.pack.cellResistance_ohm },
  current: asked.current === undefined ? undefined : currentOn(asked.charger, asked.current),
})

export const time = command({
  name: 'time',
  takes,
  examples: [
    'time pack: 3S 720 LiHV current: 1A from: 3.7V per cell to: full',
    'time pack: 6S 1300 LiPo charger: 0.1-10A by 0.1 80W from: 20% to: storage',
    'time pack: 2S 2600 Li-ion current: 1.3A from: 10% resistance: 30mΩ',
  ],
  recall: recallFromLog,
  situation: asked => chargeTold(asTold(asked)),
  compute: (permit, asked, { now, speaksFirst }) => {
    const details = {
      current_A: permit.situation.current_A,
      termination_A: asked.until,
      measuredCapacity_Ah: asked.capacity,
    }
    const timed = timedCharge(permit, details)
    if (asked.until !== undefined) refuseLateEnd(asked.until, timed.current_A)
    return { ...timed, ...details, current_A: timed.current_A, now, speaksFirst }
  },
  planned: ({ current_A, input_A, time_s, carried }) => ({ set_A: current_A, input_A, takes_s: time_s.high, carried }),
  figures: timed => [...timeFigures(timed), ...stopFigures(timed)],
})

export const stageKeys = {
  precharge: 'prechargeTime',
  'constant current': 'constantCurrentTime',
  'constant power': 'constantPowerTime',
  'constant voltage': 'constantVoltageTime',
} as const satisfies Record<StageKind, string>

const timeFigures = ({ charge, setting, ...timed }: TimedCharge) => [
  figure.duration('chargeTime', charge.duration_s, timed.time_s),
  figure.duration('timeToCutoff', charge.timeToCutoff_s, timed.timeToCutoff_s),
  ...charge.stages.map(({ kind, duration_s }) => figure.duration(stageKeys[kind], duration_s)),
  figure.current('setCurrent', timed.current_A),
  figure.rate('cRate', timed.rate_C),
  figure.perCell('cutoffPerCell', setting.cutoff.perCell_V),
  figure.voltage('cutoffPack', setting.cutoffPack_V),
  figure.capacity('chargeIn', charge.charge_Ah),
  figure.energy('energyIn', charge.energy_Wh),
  figure.energy('heat', charge.heat_Wh),
  figure.percent('startCharge', charge.startSoc),
  figure.percent('endCharge', charge.endSoc),
  figure.power('peakInputPower', charge.peakPower_W / setting.efficiency),
  figure.current('peakInputCurrent', timed.input_A),
]
