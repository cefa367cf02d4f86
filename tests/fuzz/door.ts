// A door is tried for its share of the time, with the seeds that once found a fault first. A new one is written down.

import { readFileSync, writeFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import fc from 'fast-check'
import { expect } from 'vitest'

const doors = ['text', 'slash', 'http', 'matrix', 'csv', 'config', 'restore', 'rows'] as const
type Door = (typeof doors)[number]

const share_ms = (Number(process.env.FUZZ_S ?? 600) * 1000 * availableParallelism()) / doors.length
const file = new URL('seeds.json', import.meta.url)
const kept = JSON.parse(readFileSync(file, 'utf8')) as Record<Door, number[]>
/** A seed that found a fault is tried again with so many cases. */
const again = 200

/** Fails with the shortest case that fails, and the seed that leads to it. */
export async function tryDoor<T>(door: Door, some: fc.Arbitrary<T>, check: (one: T) => Promise<void>): Promise<void> {
  const property = fc.asyncProperty(some, check)
  for (const seed of kept[door]) await fc.assert(property, { seed, numRuns: again })
  const until_ms = performance.now() + share_ms
  const first = Number(process.env.FUZZ_SEED ?? Math.floor(Math.random() * 2 ** 31))
  let cases = 0
  for (let seed = first; performance.now() < until_ms; seed += 1) {
    const found = await fc.check(property, {
      seed,
      numRuns: again,
      interruptAfterTimeLimit: Math.max(1, until_ms - performance.now()),
    })
    cases += found.numRuns
    if (!found.failed || found.counterexample === null) continue
    writeFileSync(file, `${JSON.stringify({ ...kept, [door]: [...kept[door], seed] }, null, 2)}\n`)
    throw new Error(fc.defaultReportMessage(found) ?? door, { cause: found.errorInstance })
  }
  expect(cases).toBeGreaterThan(0)
  console.log(`${door}: ${cases} cases`)
}
