// A charge in words: where it starts, its stages, when it ends, and what its band comes from.

import { type Balancing, usualBalance_A } from '../../src/charging/setting/balancing.ts'
import type { TimedCharge } from '../../src/charging/setting/timed-charge.ts'
import { drawCount } from '../../src/charging/simulation/design.ts'
import type { ChargeEnd } from '../../src/charging/things/charge-end.ts'
import type { Band } from '../../src/charging/things/chemistry.ts'
import { restingVoltage } from '../../src/charging/things/curve.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import { stageNames } from '../../src/handbook/stages.words.ts'
import { cite } from './setting.words.ts'

/** "about 52 min (42 min to 1 h 5 min)" */
export const takesWords = ({ charge, time_s }: Pick<TimedCharge, 'charge' | 'time_s'>, { say, show }: Locale): Text =>
  say`about ${show.roughly(charge.duration_s)} (${show.roughly(time_s.low, Math.floor)} to ${show.roughly(time_s.high, Math.ceil)})`

/** "It takes about 52 min (42 min to 1 h 5 min); about 1170 mAh goes in."; where the charger's own clock ends it, what is in by then. */
export function costWords(timed: Pick<TimedCharge, 'charge' | 'time_s' | 'timer_s'>, locale: Locale): Text {
  const { say, show } = locale
  const { charge, timer_s } = timed
  return timer_s === undefined
    ? say`It takes ${takesWords(timed, locale)}; about ${show.charge(charge.charge_Ah)} goes in.`
    : say`Its clock ends it after ${show.duration(timer_s)}: about ${show.charge(charge.charge_Ah)} goes in, and it is at about ${show.percent(charge.endSoc)}.`
}

/** What the screen of the charger must show before the start, and where it must stop by itself. */
export function startWords(
  { series, chemistry }: Pack,
  { from, stops }: Pick<TimedCharge, 'from' | 'stops'>,
  isTold: boolean,
  { say, show, own }: Locale,
): Text {
  const rest_V = from.kind === 'rest' ? from.perCell_V : restingVoltage(chemistry, from.soc)
  const cells = series === 1 ? say`1 cell` : say`${own(String(series))} cells`
  const shows = isTold ? say`${cells}, about ${show.voltage(Number((rest_V * series).toFixed(1)))}` : cells
  return say`Its screen must show ${shows}. Its own stops: ${show.capacity(stops.capacity_Ah)}, ${show.duration(stops.timer_s)}.`
}

/** "twentieth, a twentieth of the set current" */
export const endWords = (end: ChargeEnd | number, { say, show, own }: Locale): Text =>
  typeof end === 'number'
    ? say`${show.duration(end)} by their clocks`
    : {
        tenth: say`a tenth of the set current (${own('tenth')})`,
        twentieth: say`a twentieth of the set current (${own('twentieth')})`,
        'C/10': say`a tenth of the capacity (${own('C/10')})`,
        'C/20': say`a twentieth of the capacity (${own('C/20')})`,
        steps: say`halving the current each time, down to a tenth of the set one (${own('steps')})`,
      }[end]

/** Fewer measured cells than these say little of a kind. */
const fewCells = 3

/** What was measured of the pack, and so narrows the band. */
interface MeasuredPack {
  readonly pack: Pack
  readonly measuredCapacity_Ah?: number | undefined
}

export function chargeWorking(
  { pack, measuredCapacity_Ah }: MeasuredPack,
  { charge, from, end, end_A, isEndTold, timer_s, byLabel_s, balancing }: TimedCharge,
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say, show } = locale
  const { curve, classes } = pack.chemistry
  const soc = show.percent(charge.startSoc)
  const stages = charge.stages.map(({ kind, duration_s, charge_Ah }) =>
    kind === 'balancing'
      ? say`${stageNames(locale)[kind]} ${show.duration(duration_s)}`
      : say`${stageNames(locale)[kind]} ${show.duration(duration_s)} (${show.capacity(charge_Ah)})`,
  )
  const tapers = charge.stages.some(({ kind }) => kind === 'constant voltage')
  return [
    from.kind === 'rest'
      ? say`Start: ${show.perCell(from.perCell_V)} a cell at rest is ${soc} of the charge (curve ${cite(curve, locale)}).`
      : say`Start: ${soc} of the charge (curve ${cite(curve, locale)}).`,
    say`Stages: ${joined(stages, ', ')}.`,
    timer_s !== undefined
      ? say`It ends by the clock of the charger, after ${show.duration(timer_s)}.`
      : end === 'steps'
        ? say`It holds no volts: at the cutoff it halves its current, again and again, as long as that is a tenth of the set one.`
        : !tapers
          ? undefined
          : end
            ? say`It ends when the current is down to ${show.current(end_A)}: ${endWords(end, locale)}.`
            : isEndTold
              ? say`It ends when the current is down to ${show.current(end_A)}.`
              : say`It ends when the current is down to ${show.current(end_A)}, a tenth of the set one (common practice); the band counts chargers too that end at a twentieth or by the capacity.`,
    balancing &&
      say`${bledWords(balancing, pack, locale)} A charger that balances all along is done sooner: the band counts that.`,
    say`Cell model: that curve for the surface of the particles, diffusion into them and a series resistance, warmed by what is lost (${cite(classes, locale)}).`,
    classes.value.some(({ measuredCells }) => measuredCells < fewCells)
      ? say`Of some of its kinds of cell fewer than ${show.number(fewCells, 0)} were measured: there published parameter sets stand in, and the band is wider.`
      : undefined,
    bandLine(pack, measuredCapacity_Ah !== undefined, byLabel_s, locale),
  ]
}

/** What the highest cell holds more than the lowest, and how long the balancer bleeds that. */
export function bledWords(
  { lowest_V, highest_V, balance_A, duration_s }: Omit<Balancing, 'least_s'>,
  { chemistry }: Pack,
  locale: Locale,
): Text {
  const { say, show } = locale
  return say`Balancing: the charge between ${show.number(highest_V, 3)} V and ${show.number(lowest_V, 3)} V at rest (${cite(chemistry.curve, locale)}) is ${show.capacity((duration_s * balance_A) / 3600)}; ÷ ${show.current(balance_A)} = ${show.duration(duration_s)}, more where the balancer pauses.`
}

/** Where no balance current is told. */
export const balancerAssumed = (locale: Locale) => ({
  text: locale.say`the balancer bleeds ${locale.show.current(usualBalance_A.value)}`,
  from: cite(usualBalance_A, locale),
})

/** How the band comes about, and what narrowed it. */
function bandLine(
  { cellResistance_ohm }: Pack,
  knowsCapacity: boolean,
  byLabel_s: Band | undefined,
  { say, show }: Locale,
): Text {
  const cells = say`Band: where nine of ten lie of ${show.number(drawCount, 0)} cells that this pack may be made of, with what a charger may be off`
  if (byLabel_s)
    return say`${cells}; narrowed by its own charges: by the label alone it would be ${show.roughly(byLabel_s.low, Math.floor)} to ${show.roughly(byLabel_s.high, Math.ceil)}.`
  const knowsResistance = cellResistance_ohm !== undefined
  if (knowsCapacity && knowsResistance) return say`${cells}; narrowed by the measured capacity and resistance.`
  if (knowsCapacity) return say`${cells}; narrowed by the measured capacity.`
  if (knowsResistance) return say`${cells}; narrowed by the measured resistance.`
  return say`${cells}; a measured capacity or resistance narrows it.`
}
