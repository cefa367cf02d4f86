// Integrates a small system of equations by the Gragg-Bulirsch-Stoer method of the odex library.

import { createRequire } from 'node:module'

interface Solver {
  relativeTolerance: number
  absoluteTolerance: number
  maxSteps: number
  solve(
    derivative: (t: number, y: number[]) => number[],
    from: number,
    start: number[],
    to: number,
  ): { y: number[] }
}

// The package ships its TypeScript source, which this project's compiler options refuse, so it is not imported as such.
const { Solver } = createRequire(import.meta.url)('odex') as { Solver: new (size: number) => Solver }

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
