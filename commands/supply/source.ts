// How many packs a source charges, what is left of it, and where to stop; or how large one must be for so many.

import { command, optional } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import { planSource, type SourcePlan } from '../../src/charging/sources/source-plan.ts'
import { type SourceSize, sizeFor } from '../../src/charging/sources/source-size.ts'
import { countKind, durationKind, percentKind, sourceKind } from '../../src/language/kinds/values.ts'
import { byLog, recallFromLog } from '../log/log-recall.ts'
import { chargeTold, ofCharge } from '../shared/charging.ts'
import { ofLead } from '../shared/own-lead.ts'

const { pack, charger, from, to, temperature, apart } = ofCharge
const takes = {
  source: optional(sourceKind),
  pack,
  charger,
  from,
  to,
  count: optional(countKind),
  time: optional(durationKind),
  charged: optional(percentKind),
  leave: optional(percentKind),
  temperature,
  apart,
  ...ofLead,
  ...byLog,
}

export const source = command({
  name: 'source',
  shelf: 'supply source',
  takes,
  anyOf: [['source', 'count']],
  examples: [
    'source source: 4S 5000 Li-ion pack: 3S 720 LiHV count: 6',
    'source source: power bank 74Wh PD 45W pack: 2S 450 LiPo charger: 0.3/0.8/1.5/3A 10-26V from: 3.7V per cell',
    'source source: car 10A engine running pack: 4S 1500 LiPo',
    'source pack: 6S 1300 LiPo count: 10',
    'source source: panel 100W pack: 3S 2200 LiPo time: 4h',
  ],
  recall: recallFromLog,
  situation: asked => ({ ...chargeTold(asked), sourceSoc: asked.charged, sourceKeeps: asked.leave }),
  compute: (permit, asked): Counted | Sized => {
    const { count = 1, time } = asked
    if (!asked.source) return { kind: 'size', ...sizeFor(permit, count), count, permit }
    const plan = planSource(permit, asked.count)
    return { kind: 'plan', ...plan, inTime: time && within(time, plan), count: asked.count, permit }
  },
  // Between two packs anybody may stop: nobody has to stay longer than one charge takes.
  planned: result => ({
    set_A: result.setting.current_A,
    input_A: result.setting.input_A,
    takes_s: result.each.time_s.high,
    warmest_C: result.each.warmest_C,
    carried: result.kind === 'plan' ? result.most : undefined,
    wanted: result.kind === 'plan' ? result.count : undefined,
  }),
  figures: result => (result.kind === 'plan' ? planFigures(result) : sizeFigures(result)),
})

export interface Counted extends SourcePlan {
  readonly kind: 'plan'
  readonly count: number | undefined
  /** Packs in the time at hand, one after another. */
  readonly inTime: number | undefined
  readonly permit: Permit
}

export interface Sized extends SourceSize {
  readonly kind: 'size'
  readonly count: number
  readonly permit: Permit
}

/** Whole packs that are done in the time, one after another, and no more than the source carries. */
function within(time_s: number, { most = Number.POSITIVE_INFINITY, each, perHour }: SourcePlan): number {
  const charged = Math.floor(time_s / each.time_s.high)
  const fed = perHour === undefined ? charged : Math.floor((perHour * time_s) / 3600)
  return Math.min(most, charged, fed)
}

/** `packCount` is the most that the source carries; for one that is not drained, the count that was asked for. */
function planFigures({
  setting,
  each,
  planned,
  balance,
  most,
  between,
  count,
  inTime,
  perHour,
  permit,
  ...left
}: Counted) {
  const packCount = most ?? count
  const { source: feeding } = permit.situation
  const store = setting.feed?.store
  const battery = feeding?.kind === 'battery' ? feeding.pack : undefined
  const whole_s = { low: planned * each.time_s.low, high: planned * each.time_s.high }
  return [
    figure.count('packCount', packCount, between),
    figure.count('inTime', inTime),
    figure.factor('perHour', perHour),
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
    ...settingFigures(setting),
  ]
}

const sizeFigures = ({ setting, all_Wh, station_Wh, deepCycle_Ah, starter_Ah, each }: Sized) => [
  figure.energy('inputEnergy', all_Wh),
  figure.energy('station', station_Wh),
  figure.capacity('deepCycle', deepCycle_Ah),
  figure.capacity('starter', starter_Ah),
  figure.duration('chargeTime', each.charge.duration_s, each.time_s),
  ...settingFigures(setting),
]

const settingFigures = (setting: SourcePlan['setting']) => [
  figure.current('setCurrent', setting.current_A),
  figure.perCell('cutoffPerCell', setting.cutoff.perCell_V),
  figure.power('inputPower', setting.input_W),
  figure.current('inputCurrent', setting.input_A),
]
