// Fits, on the measured charges, how much more resistance a long charge meets than a short reading shows.

import type { Cell } from '../../src/charging/simulation/cell.ts'
import type { ChargeRequest } from '../../src/charging/simulation/charge.ts'
import { chargeCell, requestedCell } from '../../src/charging/simulation/simulate.ts'
import { socAt } from '../../src/charging/things/curve.ts'
import { type ChargeRun, chargeRuns, type DatasetName, datasets } from './charge-runs.ts'

/**
 * The request for a measured run with what was measured of its cell. A run that ends below the full voltage
 * has its capacity measured up to there; the rest up to full comes from the chemistry's curve.
 */
export function requestOf(run: ChargeRun, reading_ohm = run.reading_ohm): ChargeRequest {
  const { chemistry } = datasets[run.dataset]
  const share = socAt(chemistry, run.cutoff_V)
  return {
    pack: {
      chemistry,
      series: 1,
      parallel: 1,
      capacity_Ah: run.nameplate_Ah,
      ...(reading_ohm !== undefined && { cellResistance_ohm: reading_ohm }),
    },
    measuredCapacity_Ah: run.measured_Ah / share,
    current_A: run.current_A,
    from: { kind: 'soc', soc: run.start * share },
    target: { kind: 'voltage', perCell_V: run.cutoff_V },
    termination_A: run.termination_A,
  }
}

/** How the whole resistance is shared out, and the time constant of the slow part. */
export interface Sharing {
  readonly series: number
  readonly fast: number
  readonly slow_s: number
}

/** Relative errors of the two times of a run. */
export function errorsOf(run: ChargeRun, readingFactor = 1, sharing?: Sharing): [number, number] {
  const request = requestOf(run, run.reading_ohm && run.reading_ohm * readingFactor)
  const cell = requestedCell(request)
  const charge = chargeCell(request, sharing ? sharedAnew(cell, sharing) : cell)
  return [charge.timeToCutoff_s / run.timeToCutoff_s - 1, charge.duration_s / run.timeToTermination_s - 1]
}

function sharedAnew(cell: Cell, { series, fast, slow_s }: Sharing): Cell {
  const whole_ohm = cell.series_ohm + cell.fast.resistance_ohm + cell.slow.resistance_ohm
  return {
    ...cell,
    series_ohm: series * whole_ohm,
    fast: { ...cell.fast, resistance_ohm: fast * whole_ohm },
    slow: { resistance_ohm: (1 - series - fast) * whole_ohm, timeConstant_s: slow_s },
  }
}

/** Every run with a reading, each dataset weighing the same. */
export const fittedRuns = chargeRuns.filter(run => run.reading_ohm !== undefined)

/** Sum of the squared errors. */
export function costOf(runs: readonly ChargeRun[], readingFactor: number, sharing?: Sharing): number {
  const count = (dataset: DatasetName) => runs.filter(run => run.dataset === dataset).length
  return runs.reduce((sum, run) => {
    const [cutoff, termination] = errorsOf(run, readingFactor, sharing)
    return sum + (cutoff ** 2 + termination ** 2) / count(run.dataset)
  }, 0)
}

/** The factor on the model's own that suits `runs` best, searched from 0.5 to 2. */
export function bestFactor(runs: readonly ChargeRun[] = fittedRuns, sharing?: Sharing): number {
  let low = 0.5
  let high = 2
  while (high - low > 1e-3) {
    const third = (high - low) / 3
    if (costOf(runs, low + third, sharing) < costOf(runs, high - third, sharing)) high -= third
    else low += third
  }
  return (low + high) / 2
}

/** The factor fitted without each dataset in turn, and the errors it then gives on the one left out. */
export function leaveOneOut(): { dataset: DatasetName; factor: number; errors: number[] }[] {
  const names = [...new Set(fittedRuns.map(run => run.dataset))]
  return names.map(dataset => {
    const factor = bestFactor(fittedRuns.filter(run => run.dataset !== dataset))
    const left = fittedRuns.filter(run => run.dataset === dataset)
    return { dataset, factor, errors: left.flatMap(run => errorsOf(run, factor)) }
  })
}
