// Prints the fit of the resistance model on the measured charges: run it after a change to the model or to the runs.

import { chargeRuns } from './charge-runs.ts'
import { bestFactor, costOf, errorsOf, fittedRuns, leaveOneOut } from './resistance-fit.ts'

const percent = (error: number) => `${(100 * error).toFixed(1)} %`

console.log(`Best factor on the model's own ratio of whole resistance to reading: ${bestFactor().toFixed(3)}`)

console.log('\nErrors of the times to cutoff and to the end')
for (const run of chargeRuns) console.log(run.id, errorsOf(run).map(percent).join(', '))

console.log('\nErrors on a dataset left out of the fit')
for (const { dataset, factor, errors } of leaveOneOut())
  console.log(dataset, `factor ${factor.toFixed(3)}:`, errors.map(percent).join(', '))

console.log('\nOther sharings of the resistance, each with its own best factor')
for (const series of [0.2, 0.3, 0.4, 0.5]) {
  for (const fast of [0.1, 0.2, 0.3]) {
    for (const slow_s of [150, 200, 300, 600]) {
      const sharing = { series, fast, slow_s }
      const factor = bestFactor(fittedRuns, sharing)
      const worst = Math.max(...fittedRuns.flatMap(run => errorsOf(run, factor, sharing)).map(Math.abs))
      const cost = (1e4 * costOf(fittedRuns, factor, sharing)).toFixed(1)
      console.log(`series ${series}, fast ${fast}, slow ${slow_s} s: cost ${cost}, worst ${percent(worst)}`)
    }
  }
}
