// The kit as it is stored: whose, under which name, how many.

import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { KitEntry } from '../../../src/memory/kit.ts'
import type { Memory } from '../../../src/memory/memory.ts'
import type { Owner } from '../../../src/memory/owner.ts'
import { openTestMemory } from '../../support/test-memory.ts'

const ada: Owner = { scope: 'person', id: 'room:ada' }
const bo: Owner = { scope: 'person', id: 'room:bo' }
const club: Owner = { scope: 'community', id: 'room:ada' }

const wren: KitEntry = { owner: ada, name: 'wren', kind: 'pack', notation: '3S 720mAh LiHV' }
const bench: KitEntry = { owner: club, name: 'bench', kind: 'charger', notation: '0.5/1/2/4A' }

let memory: Memory
beforeEach(async () => {
  memory = await openTestMemory()
})
afterEach(() => memory.close())

const listOf = (owner: Owner) => memory.kit.startingWith([owner], '', ['pack', 'charger', 'source'], 100)

test('an entry is found by its owner alone, and a community is no person of the same id', async () => {
  await memory.kit.save(wren, 10)
  expect(await memory.kit.find([ada], ['wren'])).toEqual([wren])
  expect(await memory.kit.find([bo], ['wren'])).toEqual([])
  expect(await memory.kit.find([club], ['wren'])).toEqual([])
  expect(await memory.kit.find([ada], [])).toEqual([])
})

test('an earlier owner hides a later one', async () => {
  const clubWren = { ...wren, owner: club, notation: '2S 450mAh LiPo' }
  for (const entry of [clubWren, wren, bench]) await memory.kit.save(entry, 10)
  expect(await memory.kit.find([ada, club], ['wren', 'bench'])).toEqual(expect.arrayContaining([wren, bench]))
  expect(await memory.kit.find([bo, club], ['wren'])).toEqual([clubWren])
})

test('saved again, the later notation holds', async () => {
  await memory.kit.save(wren, 10)
  await memory.kit.save({ ...wren, notation: '3S 650mAh LiHV' }, 10)
  expect(await listOf(ada)).toEqual([{ ...wren, notation: '3S 650mAh LiHV' }])
})

test('a count is of one owner', async () => {
  for (const entry of [wren, { ...wren, name: 'owl' }, bench]) await memory.kit.save(entry, 10)
  expect(await memory.kit.count(ada)).toBe(2)
  expect(await memory.kit.count(club)).toBe(1)
  expect(await memory.kit.count(bo)).toBe(0)
})

test('the most is kept to, but an entry can still be saved again', async () => {
  expect(await memory.kit.save(wren, 2)).toBe('saved')
  expect(await memory.kit.save({ ...wren, name: 'owl' }, 2)).toBe('saved')
  expect(await memory.kit.save({ ...wren, name: 'kite' }, 2)).toBe('full')
  expect(await memory.kit.save({ ...wren, notation: '3S 650mAh LiHV' }, 2)).toBe('saved')
  expect((await listOf(ada)).map(entry => entry.name)).toEqual(['owl', 'wren'])
})

describe('rename', () => {
  test('moves the entry', async () => {
    await memory.kit.save(wren, 10)
    expect(await memory.kit.rename(ada, 'wren', 'owl')).toBe('renamed')
    expect(await listOf(ada)).toEqual([{ ...wren, name: 'owl' }])
  })
  test('never onto another, and not where there is none', async () => {
    const owl = { ...wren, name: 'owl', notation: '2S 450mAh LiPo' }
    for (const entry of [wren, owl]) await memory.kit.save(entry, 10)
    expect(await memory.kit.rename(ada, 'wren', 'owl')).toBe('taken')
    expect(await memory.kit.rename(ada, 'kite', 'hawk')).toBe('missing')
    expect(await listOf(ada)).toEqual([owl, wren])
  })
})

test('an entry is removed, once', async () => {
  await memory.kit.save(wren, 10)
  expect(await memory.kit.remove(bo, 'wren')).toBe(false)
  expect(await memory.kit.remove(ada, 'wren')).toBe(true)
  expect(await memory.kit.remove(ada, 'wren')).toBe(false)
  expect(await listOf(ada)).toEqual([])
})

test('names that start as typed, of the kind asked, each once and no more than asked', async () => {
  for (const name of ['wren', 'wren two', 'wader']) await memory.kit.save({ ...wren, name }, 10)
  await memory.kit.save({ ...wren, owner: club, name: 'wren' }, 10)
  await memory.kit.save({ ...bench, name: 'wren bench' }, 10)
  const names = async (prefix: string, most = 25) =>
    (await memory.kit.startingWith([ada, club], prefix, ['pack'], most)).map(entry => entry.name)
  expect(await names('wr')).toEqual(['wren', 'wren two'])
  expect(await names('')).toEqual(['wader', 'wren', 'wren two'])
  expect(await names('', 2)).toEqual(['wader', 'wren'])
  expect(await names('_ader%')).toEqual([])
})
