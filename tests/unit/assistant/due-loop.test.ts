// The loop over what is due: each piece of work once, tried again with growing pauses, until it is done or too late.

import { afterEach, beforeEach, expect, test } from 'vitest'
import { createDueLoop, type Doing } from '../../../src/assistant/due/due-loop.ts'
import { forgetting } from '../../../src/assistant/due/forgetting.ts'
import type { Memory } from '../../../src/memory/memory.ts'
import { openTestMemory } from '../../support/test-memory.ts'

let memory: Memory
let now: Date
let faults: unknown[]
beforeEach(async () => {
  memory = await openTestMemory()
  now = new Date('2031-05-04T10:00:00Z')
  faults = []
})
afterEach(() => memory.close())

const wait = (s: number) => {
  now = new Date(now.getTime() + s * 1000)
}
const loopOf = (chore: Doing) =>
  createDueLoop({ chore }, { due: memory.due, clock: () => now, onFault: fault => faults.push(fault) })
const chore = (latest_s?: number) => ({
  id: 'sweep',
  kind: 'chore',
  person: '',
  place: '',
  body: {},
  dueAt: now,
  latestAt: latest_s === undefined ? undefined : new Date(now.getTime() + latest_s * 1000),
})

test('what fails is tried again after pauses that grow, and then no more', async () => {
  let tries = 0
  const loop = loopOf({
    work: async () => {
      tries += 1
      if (tries < 4) throw new Error('no broom')
      return undefined
    },
  })
  await memory.due.add(chore())
  const after: number[] = []
  for (let s = 0; s <= 200; s += 1) {
    const before = tries
    await loop.strike()
    if (tries > before) after.push(s)
    wait(1)
  }
  expect(after).toEqual([0, 10, 30, 70])
  expect(faults).toHaveLength(3)
  expect((await memory.due.find('sweep'))?.isDone).toBe(true)
})

test('what is done again and again is tried again soon where it fails for once, however often it was done before', async () => {
  let [tries, fails] = [0, false]
  const loop = loopOf({
    work: async () => {
      tries += 1
      if (fails) throw new Error('no broom')
      return { again: new Date(now.getTime() + 60_000) }
    },
  })
  await memory.due.add(chore())
  for (let count = 0; count < 8; count += 1) {
    await loop.strike()
    wait(60)
  }
  expect(await memory.due.waiting()).toMatchObject([{ kind: 'chore', count: 1, retried: 0 }])
  fails = true
  await loop.strike()
  fails = false
  wait(10)
  await loop.strike()
  expect(tries).toBe(10)
})

test('what is too late is not done any more', async () => {
  let tries = 0
  const loop = loopOf({
    work: async () => {
      tries += 1
      throw new Error('no broom')
    },
  })
  await memory.due.add(chore(25))
  for (let s = 0; s < 60; s += 5) {
    await loop.strike()
    wait(5)
  }
  expect(tries).toBe(2)
  expect((await memory.due.find('sweep'))?.isDone).toBe(true)
})

test('what can never be done is told once', async () => {
  const loop = loopOf({ work: async () => ({ givenUp: 'there is no bench' }) })
  await memory.due.add(chore())
  await loop.strike()
  await loop.strike()
  expect(faults.map(String)).toEqual(['Error: there is no bench'])
})

test('what is made due anew while it is done is done once more', async () => {
  const { promise: open, resolve } = Promise.withResolvers<void>()
  const { promise: begun, resolve: begin } = Promise.withResolvers<void>()
  let tries = 0
  const loop = loopOf({
    work: async () => {
      tries += 1
      begin()
      await open
      return { again: new Date(now.getTime() + 60_000) }
    },
  })
  await memory.due.add(chore())
  const first = loop.strike()
  await begun
  await memory.due.put(chore())
  const second = loop.strike()
  expect(tries).toBe(1)
  resolve()
  await Promise.all([first, second])
  expect(tries).toBe(2)
})

test('what is old is dropped at the start, and the next day, whatever fails', async () => {
  const old = {
    place: 'discord:1',
    askedBy: 'discord:2',
    questionMessage: 'discord:3',
    answerMessage: 'discord:4',
    question: 'help',
    answeredAt: new Date('2001-05-04T10:00:00Z'),
  }
  const parts = { due: memory.due, clock: () => now, onFault: (fault: unknown) => faults.push(fault) }
  const loop = createDueLoop({ forgetting: forgetting(memory) }, parts)
  const broken = { ...memory, forgetOld: () => Promise.reject('no disk') }
  await memory.answered.record(old)
  const failing = createDueLoop({ forgetting: forgetting(broken) }, parts)
  await failing.begin()
  await failing.strike()
  expect(faults).toEqual(['no disk'])
  wait(10)
  await loop.strike()
  expect(await memory.answered.byQuestion('discord:3')).toBeUndefined()
  await memory.answered.record(old)
  await loop.begin()
  await loop.strike()
  expect(await memory.answered.byQuestion('discord:3')).toBeDefined()
  wait(86_400)
  await loop.strike()
  expect(await memory.answered.byQuestion('discord:3')).toBeUndefined()
})
