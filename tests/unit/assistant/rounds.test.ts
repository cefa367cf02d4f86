// The rounds: at once and then again and again, never overlapping the end of the program.

import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { createRounds } from '../../../src/assistant/running/rounds.ts'

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
})

function roundsOf(working = async () => {}) {
  const done = { begun: 0, strikes: 0, settled: 0, learned: 0 }
  const count = (what: keyof typeof done) => async () => {
    done[what] += 1
  }
  const strike = async () => {
    done.strikes += 1
    await working()
  }
  const assistant = { begin: count('begun'), strike, settled: count('settled') }
  return { done, rounds: createRounds({ assistant, learnRules: count('learned') }) }
}

test('both at once, then each in its own time, and none after the stop', async () => {
  const { done, rounds } = roundsOf()
  rounds.start()
  await vi.advanceTimersByTimeAsync(0)
  expect(done).toEqual({ begun: 1, strikes: 1, settled: 0, learned: 1 })
  await vi.advanceTimersByTimeAsync(15 * 60_000)
  expect(done).toEqual({ begun: 1, strikes: 181, settled: 0, learned: 16 })
  await rounds.stop()
  await vi.advanceTimersByTimeAsync(15 * 60_000)
  expect(done).toEqual({ begun: 1, strikes: 181, settled: 1, learned: 16 })
})

test('stopping waits for what is under way', async () => {
  const { promise, resolve } = Promise.withResolvers<void>()
  const { rounds } = roundsOf(() => promise)
  rounds.start()
  let stopped = false
  const stopping = rounds.stop().then(() => {
    stopped = true
  })
  await vi.advanceTimersByTimeAsync(1000)
  expect(stopped).toBe(false)
  resolve()
  await stopping
  expect(stopped).toBe(true)
})
