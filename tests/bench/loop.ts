// How long the thread of the connections is held up while much is asked at once, with workers and without.

import { monitorEventLoopDelay } from 'node:perf_hooks'
import { setTimeout as pause } from 'node:timers/promises'
import { commands } from '../../commands/index.ts'
import { createAssistant } from '../../src/assistant/running/assistant.ts'
import type { Chart } from '../../src/charts/chart.ts'
import { drawPng } from '../../src/charts/drawing/draw.ts'
import { openWorkers } from '../../src/program/workers/workers.ts'
import { roomOccasion } from '../../src/room/occasion.ts'
import { openTestMemory } from '../support/test-memory.ts'
import type { Row } from './benches.ts'
import { openDueLoads } from './loop-due.ts'

const resolution_ms = 5

interface Delay {
  readonly p99_ms: number
  readonly most_ms: number
  readonly took_s: number
}

/** The longest delay of the loop while `work` is done, and 99 of 100. */
async function delayed(work: () => Promise<unknown>): Promise<Delay> {
  const delay = monitorEventLoopDelay({ resolution: resolution_ms })
  delay.enable()
  // One reading before and one after, so that a loop that stands still throughout is seen.
  await pause(4 * resolution_ms)
  const start = performance.now()
  await work()
  const took_s = (performance.now() - start) / 1000
  await pause(4 * resolution_ms)
  delay.disable()
  return { p99_ms: delay.percentile(99) / 1e6, most_ms: delay.max / 1e6, took_s }
}

const rowOf = (name: string, { p99_ms, most_ms, took_s }: Delay, alone?: Delay): Row => ({
  name: `${name}: longest delay of the loop`,
  value: `${most_ms.toFixed(0)} ms`,
  ratio: `99 of 100: ${p99_ms.toFixed(0)} ms, in ${took_s.toFixed(1)} s${alone ? `; without workers ${alone.most_ms.toFixed(0)} ms` : ''}`,
})

const packsOf = (kinds: number): string =>
  Array.from({ length: kinds }, (_, at) => `3S ${700 + 37 * at} LiHV at ${3.5 + at / 100}V per cell`).join('; ')
const planOf = (at: number): string =>
  `plan packs: ${packsOf(8 + (at % 5))} chargers: 0.1-5A by 0.1; 0.5/1/2A; 0.3/0.8/1.5/3A sources: car 20A; 4S 5000 Li-ion`
const asked = (by: number) => ({ ...roomOccasion(), asker: { id: `member ${by}`, name: '', moderates: false } })
const all = (count: number, one: (at: number) => Promise<unknown>) =>
  Promise.allSettled(Array.from({ length: count }, (_, at) => one(at)))

export default async function bench(): Promise<Row[]> {
  const memory = await openTestMemory()
  const workers = openWorkers()
  const parts = { commands, memory, newSeed: () => 1, onFault: (fault: unknown) => console.error(fault) }
  const [there, here] = [createAssistant({ ...parts, plan: workers.plan }), createAssistant(parts)]
  const { charts } = await there.answer(planOf(0), asked(0))
  const chart = charts[0] as Chart
  await Promise.all([workers.draw(chart, { club: '', member: '' }), drawPng(chart)])
  const loads = [
    [
      '40 plans of 40 members',
      () => all(40, at => there.answer(planOf(at), asked(at))),
      () => all(40, at => here.answer(planOf(at), asked(at))),
    ],
    ['200 plans of one member', () => all(200, at => there.answer(planOf(at), asked(0))), undefined],
    [
      '200 pictures of 40 members',
      () => all(200, at => workers.draw(chart, { club: '', member: `${at % 40}` })),
      () => all(200, () => drawPng(chart)),
    ],
  ] as const
  const rows: Row[] = []
  for (const [name, withWorkers, without] of loads) {
    const delay = await delayed(withWorkers)
    rows.push(rowOf(name, delay, without && (await delayed(without))))
  }
  await workers.close()
  await memory.close()
  const due = await openDueLoads()
  for (const [name, work] of due.loads) rows.push(rowOf(name, await delayed(work)))
  await due.close()
  return rows
}
