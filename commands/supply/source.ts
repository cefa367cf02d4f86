// How many packs a source charges, what is left of it, and where to stop.

import { command, optional, required } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import { planSource, type SourcePlan } from '../../src/charging/sources/source-plan.ts'
import { countKind, percentKind, sourceKind } from '../../src/language/kinds/values.ts'
import { chargeTold, ofCharge } from '../shared/charging.ts'

const { pack, charger, from, to, temperature } = ofCharge
const takes = {
  source: required(sourceKind),
  pack,
  charger,
  from,
  to,
  count: optional(countKind),
  charged: optional(percentKind),
  temperature,
}

export const source = command({
  name: 'source',
  takes,
  examples: [
    'source source: 4S 5000 Li-ion pack: 3S 720 LiHV count: 6',
    'source source: power bank 74Wh PD 45W pack: 2S 450 LiPo charger: 0.3/0.8/1.5/3A 10-26V from: 3.7V per cell',
    'source source: car 10A engine running pack: 4S 1500 LiPo',
  ],
  situation: asked => ({ ...chargeTold(asked), sourceSoc: asked.charged }),
  compute: (permit, { count }) => ({ ...planSource(permit, count), count, permit }),
  // Between two packs anybody may stop: nobody has to stay longer than one charge takes.
  planned: ({ setting, each, most, count }) => ({
    set_A: setting.current_A,
    input_A: setting.input_A,
    takes_s: each.time_s.high,
    carried: most,
    wanted: count,
  }),
  figures: planFigures,
})

interface Counted extends SourcePlan {
  readonly count: number | undefined
  readonly permit: Permit
}

/** `packCount` is the most that the source carries; for one that is not drained, the count that was asked for. */
function planFigures({ setting, each, planned, balance, most, count, permit, ...left }: Counted) {
  const packCount = most ?? count
  const { source: feeding } = permit.situation
  const store = setting.feed?.store
  const battery = feeding?.kind === 'battery' ? feeding.pack : undefined
  const whole_s = { low: planned * each.time_s.low, high: planned * each.time_s.high }
  return [
    figure.count('packCount', packCount),
    figure.duration('chargeTime', each.charge.duration_s, each.time_s),
    figure.duration('totalTime', planned * each.charge.duration_s, whole_s),
    store && figure.voltage('stopVoltage', battery ? store.loadFloor_V : store.restFloor_V),
    store && battery && figure.perCell('stopPerCell', store.loadFloor_V / battery.series),
    store && battery && figure.voltage('stopAtRest', Math.max(store.restFloor_V, store.loadFloor_V)),
    figure.energy('sourceEnergyLeft', left.left_Wh),
    figure.percent('sourceChargeLeft', left.leftSoc),
    figure.energy('sourceEnergyOut', balance.sourceOut_Wh),
    figure.energy('packEnergy', balance.intoPacks_Wh),
    figure.energy('converterLoss', balance.converterLoss_Wh),
    figure.energy('sourceLoss', balance.sourceLoss_Wh),
    figure.current('setCurrent', setting.current_A),
    figure.perCell('cutoffPerCell', setting.cutoff.perCell_V),
    figure.power('inputPower', setting.input_W),
    figure.current('inputCurrent', setting.input_A),
  ]
}
