// Prints how near the model comes to measured charges, by family: npm run check:charges.

import {
  type Figures,
  familiesIn,
  figuresOf,
  isHeldOut,
  restedRuns,
  type Told,
  timesBy,
  timesByLog,
} from './figures.ts'
import { chargeRuns } from './runs.ts'

const percent = (share: number) => `${(100 * share).toFixed(1)} %`.padStart(8)

function line(name: string, { runs, median, bias, most, worst, inside, halfWidth }: Figures): string {
  const figures = [median, bias, most, worst, inside, halfWidth].map(percent).join(' ')
  return `${name.padEnd(28)} ${String(runs).padStart(4)} ${figures}`
}

function print(title: string, times: readonly Told[]): void {
  console.log(`\n${title.padEnd(28)} runs ${'median     bias     95 %    worst   inside   half'.padStart(8)}`)
  for (const [family, those] of familiesIn(times))
    console.log(line(`${family}${isHeldOut(family) ? ' (held out)' : ''}`, figuresOf(those)))
  console.log(line('all', figuresOf(times)))
  const kept = times.filter(one => isHeldOut(one.family))
  if (kept.length > 0) console.log(line('all held out', figuresOf(kept)))
}

const ways = [
  ['label, capacity and a reading', timesBy(chargeRuns, 'inputs')],
  ['label alone', timesBy(chargeRuns, 'label')],
  ['label, from resting volts', timesBy(restedRuns, 'rest')],
  ['its own log of 1 and more', timesByLog(chargeRuns, 1)],
  ['its own log of 3 and more', timesByLog(chargeRuns, 3)],
] as const

for (const [way, { total, cutoff }] of ways) {
  print(`${way}: total`, total)
  print(`${way}: to cutoff`, cutoff)
}
