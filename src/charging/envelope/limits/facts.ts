// The numbers of a situation that its rules look at. Undefined is unknown, and an unknown number breaks no limit.

import { type Bounds, boundsOf } from '../../setting/bounds.ts'
import type { Planned, Situation } from '../../situation/situation.ts'
import { sourceRestFloor_V } from '../../things/battery-store.ts'
import { restingVoltage, socAt } from '../../things/curve.ts'
import { goalOf, type Level, socOf, startOf } from '../../things/level.ts'
import type { Pack } from '../../things/pack.ts'
import { batterySourceRate_C, longDrainShare } from '../../things/practice.ts'
import { anyCurrent, smallestStep_A } from '../../things/steps.ts'
import { besideFlat_V } from '../../upkeep/lookalike.ts'
import { labelEnergy_Wh } from '../../upkeep/transport.ts'

/** Every number that a rule may look at, and how it is shown. */
export const unitOf = {
  /** Rest volts of the lowest and the highest cell that is told of, and how far apart they are. */
  lowest_V: 'perCell',
  highest_V: 'perCell',
  spread_V: 'voltage',
  /** How far the cells read from where those of another type rest through most of their charge, in V. */
  besideFlat_V: 'voltage',
  /** How far below its goal the pack stands, in V a cell or as a share of its charge. */
  toGo: 'voltage',
  /** Where the charge is to end, as asked or planned, in V a cell. */
  cutoff_V: 'perCell',
  /** How far above what was asked for that is planned, in V a cell. */
  aboveWish_V: 'voltage',
  /** What a charger took the cells to, and how far off what it showed that was, in V a cell. */
  got_V: 'perCell',
  offBy_V: 'voltage',
  /** How far below what is allowed the charger's next cutoff lies, in V. */
  cutoffMissed_V: 'perCell',
  temperature_C: 'temperature',
  /** What the cells warm to while they are charged. */
  warmest_C: 'temperature',
  labelRate_C: 'rate',
  dischargeRate_C: 'rate',
  /** Asked for or planned: into the pack, over its capacity. */
  rate_C: 'rate',
  current_A: 'current',
  series: 'count',
  smallestStep_A: 'current',
  outsideInput_V: 'voltage',
  aboveFloor_V: 'voltage',
  drain_A: 'current',
  underLoad_V: 'perCell',
  /** How far above the volts to stop at a drained pack rests, in V a cell. */
  aboveStop_V: 'voltage',
  input_A: 'current',
  takes_s: 'duration',
  lasts_s: 'duration',
  carried: 'count',
  wanted: 'count',
  missing: 'count',
  atOnce: 'count',
  short: 'count',
  boardPacks: 'count',
  /** Packs of a board of which nobody told where they stand. */
  boardUnknown: 'count',
  /** Packs of a board that a danger is told of. */
  boardHurt: 'count',
  boardSeries: 'count',
  boardChemistries: 'count',
  apart_V: 'voltage',
  apartCharge: 'percent',
  flowShare: 'percent',
  energy_Wh: 'energy',
  needLeave: 'count',
  ageTimes: 'times',
  oddTimes: 'times',
  agedTimes: 'times',
  labelShare: 'percent',
  startShare: 'percent',
  putBackShare: 'percent',
  usedShare: 'percent',
  charged_A: 'current',
} as const

export type FactName = keyof typeof unitOf
export type Unit = (typeof unitOf)[FactName]
type Facts = { readonly [K in FactName]?: number | undefined }

/** Facts, and the bounds that some limits come from. */
export interface Known {
  readonly situation: Situation
  readonly facts: Facts
  readonly bounds: Bounds | undefined
}

export function knownOf(told: Situation, planned: Planned): Known {
  const { cells_V = told.cells_V, when = told.when, set_A, cutoff_V: _, ...asPlanned } = planned
  const situation = { ...told, cells_V, when }
  const { pack, act, meter, current_A } = situation
  const bounds = pack && (act === 'charge' || act === 'board') ? boundsOf({ ...situation, pack }) : undefined
  const { wanted, carried = wanted, takes_s, energy_Wh } = planned
  const facts: Facts = {
    ...asPlanned,
    ...stateFacts(situation),
    ...chargeFacts(situation, bounds, planned),
    temperature_C: situation.temperature_C,
    labelRate_C: pack?.labelRate_C,
    dischargeRate_C: pack?.dischargeRate_C,
    ...boardFacts(situation),
    aboveStop_V: act === 'drain' ? aboveStop_V(situation) : undefined,
    drain_A: act === 'drain' ? (set_A ?? current_A) : undefined,
    takes_s: takes_s && toTheMinute(takes_s),
    missing: wanted === undefined || carried === undefined ? undefined : wanted - carried,
    energy_Wh: energy_Wh ?? (act === 'carry' && pack ? labelEnergy_Wh(pack) : undefined),
    got_V: meter?.measured_V,
    offBy_V: meter && Number(Math.abs(meter.measured_V - meter.shown_V).toFixed(6)),
  }
  return { situation, facts, bounds }
}

/** At a limit of hours no digit beyond what anybody reads may decide. */
const toTheMinute = (time_s: number): number => Math.round(time_s / 60) * 60

const restOf = (level: Level, pack: Pack, { house }: Situation): number => {
  const start = startOf(level, pack.chemistry, house)
  return start.kind === 'rest' ? start.perCell_V : restingVoltage(pack.chemistry, start.soc)
}

function aboveStop_V(situation: Situation): number | undefined {
  const { pack, from, cells_V, house } = situation
  if (!pack) return undefined
  const rest_V = cells_V ? Math.min(...cells_V) : from && restOf(from, pack, situation)
  return rest_V === undefined ? undefined : rest_V - sourceRestFloor_V(pack, house) / pack.series
}

/** Every pack of a board stands for itself: what holds of the worst holds of the board. */
function stateFacts(situation: Situation): Facts {
  const { act, pack, from, to, cells_V, apart_V, board } = situation
  if (!pack) return {}
  if (board) {
    const rests_V = boardRests_V(situation)
    return rests_V.length === 0 ? {} : { lowest_V: Math.min(...rests_V), highest_V: Math.max(...rests_V) }
  }
  // Who looks back at a charge tells where it ended as well as where it began.
  const told = [from, act === 'look' ? to : undefined].filter(level => level !== undefined)
  const rests_V = cells_V ?? told.map(level => restOf(level, pack, situation))
  if (rests_V.length === 0) return { spread_V: apart_V }
  const [lowest_V, highest_V] = [Math.min(...rests_V), Math.max(...rests_V)]
  return {
    lowest_V,
    highest_V,
    spread_V: cells_V ? Number((highest_V - lowest_V).toFixed(6)) : apart_V,
    besideFlat_V: cells_V && besideFlat_V(pack.chemistry, cells_V),
  }
}

function chargeFacts(
  { pack, from, to, house, charger, current_A: asked_A }: Situation,
  bounds: Bounds | undefined,
  { set_A, cutoff_V }: Planned,
): Facts {
  if (!pack || !bounds) return {}
  const { cutoff, input } = bounds
  const { chemistry } = pack
  const current_A = set_A ?? asked_A
  // Without a start the pack has landed: a goal below that is nothing to charge either.
  const start = startOf(from ?? { kind: 'named', name: 'empty' }, chemistry, house)
  const goal = goalOf(to ?? { kind: 'named', name: 'full' }, chemistry, house)
  return {
    toGo:
      goal.kind === 'soc'
        ? goal.soc - socOf(start, chemistry)
        : cutoff.perCell_V - (start.kind === 'rest' ? start.perCell_V : restingVoltage(chemistry, start.soc)),
    cutoff_V: cutoff_V ?? cutoff.asked_V,
    aboveWish_V: cutoff_V === undefined ? undefined : cutoff_V - cutoff.asked_V,
    cutoffMissed_V: charger?.cutoffs_V && cutoff.missed_V,
    current_A,
    rate_C: current_A === undefined ? undefined : Number((current_A / pack.capacity_Ah).toPrecision(12)),
    series: pack.series,
    smallestStep_A: smallestStep_A(charger?.currents ?? anyCurrent),
    outsideInput_V: input?.outside_V,
    aboveFloor_V: input?.aboveFloor_V,
  }
}

/** Of the packs whose chemistry the limits of the board are taken from: the volts of others compare with nothing. */
const boardRests_V = (situation: Situation): number[] =>
  (situation.board ?? []).flatMap(({ pack, from }) =>
    from && pack.chemistry === situation.pack?.chemistry ? [restOf(from, pack, situation)] : [],
  )

function boardFacts(situation: Situation): Facts {
  const { act, board = [], pack } = situation
  if (act !== 'board') return {}
  const rests_V = boardRests_V(situation)
  const socs = pack ? rests_V.map(rest_V => socAt(pack.chemistry, rest_V)) : []
  const unknown = board.filter(one => one.from === undefined && (one.dangers ?? []).length === 0)
  const highest = (rates_C: readonly (number | undefined)[]) =>
    rates_C.reduce((most_C, rate_C) => Math.max(most_C ?? 0, rate_C ?? 0) || undefined, undefined)
  const apart = (values: readonly number[]) =>
    values.length < 2 ? undefined : Number((Math.max(...values) - Math.min(...values)).toFixed(6))
  return {
    labelRate_C: highest(board.map(one => one.pack.labelRate_C)),
    dischargeRate_C: highest(board.map(one => one.pack.dischargeRate_C)),
    boardPacks: board.length,
    // One alone is not measured against others.
    boardUnknown: board.length > 1 ? unknown.length : 0,
    boardHurt: board.filter(one => (one.dangers ?? []).length > 0).length,
    boardSeries: new Set(board.map(one => one.pack.series)).size,
    boardChemistries: new Set(board.map(one => one.pack.chemistry.name)).size,
    apart_V: apart(rests_V),
    apartCharge: apart(socs),
  }
}

/** What a pack may give for long, in A: more only where its label has a discharge rate for it. */
export const mostDrain_A = ({ capacity_Ah, dischargeRate_C = 0 }: Pack): number =>
  Math.max(batterySourceRate_C.value, longDrainShare.value * dischargeRate_C) * capacity_Ah
