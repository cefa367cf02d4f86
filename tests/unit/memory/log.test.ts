// The charge log as it is kept: whole, in order, and with its pack wherever that goes.

import { afterEach, beforeEach, expect, test } from 'vitest'
import type { NotedCharge } from '../../../src/memory/charge-log.ts'
import type { Memory } from '../../../src/memory/memory.ts'
import { openTestMemory } from '../../support/test-memory.ts'

let memory: Memory
beforeEach(async () => {
  memory = await openTestMemory()
})
afterEach(() => memory.close())

const wim = { scope: 'person', id: 'room:wim' } as const
const club = { scope: 'community', id: 'room:wim' } as const
const pack = { kind: 'pack', notation: '3S 720mAh LiHV' } as const

const charge = (id: string, day: number, rest: Partial<NotedCharge> = {}): NotedCharge => ({
  id,
  owner: wim,
  name: 'wren',
  notation: pack.notation,
  at: new Date(Date.UTC(2031, 4, day)),
  charge_Ah: 0.64,
  to: { kind: 'rest', perCell_V: 4.35 },
  ...rest,
})

const ids = async (name = 'wren', owner: typeof wim | typeof club = wim) =>
  (await memory.log.of(owner, name)).map(({ id }) => id)

test('a charge comes back as it was noted', async () => {
  const whole = charge('a', 1, {
    from: { kind: 'rest', perCell_V: 3.612 },
    cells_V: [4.35, 4.341, 4.35],
    cells_ohm: [0.0121],
    temperature_C: 19.5,
    duration_s: 3000,
    counted_Ah: 0.561,
  })
  await memory.log.add(whole, 10)
  expect(await memory.log.of(wim, 'wren')).toEqual([whole])
})

test('they come in order of time, and only those of the owner and the name', async () => {
  await memory.log.add(charge('late', 9), 10)
  await memory.log.add(charge('soon', 2), 10)
  await memory.log.add(charge('owl', 3, { name: 'owl' }), 10)
  await memory.log.add(charge('club', 4, { owner: club }), 10)
  expect(await ids()).toEqual(['soon', 'late'])
  expect(await ids('wren', club)).toEqual(['club'])
})

test('beyond the most, the oldest of that pack go', async () => {
  await memory.log.add(charge('owl', 1, { name: 'owl' }), 3)
  for (const day of [1, 2, 3, 4, 5]) await memory.log.add(charge(`day ${day}`, day), 3)
  expect(await ids()).toEqual(['day 3', 'day 4', 'day 5'])
  expect(await ids('owl')).toEqual(['owl'])
})

test('the last one can be taken back, until there is none', async () => {
  await memory.log.add(charge('b', 2), 10)
  await memory.log.add(charge('a', 1), 10)
  expect((await memory.log.removeLast(wim, 'wren'))?.id).toBe('b')
  expect((await memory.log.removeLast(wim, 'wren'))?.id).toBe('a')
  expect(await memory.log.removeLast(wim, 'wren')).toBeUndefined()
})

test('the log follows its pack to another name, and goes with it', async () => {
  await memory.kit.save({ owner: wim, name: 'wren', ...pack }, 10)
  await memory.log.add(charge('a', 1), 10)
  await memory.log.add(charge('left over', 1, { name: 'owl' }), 10)
  await memory.log.add(charge('club', 1, { owner: club }), 10)
  await memory.kit.rename(wim, 'wren', 'owl')
  expect(await ids('owl')).toEqual(['a'])
  expect(await ids()).toEqual([])
  await memory.kit.remove(wim, 'owl')
  expect(await ids('owl')).toEqual([])
  expect(await ids('wren', club)).toEqual(['club'])
})
