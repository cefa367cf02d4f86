// The figures of a plan on a source: packs, times, energies, and the voltage to stop at.

import type { Figure } from '../../src/assistant/reply.ts'
import type { SourcePlan } from '../../src/charging/sources/source-plan.ts'
import type { Source } from '../../src/charging/things/source.ts'
import type { Show } from '../../src/ground/show.ts'
import { figuresIn } from '../shared/figure.ts'

/** `packCount` is the most that the source carries; for one that is not drained, the count that was asked for. */
export function planFigures(
  plan: SourcePlan,
  source: Source,
  count: number | undefined,
  show: Show,
): Figure[] {
  const { setting, each, planned, balance, left_Wh, leftSoc } = plan
  const figure = figuresIn(show)
  const packCount = plan.most ?? count
  const whole = { low: planned * each.time_s.low, high: planned * each.time_s.high }
  const store = setting.feed?.store
  return [
    ...(packCount === undefined ? [] : [figure.count('packCount', 'packs', packCount)]),
    figure.duration('chargeTime', 'time for one pack', each.charge.duration_s, each.time_s),
    figure.duration('totalTime', `time for ${planned}`, planned * each.charge.duration_s, whole),
    ...(store
      ? [figure.voltage('stopVoltage', 'stop the source at', store.loadFloor_V || store.restFloor_V)]
      : []),
    ...(store && source.kind === 'battery'
      ? [figure.perCell('stopPerCell', 'per cell of the source', store.loadFloor_V / source.pack.series)]
      : []),
    ...(left_Wh === undefined
      ? []
      : [figure.energy('sourceEnergyLeft', 'still to be had from the source', left_Wh)]),
    ...(leftSoc === undefined
      ? []
      : [figure.percent('sourceChargeLeft', 'charge left in the source', leftSoc)]),
    figure.energy('sourceEnergyOut', 'out of the source', balance.sourceOut_Wh),
    figure.energy('packEnergy', 'into the packs', balance.intoPacks_Wh),
    figure.energy('converterLoss', 'lost in the charger', balance.converterLoss_Wh),
    figure.energy('sourceLoss', 'lost in the source', balance.sourceLoss_Wh),
    figure.current('setCurrent', 'current to set', setting.current_A),
    figure.perCell('cutoffPerCell', 'cutoff per cell', setting.cutoff.perCell_V),
    figure.power('inputPower', 'input power at most', setting.input_W),
    ...(setting.input_A === undefined
      ? []
      : [figure.current('inputCurrent', 'input current at most', setting.input_A)]),
  ]
}
