// Packs on one parallel board: what they are together, and what flows between them as they are connected.

import { sumOf } from '../numbers/sum.ts'
import { labelRate_C } from '../setting/bounds.ts'
import { advance, type Cell, cellOf, innerVoltage, type Moment, restedAt, scaleResistance } from '../simulation/cell.ts'
import type { Permit } from '../situation/permit.ts'
import type { BesidePack, Told } from '../situation/situation.ts'
import type { Charger } from '../things/charger.ts'
import { remembered } from '../things/cited.ts'
import { diffusion_ohmAh, restingVoltage } from '../things/curve.ts'
import type { HouseLimits } from '../things/house-limits.ts'
import { type State, socOf, startOf } from '../things/level.ts'
import type { Pack } from '../things/pack.ts'
import { batterySourceRate_C } from '../things/practice.ts'

export interface BoardPack {
  readonly pack: Pack
  readonly from: State
}

export interface Flow {
  /** Into the pack, negative out of it, in A: as it is connected, on average over the first minute, and after the wait. */
  readonly atOnce_A: number
  readonly firstMinute_A: number
  readonly later_A: number
}

/** Plugs, balance wires and board between two packs. */
export const boardResistance_ohm = remembered(0.004, 'about 2 mΩ for a plug and its leads, twice')

/** What is left of the spread where the resistance was measured. */
const measuredResistanceSpread = 0.25

/** Common practice: ten minutes on the board before the charge starts. */
const wait_s = 600

/** The situation of charging packs together: as one pack, from where the lowest of them stands. */
export function boardTold(
  packs: readonly [BesidePack, ...BesidePack[]],
  charger: Charger | undefined,
  house: HouseLimits,
): Told & { readonly pack: Pack } {
  const rests_V = packs.flatMap(({ pack, from }) =>
    from ? [restOf({ pack, from: startOf(from, pack.chemistry, house) })] : [],
  )
  const [first, ...others] = packs
  return {
    act: 'board',
    pack: combinedPack([first.pack, ...others.map(({ pack }) => pack)]),
    board: packs,
    from: rests_V.length > 0 ? { kind: 'rest', perCell_V: Math.min(...rests_V) } : undefined,
    charger,
  }
}

/** What flows on a board that is permitted; unknown where not every pack was measured. */
export function boardOf({ situation: { board = [], house } }: Permit) {
  const packs = board.map(({ pack }) => pack)
  const standing = board.flatMap(({ pack, from }) =>
    from ? [{ pack, from: startOf(from, pack.chemistry, house) }] : [],
  )
  if (standing.length < board.length) return { packs, apart_V: undefined, flows: [], flowShare: undefined }
  const rests_V = standing.map(restOf)
  const flows = equalise(standing)
  const shares = packs.map((pack, index) => {
    const { firstMinute_A } = flows[index] as Flow
    const most_A = firstMinute_A > 0 ? chargeLimit_A(pack, house) : batterySourceRate_C.value * pack.capacity_Ah
    return Math.abs(firstMinute_A) / most_A
  })
  return {
    packs,
    /** Between the highest and the lowest pack, per cell, in V; unknown where one was not measured. */
    apart_V: Number((Math.max(...rests_V) - Math.min(...rests_V)).toFixed(6)),
    /** For each pack; none where one was not measured. */
    flows,
    /** The largest of the first minute's currents over what its pack may take or give. */
    flowShare: Math.max(...shares),
  }
}

export type Board = ReturnType<typeof boardOf>

const restOf = ({ pack, from }: BoardPack): number =>
  from.kind === 'rest' ? from.perCell_V : restingVoltage(pack.chemistry, from.soc)

/** The most that may flow into a pack: what label, chemistry and club allow, in A. */
function chargeLimit_A(pack: Pack, house: HouseLimits): number {
  const { chemistry, capacity_Ah } = pack
  const house_C = house.maxRate_C?.[chemistry.name] ?? Number.POSITIVE_INFINITY
  const label_C = labelRate_C(pack) ?? Number.POSITIVE_INFINITY
  return capacity_Ah * Math.min(chemistry.highestRate_C.value, label_C, house_C)
}

/**
 * What flows between packs that are joined, whether or not they may be. Flows count with cells of the least resistance
 * that they may have: the safe side.
 */
export function equalise(packs: readonly BoardPack[]): Flow[] {
  const cells = packs.map(({ pack }) => connectedCell(pack))
  /** Meshed at the board: V = Σ(E/R) / Σ(1/R); each pack then takes (V - E) / R, and moves on by its circuit. */
  const meshed_A = (moments: readonly Moment[]): number[] => {
    const inner_V = cells.map((cell, index) => innerVoltage(cell, moments[index] as Moment))
    const conductance = cells.map(cell => 1 / cell.series_ohm)
    const board_V = sumOf(inner_V.map((volts, index) => volts * (conductance[index] as number))) / sumOf(conductance)
    return inner_V.map((volts, index) => (board_V - volts) * (conductance[index] as number))
  }
  const starts = packs.map(startingCell)
  const atOnce_A = meshed_A(starts)
  let moments = starts
  let moved_Ah = cells.map(() => 0)
  for (let time_s = 0; time_s < wait_s; time_s += step_s) {
    const flow_A = meshed_A(moments)
    moments = moments.map((moment, index) => {
      const current_A = flow_A[index] as number
      return advance(cells[index] as Cell, { ...moment, current_A }, step_s, current_A)
    })
    if (time_s < 60) moved_Ah = moved_Ah.map((moved, index) => moved + ((flow_A[index] as number) * step_s) / 3600)
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
  // A pack that reads low may be a better one in all: no more is counted to come on top than the reading itself.
  const later_ohm = diffusion_ohmAh(pack.chemistry, cell.diffusion_s / 3600) / pack.capacity_Ah
  const share = pack.cellResistance_ohm === undefined ? 1 : Math.min(1, cell.series_ohm / later_ohm)
  const series_ohm = cell.series_ohm + boardResistance_ohm.value / 2 / pack.series
  return { ...cell, diffusion_s: cell.diffusion_s * share, series_ohm }
}

const startingCell = ({ pack, from }: BoardPack): Moment => restedAt(socOf(from, pack.chemistry))

/**
 * The packs as one: capacities added up, the lowest label rate. Where one plug comes loose the others take its share, so
 * the rate is also held to what they may take without the largest of them.
 */
function combinedPack(packs: readonly [Pack, ...Pack[]]): Pack {
  const [{ chemistry, series }] = packs
  const sizes_Ah = packs.map(({ capacity_Ah }) => capacity_Ah)
  const whole_Ah = sumOf(sizes_Ah)
  const others = packs.length === 1 ? 1 : (whole_Ah - Math.max(...sizes_Ah)) / whole_Ah
  const labels_C = packs.map(labelRate_C).filter(rate_C => rate_C !== undefined)
  const lowest_C = Math.min(...labels_C, ...packs.map(pack => pack.chemistry.highestRate_C.value)) * others
  return {
    chemistry,
    series,
    parallel: packs.length,
    capacity_Ah: whole_Ah,
    labelRate_C: labels_C.length > 0 ? lowest_C : Math.min(lowest_C, chemistry.recommendedRate_C.value),
  }
}
