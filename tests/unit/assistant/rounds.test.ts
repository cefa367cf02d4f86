// The rounds: at once and then again and again, never overlapping the end of the program.

import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { createNoticeboards } from '../../../src/assistant/cards/noticeboard.ts'
import { createRounds } from '../../../src/assistant/running/rounds.ts'
import type { ReminderMemory } from '../../../src/memory/reminder.ts'

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
})

const refuse = () => Promise.reject(new Error('not in a round'))

function roundsOf(refreshCards: () => Promise<void>) {
  const done = { claims: 0, settled: 0, learned: 0 }
  const reminders: ReminderMemory = {
    add: refuse,
    of: refuse,
    cancel: refuse,
    done: refuse,
    claim: async () => {
      done.claims += 1
      return []
    },
  }
  const settled = async () => {
    done.settled += 1
  }
  const faults: unknown[] = []
  const rounds = createRounds({
    assistant: { refreshCards, settled },
    reminders,
    noticeboard: createNoticeboards(),
    clock: () => new Date(),
    onFault: fault => faults.push(fault),
    learnRules: async () => {
      done.learned += 1
    },
  })
  return { done, rounds, faults }
}

test('both at once, then each in its own time, and none after the stop', async () => {
  let refreshes = 0
  const { done, rounds, faults } = roundsOf(async () => {
    refreshes += 1
  })
  rounds.start()
  expect([done.claims, refreshes, done.learned]).toEqual([1, 1, 1])
  await vi.advanceTimersByTimeAsync(15 * 60_000)
  expect([done.claims, refreshes, done.learned]).toEqual([181, 2, 16])
  await rounds.stop()
  await vi.advanceTimersByTimeAsync(15 * 60_000)
  expect([done.claims, refreshes, done.settled]).toEqual([181, 2, 1])
  expect(faults).toEqual([])
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
