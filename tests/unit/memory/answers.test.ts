// Standard answers as they are kept: titles unique, changes that do not undo each other, cards noted once.

import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Memory } from '../../../src/memory/memory.ts'
import type { NewAnswer, StandardAnswer } from '../../../src/memory/standard-answer.ts'
import { openTestMemory } from '../../support/test-memory.ts'

let memory: Memory
beforeEach(async () => {
  memory = await openTestMemory()
})
afterEach(() => memory.close())

const wren: NewAnswer = {
  community: 'room:club',
  title: 'Wren at the bench',
  kind: 'question',
  content: 'current pack: wren',
  canonical: 'current pack: 3S 720mAh LiHV',
  place: 'room:shed',
}

async function added(answer: NewAnswer = wren): Promise<StandardAnswer> {
  const outcome = await memory.answers.add(answer, 10)
  if (typeof outcome === 'string') throw new Error(outcome)
  return outcome
}

const card = { message: 'room:1', link: 'https://example.org/1', pinned: true, digest: 'abc' }

test('what is added is found by id, title in any case, question and community', async () => {
  const answer = await added()
  expect(answer).toEqual({ ...wren, id: answer.id, revision: 1 })
  expect(await memory.answers.get(answer.id)).toEqual(answer)
  expect(await memory.answers.find('room:club', 'WREN at the Bench')).toEqual(answer)
  expect(await memory.answers.asking('room:club', wren.canonical)).toEqual([answer])
  expect(await memory.answers.list('room:club')).toEqual([answer])
  expect(await memory.answers.communities()).toEqual(['room:club'])
})

test('another community sees none of it', async () => {
  await added()
  expect(await memory.answers.find('room:other', wren.title)).toBeUndefined()
  expect(await memory.answers.asking('room:other', wren.canonical)).toEqual([])
  expect(await memory.answers.list('room:other')).toEqual([])
})

test('a title is there once, and no more than the community may have', async () => {
  await added()
  expect(await memory.answers.add({ ...wren, title: 'wren AT the bench' }, 10)).toBe('taken')
  expect(await memory.answers.add({ ...wren, title: 'Another' }, 1)).toBe('full')
  await added({ ...wren, community: 'room:other' })
})

test('of two moderators who save one title at once, one does', async () => {
  const outcomes = await Promise.all([memory.answers.add(wren, 10), memory.answers.add(wren, 10)])
  expect(outcomes.filter(outcome => outcome === 'taken')).toHaveLength(1)
  expect(await memory.answers.list('room:club')).toHaveLength(1)
})

test('of two moderators at once neither undoes what the other alone has changed', async () => {
  const { id } = await added()
  await Promise.all([
    memory.answers.change(id, { title: 'Wren' }),
    memory.answers.change(id, { kind: 'text', content: 'Ask at the bench.', canonical: '' }),
  ])
  expect(await memory.answers.get(id)).toMatchObject({
    title: 'Wren',
    kind: 'text',
    content: 'Ask at the bench.',
    canonical: '',
    revision: 3,
  })
})

test('a title that is taken is not given twice; its own may change case', async () => {
  const { id } = await added()
  await added({ ...wren, title: 'Owl' })
  expect(await memory.answers.change(id, { title: 'OWL' })).toBe('taken')
  expect(await memory.answers.change(id, { title: 'WREN AT THE BENCH' })).toBe('changed')
  expect(await memory.answers.change('nobody', { title: 'X' })).toBe('missing')
})

test('a card is noted and forgotten', async () => {
  const answer = await added()
  expect(await memory.answers.settle(answer, { place: 'room:field', canonical: '', card })).toBe(true)
  const settled = await memory.answers.get(answer.id)
  expect(settled).toEqual({ ...answer, place: 'room:field', canonical: '', card, revision: 2 })
  const bare = { message: 'room:2', pinned: false, digest: '' }
  if (settled) await memory.answers.settle(settled, { place: 'room:field', canonical: '', card: bare })
  expect((await memory.answers.get(answer.id))?.card).toEqual(bare)
})

test('of two who note a card for what they saw at once, one does', async () => {
  const answer = await added()
  const note = (message: string) =>
    memory.answers.settle(answer, { place: answer.place, canonical: '', card: { ...card, message } })
  const outcomes = await Promise.all([note('room:1'), note('room:2')])
  expect(outcomes.toSorted()).toEqual([false, true])
})

test('what was changed meanwhile is not noted over', async () => {
  const answer = await added()
  await memory.answers.change(answer.id, { title: 'Wren' })
  expect(await memory.answers.settle(answer, { place: 'room:field', canonical: '', card })).toBe(false)
  expect((await memory.answers.get(answer.id))?.card).toBeUndefined()
})

test('removing gives what was there, once', async () => {
  const answer = await added()
  expect(await memory.answers.remove(answer.id)).toEqual(answer)
  expect(await memory.answers.remove(answer.id)).toBeUndefined()
})
