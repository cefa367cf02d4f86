// Packs on one parallel board: may they go together, what flows between them, and what to set for all.

import { whyUnfit } from '../setting/fitness.ts'
import type { Refusal } from '../setting/refusal.ts'
import { advance, type Cell, cellOf, innerVoltage, type Moment, scaleResistance } from '../simulation/cell.ts'
import type { Chemistry, Cited } from '../things/chemistry.ts'
import { restingVoltage, socAt } from '../things/curve.ts'
import type { HouseLimits } from '../things/house-limits.ts'
import type { State } from '../things/level.ts'
import type { Pack } from '../things/pack.ts'
import { batterySourceRate_C } from '../things/practice.ts'

export interface BoardPack {
  readonly pack: Pack
  readonly from: State
  readonly unsound?: string
}

export type BoardRefusal =
  | { readonly kind: 'one pack' }
  | { readonly kind: 'unsound'; readonly pack: number; readonly word: string }
  | { readonly kind: 'cell counts'; readonly series: readonly number[] }
  | { readonly kind: 'chemistries'; readonly chemistries: readonly Chemistry[] }
  | { readonly kind: 'pack'; readonly pack: number; readonly refusal: Refusal }
  /** So far apart that a pack takes or gives more than it may, or than the rule of thumb allows; `most_V` would do. */
  | {
      readonly kind: 'voltage'
      readonly apart_V: number
      readonly most_V: number
      readonly flow?: { readonly pack: number; readonly current_A: number; readonly most_A: number }
    }

export interface Flow {
  /** Into the pack, negative out of it, in A: as it is connected, on average over the first minute, and after the wait. */
  readonly atOnce_A: number
  readonly firstMinute_A: number
  readonly later_A: number
}

export interface Board {
  /** Between the highest and the lowest pack, per cell, in V. */
  readonly apart_V: number
  /** For each pack, as it is connected and `waited_s` later. */
  readonly flows: readonly Flow[]
  readonly waited_s: number
  readonly refusal?: BoardRefusal
}

export const mostApart_V: Cited = {
  value: 0.1,
  standing: 'common practice',
  source: 'connect packs in parallel only within 0.1 V per cell of each other',
}

/** Plugs, balance wires and board between two packs. */
export const boardResistance_ohm: Cited = {
  value: 0.004,
  standing: 'memory',
  source: 'about 2 mΩ for a plug and its leads, twice',
}

/** What is left of the spread where the resistance was measured. */
const measuredResistanceSpread = 0.25

/** Common practice: ten minutes on the board before the charge starts. */
export const wait_s = 600

/** Flows count with cells of the least resistance that they may have: the safe side. */
export function checkBoard(packs: readonly BoardPack[], house: HouseLimits): Board {
  const rest_V = packs.map(({ pack, from }) =>
    from.kind === 'rest' ? from.perCell_V : restingVoltage(pack.chemistry, from.soc),
  )
  const apart_V = Number((Math.max(...rest_V) - Math.min(...rest_V)).toFixed(6))
  const misfit = misfitOf(packs)
  if (misfit) return { apart_V, flows: [], waited_s: wait_s, refusal: misfit }
  const flows = equalise(packs)
  const refusal = tooFarApart(packs, apart_V, flows, house)
  return { apart_V, flows, waited_s: wait_s, refusal }
}

function misfitOf(packs: readonly BoardPack[]): BoardRefusal | undefined {
  if (packs.length < 2) return { kind: 'one pack' }
  for (const [pack, { unsound }] of packs.entries()) {
    if (unsound !== undefined) return { kind: 'unsound', pack, word: unsound }
  }
  const series = [...new Set(packs.map(({ pack }) => pack.series))]
  if (series.length > 1) return { kind: 'cell counts', series }
  const kinds = [...new Set(packs.map(({ pack }) => pack.chemistry))]
  if (kinds.length > 1) return { kind: 'chemistries', chemistries: kinds }
  for (const [index, { pack, from }] of packs.entries()) {
    const unfit = whyUnfit({ pack, ...(from.kind === 'rest' && { restPerCell_V: from.perCell_V }) })
    if (unfit) return { kind: 'pack', pack: index, refusal: unfit.refusal }
  }
  return undefined
}

function tooFarApart(
  packs: readonly BoardPack[],
  apart_V: number,
  flows: readonly Flow[],
  house: HouseLimits,
): BoardRefusal | undefined {
  const over = packs.flatMap(({ pack }, index) => {
    const { firstMinute_A } = flows[index] as Flow
    const most_A =
      firstMinute_A > 0 ? chargeLimit_A(pack, house) : batterySourceRate_C.value * pack.capacity_Ah
    const times = Math.abs(firstMinute_A) / most_A
    return times > 1 + 1e-9 ? [{ pack: index, current_A: firstMinute_A, most_A, times }] : []
  })
  const [worst] = over.sort((a, b) => b.times - a.times)
  if (!worst) {
    return apart_V > mostApart_V.value + 1e-9
      ? { kind: 'voltage', apart_V, most_V: mostApart_V.value }
      : undefined
  }
  const { times, ...flow } = worst
  // The flow goes with the volts; a millivolt is what a meter can tell.
  const most_V = Math.min(mostApart_V.value, Math.floor((apart_V / times) * 1000) / 1000)
  return { kind: 'voltage', apart_V, most_V, flow }
}

/** The most that may flow into a pack: what label, chemistry and house allow, in A. */
function chargeLimit_A(
  { chemistry, capacity_Ah, labelRate_C = Number.POSITIVE_INFINITY }: Pack,
  house: HouseLimits,
): number {
  const house_C = house.maxRate_C?.[chemistry.name] ?? Number.POSITIVE_INFINITY
  return capacity_Ah * Math.min(chemistry.highestRate_C.value, labelRate_C, house_C)
}

/** Meshed at the board: V = Σ(E/R) / Σ(1/R); each pack then takes (V - E) / R, and moves on by its circuit. */
function equalise(packs: readonly BoardPack[]): Flow[] {
  const cells = packs.map(({ pack }) => connectedCell(pack))
  const meshed_A = (moments: readonly Moment[]): number[] => {
    const inner_V = cells.map((cell, index) => innerVoltage(cell, moments[index] as Moment))
    const conductance = cells.map(cell => 1 / cell.series_ohm)
    const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
    const board_V =
      sum(inner_V.map((volts, index) => volts * (conductance[index] as number))) / sum(conductance)
    return inner_V.map((volts, index) => (board_V - volts) * (conductance[index] as number))
  }
  const starts = packs.map(startOf)
  const atOnce_A = meshed_A(starts)
  let moments = starts
  let moved_Ah = cells.map(() => 0)
  for (let time_s = 0; time_s < wait_s; time_s += step_s) {
    const flow_A = meshed_A(moments)
    moments = moments.map((moment, index) => {
      const current_A = flow_A[index] as number
      return advance(cells[index] as Cell, { ...moment, current_A }, step_s, current_A)
    })
    if (time_s < 60)
      moved_Ah = moved_Ah.map((moved, index) => moved + ((flow_A[index] as number) * step_s) / 3600)
  }
  const later_A = meshed_A(moments)
  return cells.map((_, index) => ({
    atOnce_A: atOnce_A[index] as number,
    firstMinute_A: (moved_Ah[index] as number) * 60,
    later_A: later_A[index] as number,
  }))
}

const step_s = 0.5

/** A cell of the least resistance that the pack may have, with its share of plugs and board. */
function connectedCell(pack: Pack): Cell {
  const { resistanceSpread } = pack.chemistry
  const spread = pack.cellResistance_ohm === undefined ? resistanceSpread.value : measuredResistanceSpread
  const cell = scaleResistance(cellOf(pack, 25), 1 - spread)
  return { ...cell, series_ohm: cell.series_ohm + boardResistance_ohm.value / 2 / pack.series }
}

function startOf({ pack, from }: BoardPack): Moment {
  const soc = from.kind === 'soc' ? from.soc : socAt(pack.chemistry, from.perCell_V)
  return { time_s: 0, soc, current_A: 0, fast_V: 0, slow_V: 0 }
}

/**
 * The packs as one: capacities added up, the lowest label rate. Where one plug comes loose the others take its share, so
 * the rate is also held to what they may take without the largest of them.
 */
export function combinedPack(packs: readonly Pack[]): Pack {
  const [first] = packs as [Pack, ...Pack[]]
  const sizes_Ah = packs.map(({ capacity_Ah }) => capacity_Ah)
  const whole_Ah = sizes_Ah.reduce((sum, size_Ah) => sum + size_Ah, 0)
  const others = (whole_Ah - Math.max(...sizes_Ah)) / whole_Ah
  const most_C = (rate_C: number) => rate_C * others
  const rates_C = packs.map(({ labelRate_C, chemistry }) =>
    Math.min(labelRate_C ?? Number.POSITIVE_INFINITY, chemistry.highestRate_C.value),
  )
  const lowest_C = most_C(Math.min(...rates_C))
  const recommended_C = first.chemistry.recommendedRate_C.value
  return {
    chemistry: first.chemistry,
    series: first.series,
    parallel: packs.length,
    capacity_Ah: whole_Ah,
    labelRate_C: Math.min(
      lowest_C,
      packs.some(({ labelRate_C }) => labelRate_C !== undefined) ? lowest_C : recommended_C,
    ),
  }
}
