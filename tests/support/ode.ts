// Integrates a small system of equations by the Gragg-Bulirsch-Stoer method of the odex library.

import { Solver } from './odex.ts'

/** The state at `to`. */
export function integrateOde(
  derivative: (t: number, y: number[]) => number[],
  start: readonly number[],
  to: number,
): number[] {
  const solver = new Solver(start.length)
  solver.relativeTolerance = 1e-8
  solver.absoluteTolerance = 1e-10
  solver.maxSteps = 100_000
  return solver.solve(derivative, 0, [...start], to).y
}
