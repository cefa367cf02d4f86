// Reminders as they are kept: each is given to one taker at a time until it is done.

import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Memory } from '../../../src/memory/memory.ts'
import type { Reminder } from '../../../src/memory/reminder.ts'
import { openTestMemory } from '../../support/test-memory.ts'

let memory: Memory
beforeEach(async () => {
  memory = await openTestMemory()
})
afterEach(() => memory.close())

const start = Date.parse('2031-05-04T10:00:00Z')
const after = (minutes: number) => new Date(start + minutes * 60_000)

function reminder(id: string, minutes: number, rest: Partial<Reminder> = {}): Reminder {
  return {
    id,
    code: 'k7f3',
    person: 'room:wim',
    place: 'room:shed',
    channel: 'here',
    kind: 'end',
    about: 'time pack: 3S 720mAh LiHV',
    setAt: after(0),
    dueAt: after(minutes),
    low_s: minutes * 60,
    high_s: minutes * 90,
    ...rest,
  }
}

const claimed = async (minutes: number, surfaces: readonly string[] = ['room']) =>
  (await memory.reminders.claim(after(minutes), 120, surfaces)).map(({ id }) => id).toSorted()

test('they come back whole, in the order in which they are due', async () => {
  const [late, soon] = [reminder('late', 45), reminder('soon', 15, { kind: 'stay' })]
  await memory.reminders.add([late, soon], 10)
  expect(await memory.reminders.of('room:wim')).toEqual([soon, late])
  expect(await memory.reminders.of('room:ines')).toEqual([])
})

test('none is set where a person would have too many', async () => {
  expect(await memory.reminders.add([reminder('a', 1), reminder('b', 2)], 1)).toBe('full')
  expect(await memory.reminders.of('room:wim')).toEqual([])
})

test('what is due is given, what is not yet due waits', async () => {
  await memory.reminders.add([reminder('soon', 15), reminder('late', 45)], 10)
  expect(await claimed(14)).toEqual([])
  expect(await claimed(15)).toEqual(['soon'])
  expect(await claimed(45)).toEqual(['late', 'soon'])
})

test('what was taken is not given again before its time is over, and never once it is done', async () => {
  await memory.reminders.add([reminder('one', 15)], 10)
  expect(await claimed(15)).toEqual(['one'])
  expect(await claimed(16)).toEqual([])
  expect(await claimed(17)).toEqual(['one'])
  await memory.reminders.done('one')
  expect(await claimed(60)).toEqual([])
})

test('of many takers at once each reminder goes to one', async () => {
  const takers = Array.from({ length: 8 })
  // So that all have a connection of their own, and none is late.
  await Promise.all(takers.map(() => claimed(0)))
  for (let round = 1; round <= 10; round += 1) {
    const ids = Array.from({ length: 20 }, (_, at) => `reminder ${round}.${at}`).toSorted()
    await memory.reminders.add(
      ids.map(id => reminder(id, 15)),
      1000,
    )
    const taken = (await Promise.all(takers.map(() => claimed(15)))).flat()
    expect(taken.toSorted()).toEqual(ids)
    await memory.reminders.cancel('room:wim')
  }
})

test('a taker gets only what it can send', async () => {
  await memory.reminders.add([reminder('here', 1), reminder('there', 1, { place: 'matrix:!shed' })], 10)
  expect(await claimed(1, [])).toEqual([])
  expect(await claimed(1, ['matrix', 'discord'])).toEqual(['there'])
})

test('cancelling takes those of a code, or all, and only the person’s own', async () => {
  await memory.reminders.add([reminder('a', 1), reminder('b', 2), reminder('c', 3, { code: 'zzzz' })], 10)
  await memory.reminders.add([reminder('other', 1, { person: 'room:ines' })], 10)
  expect(await memory.reminders.cancel('room:wim', 'k7f3')).toBe(2)
  expect(await memory.reminders.cancel('room:wim')).toBe(1)
  expect(await memory.reminders.cancel('room:wim')).toBe(0)
  expect(await memory.reminders.of('room:ines')).toHaveLength(1)
})
