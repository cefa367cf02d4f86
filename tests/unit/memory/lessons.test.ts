// Progress with the lessons: one question waits a person, each answer counts once, and what is learned stays.

import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Memory } from '../../../src/memory/memory.ts'
import { openTestMemory } from '../../support/test-memory.ts'

let memory: Memory
beforeEach(async () => {
  memory = await openTestMemory()
})
afterEach(() => memory.close())

const [wim, ines] = ['room:wim', 'room:ines']
const amps = { question: 'c-rate/amps', seed: 2 ** 31 - 1 }
const volts = { question: 'label/volts', seed: 0 }

test('a question waits for its own person, and a later one takes its place', async () => {
  expect(await memory.lessons.pending(wim)).toBeUndefined()
  await memory.lessons.ask(wim, amps)
  await memory.lessons.ask(ines, volts)
  expect(await memory.lessons.pending(wim)).toEqual(amps)
  await memory.lessons.ask(wim, volts)
  expect(await memory.lessons.pending(wim)).toEqual(volts)
})

test('a right answer is noted once', async () => {
  for (let times = 0; times < 2; times += 1) {
    await memory.lessons.ask(wim, amps)
    expect(await memory.lessons.settle(wim, amps, true)).toBe(true)
  }
  expect(await memory.lessons.learned(wim)).toEqual([amps.question])
  expect(await memory.lessons.pending(wim)).toBeUndefined()
  expect(await memory.lessons.learned(ines)).toEqual([])
})

test('a wrong one takes the question away and notes nothing', async () => {
  await memory.lessons.ask(wim, amps)
  expect(await memory.lessons.settle(wim, amps, false)).toBe(true)
  expect(await memory.lessons.pending(wim)).toBeUndefined()
  expect(await memory.lessons.learned(wim)).toEqual([])
})

test('of several answers at once one counts', async () => {
  await memory.lessons.ask(wim, amps)
  const answers = Array.from({ length: 6 }, (_, at) => memory.lessons.settle(wim, amps, at % 2 === 0))
  expect((await Promise.all(answers)).filter(Boolean)).toHaveLength(1)
})

test('an answer to an earlier question changes nothing', async () => {
  await memory.lessons.ask(wim, volts)
  expect(await memory.lessons.settle(wim, amps, true)).toBe(false)
  expect(await memory.lessons.settle(wim, { ...volts, seed: 1 }, true)).toBe(false)
  expect(await memory.lessons.pending(wim)).toEqual(volts)
  expect(await memory.lessons.learned(wim)).toEqual([])
})
