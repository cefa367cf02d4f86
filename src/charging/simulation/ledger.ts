// Books what one stage of a charge took: time, charge, energy at the terminals and heat.

import { once } from '../numbers/once.ts'
import { integrateCurve } from '../things/curve.ts'
import { advance, type Cell, type Moment, openCircuit_V, terminalVoltage } from './cell.ts'
import type { CurvePoint, Stage, StageKind } from './charge.ts'

/** What takes long to work out, and is often not asked for, is so only where it is. */
export interface Entry {
  readonly stage: Stage
  readonly heat_Wh: number
  readonly points: readonly CurvePoint[]
}

/** Books the states of one stage of a pack with `series` cells in series. */
export function bookStage(kind: StageKind, cell: Cell, series: number, states: readonly Moment[]): Entry {
  const first = states[0] as Moment
  const last = states.at(-1) as Moment
  const energies = once(() => energiesOf(cell, series, states))
  return {
    stage: {
      kind,
      duration_s: last.time_s - first.time_s,
      charge_Ah: (last.soc - first.soc) * cell.capacity_Ah,
      get energy_Wh() {
        return energies().energy_Wh
      },
    },
    get heat_Wh() {
      return energies().heat_Wh
    },
    get points() {
      return states.map(at => ({
        time_s: at.time_s,
        perCell_V: terminalVoltage(cell, at),
        current_A: at.current_A,
        soc: at.soc,
      }))
    },
  }
}

/** Heat counts too what the surface is still ahead, which turns to heat as the pack rests. */
function energiesOf(cell: Cell, series: number, states: readonly Moment[]) {
  let energy_Wh = 0
  let heat_Wh = 0
  for (let i = 1; i < states.length; i++) {
    const from = states[i - 1] as Moment
    const to = states[i] as Moment
    const lost_Wh = (lossIn(cell, from, to) * series) / 3600
    heat_Wh += lost_Wh
    energy_Wh += lost_Wh + integrateCurve(cell.curve, from.soc, to.soc) * cell.capacity_Ah * series
  }
  return { energy_Wh, heat_Wh }
}

/** Energy lost in one cell over one step, in J: by Simpson's rule. */
function lossIn(cell: Cell, from: Moment, to: Moment): number {
  const step_s = to.time_s - from.time_s
  const middle = advance(cell, from, step_s / 2, (from.current_A + to.current_A) / 2)
  const lost_W = (at: Moment) => at.current_A * (terminalVoltage(cell, at) - openCircuit_V(cell, at.soc))
  return (step_s * (lost_W(from) + 4 * lost_W(middle) + lost_W(to))) / 6
}
