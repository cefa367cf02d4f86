// Reminders as they are kept; how they are taken is told of all work that is due.

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

test('they come back whole, in the order in which they are due', async () => {
  const [late, soon] = [reminder('late', 45), reminder('soon', 15, { kind: 'stay', zone: '+01:58' })]
  await memory.reminders.add([late, soon], 10)
  expect(await memory.reminders.of('room:wim')).toEqual([soon, late])
  expect(await memory.reminders.of('room:ines')).toEqual([])
})

test('none is set where a person would have too many', async () => {
  expect(await memory.reminders.add([reminder('a', 1), reminder('b', 2)], 1)).toBe('full')
  expect(await memory.reminders.of('room:wim')).toEqual([])
})

test('cancelling takes those of a code, or all, and only the person’s own', async () => {
  await memory.reminders.add([reminder('a', 1), reminder('b', 2), reminder('c', 3, { code: 'zzzz' })], 10)
  await memory.reminders.add([reminder('other', 1, { person: 'room:ines' })], 10)
  expect(await memory.reminders.cancel('room:wim', 'k7f3')).toBe(2)
  expect(await memory.reminders.cancel('room:wim')).toBe(1)
  expect(await memory.reminders.cancel('room:wim')).toBe(0)
  expect(await memory.reminders.of('room:ines')).toHaveLength(1)
})
