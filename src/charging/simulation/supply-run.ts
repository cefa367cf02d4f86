// How often a source carries the same draws, and what each time costs it.

import type { Situation } from '../situation/situation.ts'
import type { BatteryStore } from '../things/battery-store.ts'
import { powerBankEfficiency } from '../things/practice.ts'
import type { Source } from '../things/source.ts'
import type { Charge, CurvePoint } from './charge.ts'
import { type Draw, drain } from './drain.ts'

interface After {
  /** Lost inside the source so far, in Wh. */
  readonly sourceLoss_Wh: number
  /** What it can still deliver above its floor, in Wh. */
  readonly left_Wh?: number
  readonly leftSoc?: number
}

export interface SupplyRun {
  /** How often the draws are carried whole; absent where the source is not drained. */
  readonly most?: number
  /** The state after the draws have run `times` times, at most `most`. */
  after(times: number): After
}

/** Beyond this many nobody counts: it then means "at least". */
export const countedPacks = 200

/** `store` is the battery behind the source, where it can be drained; `bank` how full a power bank is and what it keeps, 0 to 1. */
export function supplyOf(
  source: Source,
  store: BatteryStore | undefined,
  draws: readonly Draw[],
  bank: Pick<Situation, 'sourceSoc' | 'sourceKeeps'>,
): SupplyRun {
  if (store) return batteryRun(store, draws)
  if (source.kind === 'power bank') return powerBankRun(source.label_Wh, bank, draws)
  return { after: () => ({ sourceLoss_Wh: 0 }) }
}

function powerBankRun(
  label_Wh: number,
  { sourceSoc: soc = 1, sourceKeeps = 0 }: Pick<Situation, 'sourceSoc' | 'sourceKeeps'>,
  draws: readonly Draw[],
): SupplyRun {
  const share = powerBankEfficiency.value
  const { energy_Wh } = totalsOf(draws)
  const held_Wh = label_Wh * Math.max(0, soc - sourceKeeps) * share
  return {
    most: Math.min(countedPacks, Math.floor(held_Wh / energy_Wh)),
    after: times => ({
      sourceLoss_Wh: times * energy_Wh * (1 / share - 1),
      left_Wh: held_Wh - times * energy_Wh,
      leftSoc: soc - (times * energy_Wh) / share / label_Wh,
    }),
  }
}

function batteryRun(store: BatteryStore, draws: readonly Draw[]): SupplyRun {
  const states = [{ soc: store.soc, sourceLoss_Wh: 0 }]
  while (states.length <= countedPacks) {
    const last = states.at(-1) as (typeof states)[number]
    const run = drain(store, last.soc, draws)
    if (!run.completed) break
    states.push({ soc: run.soc, sourceLoss_Wh: last.sourceLoss_Wh + run.loss_Wh })
  }
  return {
    most: states.length - 1,
    after: times => {
      const { soc, sourceLoss_Wh } = states[times] as (typeof states)[number]
      return { sourceLoss_Wh, leftSoc: soc, left_Wh: deliverable_Wh(store, soc, meanOf(draws)) }
    },
  }
}

/** What a source holds for a charger that takes `power_W` of it, in Wh; undefined where it is not drained. */
export function usable_Wh(
  source: Source,
  store: BatteryStore | undefined,
  power_W: number,
  soc = 1,
): number | undefined {
  if (store) return deliverable_Wh(store, store.soc, power_W)
  return source.kind === 'power bank' ? source.label_Wh * soc * powerBankEfficiency.value : undefined
}

/** What the battery gives down to its floor at a power, in Wh. */
function deliverable_Wh(store: BatteryStore, soc: number, power_W: number): number {
  const longest_s = (store.energyBetween_Wh(0, soc) * 3600) / power_W
  return drain(store, soc, [{ power_W, duration_s: longest_s }]).delivered_Wh
}

function meanOf(draws: readonly Draw[]): number {
  const { energy_Wh, duration_s } = totalsOf(draws)
  return (energy_Wh * 3600) / duration_s
}

/** Energy of the draws together, in Wh, and how long they take, in s. */
export function totalsOf(draws: readonly Draw[]) {
  return {
    energy_Wh: draws.reduce((sum, { power_W, duration_s }) => sum + (power_W * duration_s) / 3600, 0),
    duration_s: draws.reduce((sum, { duration_s }) => sum + duration_s, 0),
  }
}

/** What one charge draws from the source, span by span. */
export function drawsOf({ curve }: Charge, series: number, efficiency: number): Draw[] {
  const power_W = ({ perCell_V, current_A }: CurvePoint) => (perCell_V * series * current_A) / efficiency
  return curve.slice(1).map((to, index) => {
    const from = curve[index] as CurvePoint
    return { power_W: (power_W(from) + power_W(to)) / 2, duration_s: to.time_s - from.time_s }
  })
}
