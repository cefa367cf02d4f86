// The equations of a charge written out anew and solved by the Gragg-Bulirsch-Stoer method of the odex library.

import type { Cell } from '../../src/charging/simulation/cell.ts'
import { Solver } from '../support/odex.ts'

export interface OdeCharge {
  readonly timeToCutoff_s: number
  readonly duration_s: number
  readonly energy_Wh: number
}

export interface OdeRequest {
  readonly cell: Cell
  readonly startSoc: number
  readonly current_A: number
  readonly cutoff_V: number
  readonly termination_A: number
  /** Most power into the one cell, in W. */
  readonly power_W?: number
  /** At the cutoff it halves its current, down to a tenth of the set one, and holds no volts. */
  readonly stepsDown?: boolean
}

/** Charges one cell: y is charge in Ah, by how much the surface is ahead in two parts, and energy in Wh. */
export function odeCharge(request: OdeRequest): OdeCharge {
  const { cell, startSoc, current_A, cutoff_V, termination_A, power_W = Number.POSITIVE_INFINITY } = request
  const { capacity_Ah, series_ohm, diffusion_s } = cell
  const inner = (y: number[]) => curveAt(cell, (y[0] as number) / capacity_Ah + (y[1] as number) + (y[2] as number))
  const heldByVoltage = (y: number[]) => (cutoff_V - inner(y)) / series_ohm
  // Of P = I (V + I R), without the cancellation of the school formula.
  const heldByPower = (y: number[]) => {
    const volts = inner(y)
    return (2 * power_W) / (volts + Math.sqrt(volts * volts + 4 * series_ohm * power_W))
  }
  const atTerminals = (amps: number, y: number[]) => inner(y) + amps * series_ohm
  const derivative = (current: (y: number[]) => number) => (_: number, y: number[]) => {
    const amps = current(y)
    return [
      amps / 3600,
      followed(amps, y[1] as number, 0.505, 0.13 * diffusion_s),
      followed(amps, y[2] as number, 0.495, 0.743 * diffusion_s),
      (amps * atTerminals(amps, y)) / 3600,
    ]
  }
  const followed = (amps: number, ahead: number, share: number, constant_s: number) =>
    ((share * amps * diffusion_s) / 3600 / capacity_Ah - ahead) / constant_s
  const start = [startSoc * capacity_Ah, 0, 0, 0]
  const constant_V = Math.min(cutoff_V, power_W / current_A)
  const current = solveUntil(
    derivative(() => current_A),
    start,
    y => atTerminals(current_A, y) - constant_V,
  )
  const power =
    constant_V === cutoff_V
      ? { time_s: 0, y: current.y }
      : solveUntil(derivative(heldByPower), current.y, y => atTerminals(heldByPower(y), y) - cutoff_V)
  let [end, ended_s] = [power, 0]
  if (request.stepsDown) {
    for (let amps = Math.min(current_A, power_W / cutoff_V) / 2; amps >= current_A / 10; amps /= 2) {
      end = solveUntil(
        derivative(() => amps),
        end.y,
        y => atTerminals(amps, y) - cutoff_V,
      )
      ended_s += end.time_s
    }
  } else {
    end = solveUntil(derivative(heldByVoltage), power.y, y => termination_A - heldByVoltage(y))
    ended_s = end.time_s
  }
  return {
    timeToCutoff_s: current.time_s + power.time_s,
    duration_s: current.time_s + power.time_s + ended_s,
    energy_Wh: end.y[3] as number,
  }
}

function curveAt({ curve: { soc, perCell_V } }: Cell, at: number): number {
  const found = soc.findIndex(point => point > at)
  const right = found < 0 ? soc.length - 1 : Math.max(1, found)
  const [x0, x1] = [soc[right - 1] as number, soc[right] as number]
  const [y0, y1] = [perCell_V[right - 1] as number, perCell_V[right] as number]
  return y0 + ((y1 - y0) * (at - x0)) / (x1 - x0)
}

/** Solves from time 0 until `isOver` is no longer negative; the moment itself by bisection of the dense output. */
function solveUntil(
  derivative: (t: number, y: number[]) => number[],
  start: number[],
  isOver: (y: number[]) => number,
): { time_s: number; y: number[] } {
  if (isOver(start) >= 0) return { time_s: 0, y: start }
  let found: { time_s: number; y: number[] } | undefined
  const solver = new Solver(start.length)
  solver.denseOutput = true
  solver.relativeTolerance = solver.absoluteTolerance = 1e-9
  solver.maxSteps = 1e6
  solver.solve(derivative, 0, start, 1e7, (_, before, after, y, dense) => {
    if (isOver(y) < 0) return undefined
    let [early, late] = [before, after]
    const at = (time: number) => start.map((_, i) => dense(i, time))
    while (late - early > 1e-6) {
      const middle = (early + late) / 2
      if (isOver(at(middle)) >= 0) late = middle
      else early = middle
    }
    found = { time_s: late, y: at(late) }
    return false
  })
  if (!found) throw new Error('the condition was never met')
  return found
}
