// Discord's interactions by HTTP: the program as it is run, beside the least that an endpoint can do, in turn, so that a
// drift of the machine falls on both. Questions are drawn from 10,000 different ones, each by another member.

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

async function perSecond({ port }: Endpoint, requests: readonly Buffer[]): Promise<number> {
  const start = performance.now()
  const answers = await pump(port, requests, atOnce)
  return (allWell(answers).length * 1000) / (performance.now() - start)
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
    const measured: Record<'constant' | 'fresh' | 'repeated', number>[] = []
    for (let round = 0; round < rounds; round++) {
      const first = round * eachRound
      measured.push({
        constant: await perSecond(least, from(first)),
        fresh: await perSecond(ours, from(first)),
        repeated: await perSecond(ours, again(first)),
      })
    }
    const middle = (of: (one: (typeof measured)[0]) => number) => percentile(measured.map(of), 50)
    const highest = middle(({ fresh }) => fresh)
    const rows = (['fresh', 'repeated'] as const).map(kind => ({
      name: `"what current", ${kind === 'fresh' ? 'new' : 'asked before'}, ${atOnce} at once`,
      value: `${middle(one => one[kind]).toFixed(0)} a second`,
      ratio: `${middle(one => one[kind] / one.constant).toFixed(2)} of a constant reply, ${middle(({ constant }) => constant).toFixed(0)}`,
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
