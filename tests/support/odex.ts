// The Gragg-Bulirsch-Stoer solver of the odex library, with the types that the tests use.

import { createRequire } from 'node:module'

interface OdexSolver {
  denseOutput: boolean
  relativeTolerance: number
  absoluteTolerance: number
  maxSteps: number
  solve(
    derivative: (t: number, y: number[]) => number[],
    from: number,
    start: number[],
    to: number,
    onStep?: (
      n: number,
      before: number,
      after: number,
      y: number[],
      dense: (i: number, t: number) => number,
    ) => boolean | undefined,
  ): { y: number[] }
}

// The package ships its TypeScript source, which this project's compiler options refuse, so it is not imported as such.
export const { Solver } = createRequire(import.meta.url)('odex') as { Solver: new (size: number) => OdexSolver }
