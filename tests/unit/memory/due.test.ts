// Work that is due: each piece is given to one taker at a time until it is done, and done once.

import { afterEach, beforeEach, expect, test } from 'vitest'
import type { NewDue } from '../../../src/memory/due.ts'
import type { Memory } from '../../../src/memory/memory.ts'
import { openTestMemory } from '../../support/test-memory.ts'

let memory: Memory
beforeEach(async () => {
  memory = await openTestMemory()
})
afterEach(() => memory.close())

const start = Date.parse('2031-05-04T10:00:00Z')
const after = (minutes: number) => new Date(start + minutes * 60_000)
const lease_s = 120

const work = (id: string, minutes: number, rest: Partial<NewDue> = {}): NewDue => ({
  id,
  kind: 'chore',
  person: 'room:wim',
  place: 'room:shed',
  body: { sweep: 'the bench', times: 2 },
  dueAt: after(minutes),
  ...rest,
})

const taken = (minutes: number, surfaces?: readonly string[]) =>
  memory.due.claim('chore', after(minutes), lease_s, surfaces)
const idsTaken = async (minutes: number, surfaces?: readonly string[]) =>
  (await taken(minutes, surfaces)).map(({ id }) => id).toSorted()

test('it comes back whole, in the order in which it is due', async () => {
  const [late, soon] = [work('late', 45), work('soon', 15, { latestAt: after(60) })]
  expect(await memory.due.add(late, soon)).toBe(2)
  expect(await memory.due.of('room:wim', 'chore')).toEqual([
    { ...soon, tries: 0 },
    { ...late, latestAt: undefined, tries: 0 },
  ])
  expect(await memory.due.of('room:wim', 'errand')).toEqual([])
  expect(await memory.due.of('room:ines', 'chore')).toEqual([])
})

test('what is there under its id already is not new, waiting or done', async () => {
  await memory.due.add(work('one', 15))
  expect(await memory.due.add(work('one', 1, { body: 'other' }), work('two', 20))).toBe(1)
  expect((await memory.due.find('one'))?.body).toEqual(work('one', 15).body)
  await memory.due.done('one', after(1))
  expect(await memory.due.add(work('one', 1))).toBe(0)
  expect(await memory.due.find('three')).toBeUndefined()
})

test('what is due is given, what is not yet due waits', async () => {
  await memory.due.add(work('soon', 15), work('late', 45), work('other', 1, { kind: 'errand' }))
  expect(await idsTaken(14)).toEqual([])
  expect(await idsTaken(15)).toEqual(['soon'])
  expect(await idsTaken(45)).toEqual(['late', 'soon'])
})

test('what was taken is not given again before its lease is over, and never once it is done', async () => {
  await memory.due.add(work('one', 15))
  expect(await idsTaken(15)).toEqual(['one'])
  expect(await idsTaken(16)).toEqual([])
  expect(await taken(17)).toMatchObject([{ id: 'one', tries: 2 }])
  await memory.due.done('one', after(17))
  expect(await idsTaken(60)).toEqual([])
})

test('of what is done only the mark is left', async () => {
  await memory.due.add(work('one', 15))
  await memory.due.done('one', after(15))
  expect(await memory.due.find('one')).toMatchObject({ isDone: true, body: undefined, person: '', place: '' })
  const days = (count: number) => new Date(after(15).getTime() + count * 86_400_000)
  await memory.forgetOld(days(30))
  expect(await memory.due.find('one')).toBeDefined()
  await memory.due.add(work('waits', 15), work('nobody can', 15, { latestAt: after(20) }))
  await memory.forgetOld(days(30.001))
  expect(await memory.due.find('one')).toBeUndefined()
  expect(await memory.due.find('nobody can')).toBeDefined()
  await memory.forgetOld(days(31))
  expect(await memory.due.find('nobody can')).toBeUndefined()
  expect(await memory.due.find('waits')).toBeDefined()
})

test('it is put off by who took it, unless it was made due anew meanwhile', async () => {
  await memory.due.add(work('one', 1), work('two', 1))
  const [one, two] = (await taken(1)).toSorted((a, b) => (a.id < b.id ? -1 : 1))
  await memory.due.put(work('two', 2))
  if (!one || !two) throw new Error('not taken')
  await memory.due.later(one, after(30))
  await memory.due.later(two, after(30))
  expect(await idsTaken(2)).toEqual(['two'])
  expect(await idsTaken(30)).toEqual(['one', 'two'])
})

test('what was done is due again where it is put anew', async () => {
  await memory.due.add(work('one', 1))
  await memory.due.done('one', after(1))
  await memory.due.put(work('one', 5, { body: 'once more' }))
  expect(await taken(5)).toMatchObject([{ id: 'one', body: 'once more', person: 'room:wim' }])
})

test('of many takers at once each piece goes to one', async () => {
  const takers = Array.from({ length: 8 })
  // So that all have a connection of their own, and none is late.
  await Promise.all(takers.map(() => taken(0)))
  for (let round = 1; round <= 10; round += 1) {
    const ids = Array.from({ length: 20 }, (_, at) => `chore ${round}.${at}`).toSorted()
    await memory.due.add(...ids.map(id => work(id, 15)))
    const all = (await Promise.all(takers.map(() => idsTaken(15)))).flat()
    expect(all.toSorted()).toEqual(ids)
    for (const id of ids) await memory.due.done(id, after(15))
  }
})

test('a taker gets only what it can do there', async () => {
  await memory.due.add(work('here', 1), work('there', 1, { place: 'matrix:!shed' }))
  expect(await idsTaken(1, [])).toEqual([])
  expect(await idsTaken(1, ['matrix', 'discord'])).toEqual(['there'])
  expect(await idsTaken(1)).toEqual(['here'])
})

test('a surface that is one place is given what is due there', async () => {
  await memory.due.add(work('here', 0, { place: 'room' }), work('other', 0, { place: 'roomy' }))
  expect(await idsTaken(1, ['room'])).toEqual(['here'])
})
