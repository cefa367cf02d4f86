// Simulates one charge of one pack: precharge, constant current, constant power, constant voltage.

import { once } from '../numbers/once.ts'
import type { Chemistry } from '../things/chemistry.ts'
import { belowEmpty, interpolate } from '../things/curve.ts'
import type { State } from '../things/level.ts'
import { type Cell, cellOf, cellWith, type Moment, restedAt, scaleResistance, terminalVoltage } from './cell.ts'
import type { Charge, ChargeRequest, Stage, StageKind } from './charge.ts'
import { checkRequest } from './check-request.ts'
import { bookStage, type Entry } from './ledger.ts'
import { type Law, march } from './march.ts'
import { resistanceFactor } from './resistance.ts'
import { stepsOf, termsOf } from './terms.ts'
import { typicalTraits } from './traits.ts'

const usualTemperature_C = 25

/**
 * Simulates a charge and returns its stages, totals and curve.
 *
 * A charge to a voltage ends when the current at the cutoff has fallen to `termination_A`; without one, to
 * a tenth of the set current, as most field chargers do (common practice; among the settings of the
 * Microchip MCP73831/2, DS20001984). A tenth of the capacity instead would end a slow charge before its
 * taper had begun. A charge to a state of charge stops there, or at the end of its taper where the cutoff
 * does not reach it. One by a timer goes on to that time, however small the current.
 *
 * The cell keeps one temperature, by `warmed_K` above the one told. Whether a charge is safe is not asked here.
 * @throws RangeError on a number that is not finite, or not above zero where it must be
 */
export function simulateCharge(request: ChargeRequest, warmed_K = 0): Charge {
  checkRequest(request)
  return chargeCell(request, requestedCell(request, warmed_K))
}

/** The most likely cell of a request: by its own charges, else by its measured capacity, else by its label. */
export function requestedCell(
  { pack, measuredCapacity_Ah, temperature_C, learned }: ChargeRequest,
  warmed_K = 0,
): Cell {
  const told_C = temperature_C ?? usualTemperature_C
  const factor = resistanceFactor(told_C + warmed_K) / resistanceFactor(told_C)
  if (!learned) return scaleResistance(cellOf(pack, told_C, measuredCapacity_Ah), factor)
  const { share, ...parts } = typicalTraits(learned.traits)
  return scaleResistance(cellWith(pack, told_C, { ...parts, capacity_Ah: share * pack.capacity_Ah }), factor)
}

/** Simulates a checked request on a cell of the caller's choice. */
export function chargeCell(request: ChargeRequest, cell: Cell): Charge {
  const { pack } = request
  const startSoc = socOf(pack.chemistry, request.from)
  let at = restedAt(startSoc)
  const entries: Entry[] = []
  for (const { kind, law, isOver } of stagesOf(request, cell)) {
    const states = march(cell, law, at, isOver)
    if (states.length === 1) continue
    entries.push(bookStage(kind, cell, pack.series, states))
    at = states.at(-1) as Moment
  }
  return total(entries, pack.series, startSoc, at.soc)
}

interface PlannedStage {
  readonly kind: Exclude<StageKind, 'balancing'>
  readonly law: Law
  readonly isOver: (at: Moment) => number
}

function stagesOf(request: ChargeRequest, cell: Cell): PlannedStage[] {
  const terms = termsOf(request)
  const { current_A, cutoff_V, precharge_V, precharge_A, power_W, termination_A, end_s, endSoc } = terms
  const above = (volts: number) => (at: Moment) => terminalVoltage(cell, at) - volts
  const hold: PlannedStage = {
    kind: 'constant voltage',
    law: { hold: 'voltage', perCell_V: cutoff_V, limit_A: current_A },
    isOver: at => termination_A - at.current_A,
  }
  const steps = stepsOf(terms).map(
    (limit_A): PlannedStage => ({ kind: 'steps down', law: { hold: 'current', limit_A }, isOver: above(cutoff_V) }),
  )
  const planned: PlannedStage[] = [
    { kind: 'precharge', law: { hold: 'current', limit_A: precharge_A }, isOver: above(precharge_V) },
    {
      kind: 'constant current',
      law: { hold: 'current', limit_A: current_A },
      isOver: above(Math.min(cutoff_V, power_W / current_A)),
    },
    { kind: 'constant power', law: { hold: 'power', power_W, limit_A: current_A }, isOver: above(cutoff_V) },
    ...(terms.stepsDown ? steps : [hold]),
  ]
  const possible = planned.filter(stage => stage.law.hold !== 'power' || Number.isFinite(power_W))
  return possible.map(stage => ({
    ...stage,
    isOver: at => Math.max(stage.isOver(at), at.soc - endSoc, at.time_s - end_s),
  }))
}

/** State of charge at the start; a little below 0 for a cell that rests below the curve. */
function socOf(chemistry: Chemistry, from: State): number {
  if (from.kind === 'soc') return from.soc
  const { soc, perCell_V } = belowEmpty(chemistry)
  return Math.min(1, interpolate(perCell_V, soc, from.perCell_V))
}

const afterCutoff: ReadonlySet<StageKind> = new Set(['constant voltage', 'steps down'])

/** Steps of one kind are one stage. */
const joined = (stages: readonly Stage[]): Stage[] =>
  [...Map.groupBy(stages, ({ kind }) => kind).values()].map(of =>
    of.reduce((one, other) => ({
      kind: one.kind,
      duration_s: one.duration_s + other.duration_s,
      charge_Ah: one.charge_Ah + other.charge_Ah,
      energy_Wh: one.energy_Wh + other.energy_Wh,
    })),
  )

function total(entries: readonly Entry[], series: number, startSoc: number, endSoc: number): Charge {
  const stages = joined(entries.map(entry => entry.stage))
  const curve = once(() => entries.flatMap(entry => entry.points))
  const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0)
  return {
    stages,
    duration_s: sum(stages.map(stage => stage.duration_s)),
    timeToCutoff_s: sum(stages.filter(({ kind }) => !afterCutoff.has(kind)).map(stage => stage.duration_s)),
    charge_Ah: sum(stages.map(stage => stage.charge_Ah)),
    get energy_Wh() {
      return sum(stages.map(stage => stage.energy_Wh))
    },
    get heat_Wh() {
      return sum(entries.map(entry => entry.heat_Wh))
    },
    get peakPower_W() {
      return curve().reduce((peak, at) => Math.max(peak, at.perCell_V * at.current_A * series), 0)
    },
    startSoc,
    endSoc,
    get curve() {
      return curve()
    },
  }
}
