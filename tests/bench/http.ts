// Discord's interactions by HTTP: the program as it is run, beside the least that an endpoint can do, in turn, so that a
// drift of the machine falls on both. Questions are drawn from 10,000 different ones, each by another member. What the thread
// costs that takes requests is read from Linux: on a machine with other work it is steadier than the rate.

import { readFileSync } from 'node:fs'
import { asksCurrent, differentQuestions, type Endpoint, startEndpoints } from '../support/load/endpoints.ts'
import { type Answered, paced, pump } from '../support/load/requests.ts'
import type { Row } from './benches.ts'
import { percentile } from './timing.ts'

const rounds = 4
const eachRound = 1500
const atOnce = 16
const pacedFor_s = 5

let member = 0
const drawn = (numbers: readonly number[]) => numbers.map(number => asksCurrent(number % differentQuestions, member++))
const from = (first: number, count = eachRound) => drawn(Array.from({ length: count }, (_, at) => first + at))
/** Some of those from `first` on, in another order. */
const again = (first: number, count = eachRound) =>
  drawn(Array.from({ length: count }, (_, at) => first + ((at * 7919) % eachRound)))

interface Speed {
  readonly perSecond: number
  /** Of its main thread, for each request. */
  readonly cpu_us: number
}

async function speedOf({ port, program }: Endpoint, requests: readonly Buffer[]): Promise<Speed> {
  const { pid } = program.process
  // https://docs.kernel.org/scheduler/sched-stats.html#proc-pid-schedstat
  const spent_us = () => Number(readFileSync(`/proc/${pid}/task/${pid}/schedstat`, 'utf8').split(' ')[0]) / 1000
  const [before_us, start] = [spent_us(), performance.now()]
  const { length } = allWell(await pump(port, requests, atOnce))
  const took_ms = performance.now() - start
  return { perSecond: (length * 1000) / took_ms, cpu_us: (spent_us() - before_us) / length }
}

function allWell(answers: readonly Answered[]): readonly Answered[] {
  const wrong = answers.find(({ status }) => status !== 200)
  if (wrong) throw new Error(`status ${wrong.status}: ${wrong.body}`)
  return answers
}

export default async function http(): Promise<Row[]> {
  const { ours, least, close } = await startEndpoints()
  try {
    for (const endpoint of [ours, least]) await pump(endpoint.port, from(8000, 1000), atOnce)
    const measured: Record<'constant' | 'fresh' | 'repeated', Speed>[] = []
    for (let round = 0; round < rounds; round++) {
      const first = round * eachRound
      measured.push({
        constant: await speedOf(least, from(first)),
        fresh: await speedOf(ours, from(first)),
        repeated: await speedOf(ours, again(first)),
      })
    }
    const middle = (of: (one: (typeof measured)[0]) => number) => percentile(measured.map(of), 50)
    const highest = middle(({ fresh }) => fresh.perSecond)
    const rows = (['fresh', 'repeated'] as const).map(kind => ({
      name: `"what current", ${kind === 'fresh' ? 'new' : 'asked before'}, ${atOnce} at once`,
      value: `${middle(one => one[kind].perSecond).toFixed(0)} a second`,
      ratio: `${middle(one => one[kind].perSecond / one.constant.perSecond).toFixed(2)} of a constant reply; ${middle(one => one.constant.cpu_us / one[kind].cpu_us).toFixed(2)} by its thread, ${middle(one => one.constant.cpu_us).toFixed(0)} / ${middle(one => one[kind].cpu_us).toFixed(0)} µs`,
    }))
    const pace = Math.floor(0.8 * highest)
    const answers = await paced(ours.port, from(rounds * eachRound, pace * pacedFor_s), pace, 4 * atOnce)
    const took_ms = allWell(answers).map(({ took_ms }) => took_ms)
    return [
      ...rows,
      {
        name: 'new ones at 80 % of that load, p99',
        value: `${percentile(took_ms, 99).toFixed(1)} ms`,
        ratio: `median ${percentile(took_ms, 50).toFixed(1)} ms, at ${pace} a second`,
      },
    ]
  } finally {
    await close()
  }
}
