// Fits, on the measured charges, how much more resistance a long charge meets than a short reading shows.

import type { ChargeRequest } from '../src/charging/charge.ts'
import { chemistries } from '../src/charging/chemistries.ts'
import { socAt } from '../src/charging/curve.ts'
import { simulateCharge } from '../src/charging/simulate.ts'
import { type ChargeRun, chargeRuns, type DatasetName, datasets } from '../tests/outside/charge-runs.ts'

/**
 * The request for a measured run with what was measured of its cell. A run that ends below the full voltage
 * has its capacity measured up to there; the rest up to full comes from the chemistry's curve.
 */
export function requestOf(run: ChargeRun, reading_ohm = run.reading_ohm): ChargeRequest {
  const { chemistry } = datasets[run.dataset]
  const share = socAt(chemistries[chemistry], run.cutoff_V)
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

/** Relative errors of the two times of a run. */
export function errorsOf(run: ChargeRun, readingFactor = 1): [toCutoff: number, toTermination: number] {
  const reading_ohm = run.reading_ohm && run.reading_ohm * readingFactor
  const charge = simulateCharge(requestOf(run, reading_ohm))
  return [charge.timeToCutoff_s / run.timeToCutoff_s - 1, charge.duration_s / run.timeToTermination_s - 1]
}

/** Every run with a reading, each dataset weighing the same. */
const fitted = chargeRuns.filter(run => run.reading_ohm !== undefined)

function cost(runs: readonly ChargeRun[], readingFactor: number): number {
  const count = (dataset: DatasetName) => runs.filter(run => run.dataset === dataset).length
  return runs.reduce((sum, run) => {
    const [cutoff, termination] = errorsOf(run, readingFactor)
    return sum + (cutoff ** 2 + termination ** 2) / count(run.dataset)
  }, 0)
}

/** The factor on the model's own that suits `runs` best, searched from 0.5 to 2. */
export function bestFactor(runs: readonly ChargeRun[] = fitted): number {
  let low = 0.5
  let high = 2
  while (high - low > 1e-3) {
    const third = (high - low) / 3
    if (cost(runs, low + third) < cost(runs, high - third)) high -= third
    else low += third
  }
  return (low + high) / 2
}

/** The factor fitted without each dataset in turn, and the errors it then gives on the one left out. */
export function leaveOneOut(): { dataset: DatasetName; factor: number; errors: number[] }[] {
  const names = [...new Set(fitted.map(run => run.dataset))]
  return names.map(dataset => {
    const factor = bestFactor(fitted.filter(run => run.dataset !== dataset))
    const left = fitted.filter(run => run.dataset === dataset)
    return { dataset, factor, errors: left.flatMap(run => errorsOf(run, factor)) }
  })
}

const percent = (error: number) => `${(100 * error).toFixed(1)} %`

if (import.meta.main) {
  console.log(`best factor on the model's own: ${bestFactor().toFixed(3)}`)
  for (const run of chargeRuns) console.log(run.id, errorsOf(run).map(percent).join(', '))
  for (const { dataset, factor, errors } of leaveOneOut())
    console.log(`without ${dataset}: ${factor.toFixed(3)}; on it ${errors.map(percent).join(', ')}`)
}
