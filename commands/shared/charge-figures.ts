// The figures of one charge: its times with their bands, its stages, and what goes into the pack.

import type { Figure } from '../../src/assistant/reply.ts'
import type { Setting } from '../../src/charging/setting/old-setting.ts'
import type { TimedCharge } from '../../src/charging/setting/old-timed-charge.ts'
import type { StageKind } from '../../src/charging/simulation/charge.ts'
import type { Show } from '../../src/ground/show.ts'
import { figuresIn } from './figure.ts'

const stageKeys: Record<StageKind, string> = {
  precharge: 'prechargeTime',
  'constant current': 'constantCurrentTime',
  'constant power': 'constantPowerTime',
  'constant voltage': 'constantVoltageTime',
}

export function chargeFigures(timed: TimedCharge, setting: Setting, show: Show): Figure[] {
  const { charge } = timed
  const { cutoff, cutoffPack_V, efficiency, feed } = setting
  const figure = figuresIn(show)
  const input_W = charge.peakPower_W / efficiency
  return [
    figure.duration('chargeTime', 'time', charge.duration_s, timed.time_s),
    figure.duration(
      'timeToCutoff',
      'time to the cutoff voltage',
      charge.timeToCutoff_s,
      timed.timeToCutoff_s,
    ),
    ...charge.stages.map(({ kind, duration_s }) => figure.duration(stageKeys[kind], kind, duration_s)),
    figure.current('setCurrent', 'current set', timed.current_A),
    figure.rate('cRate', 'rate', timed.rate_C),
    figure.perCell('cutoffPerCell', 'cutoff per cell', cutoff.perCell_V),
    figure.voltage('cutoffPack', 'cutoff of the pack', cutoffPack_V),
    figure.capacity('chargeIn', 'charge in', charge.charge_Ah),
    figure.energy('energyIn', 'energy in', charge.energy_Wh),
    figure.energy('heat', 'of it heat in the pack', charge.heat_Wh),
    figure.percent('startCharge', 'charged at the start', charge.startSoc),
    figure.percent('endCharge', 'charged at the end', charge.endSoc),
    figure.power('peakInputPower', 'input power at most', input_W),
    ...(feed ? [figure.current('peakInputCurrent', 'input current at most', input_W / feed.lowest_V)] : []),
  ]
}
