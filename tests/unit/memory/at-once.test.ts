// Many at once: nobody gets past a limit, nothing stays behind.

import { randomUUID } from 'node:crypto'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Memory } from '../../../src/memory/memory.ts'
import { openTestMemory } from '../../support/test-memory.ts'

let memory: Memory
beforeEach(async () => {
  memory = await openTestMemory()
})
afterEach(() => memory.close())

const most = 5
const atOnce = <T>(work: (count: number) => Promise<T>): Promise<T[]> =>
  Promise.all(Array.from({ length: 40 }, (_, count) => work(count)))
const owner = { scope: 'person' as const, id: 'room:ada' }

test('no more packs are saved than fit', async () => {
  const outcomes = await atOnce(count =>
    memory.kit.save({ owner, name: `wren${count}`, kind: 'pack', notation: '3S 720mAh LiHV' }, most),
  )
  expect(outcomes.filter(outcome => outcome === 'saved')).toHaveLength(most)
  expect(await memory.kit.count(owner)).toBe(most)
})

test('no more reminders are set than fit', async () => {
  const at = new Date('2031-05-04T10:00:00Z')
  const reminder = {
    code: 'k7f3',
    person: owner.id,
    place: 'room:shed',
    channel: 'here',
    kind: 'end',
    about: '',
  } as const
  const times = { setAt: at, dueAt: at, low_s: 60, high_s: 60 }
  const outcomes = await atOnce(() => memory.reminders.add([{ id: randomUUID(), ...reminder, ...times }], most))
  expect(outcomes.filter(outcome => outcome === 'set')).toHaveLength(most)
  expect(await memory.reminders.of(owner.id)).toHaveLength(most)
})

test('no more standard answers are saved than fit', async () => {
  const saying = { community: 'room:club', place: 'room:shed', kind: 'text', content: 'Ask.', canonical: '' } as const
  const outcomes = await atOnce(count => memory.answers.add({ ...saying, title: `Wren ${count}` }, most))
  expect(outcomes.filter(outcome => outcome !== 'full')).toHaveLength(most)
  expect(await memory.answers.list('room:club')).toHaveLength(most)
})

test('what is old goes in slices, all of it, and nothing else', async () => {
  const answered = (count: number, answeredAt: Date) => ({
    place: 'room:shed',
    askedBy: owner.id,
    questionMessage: `question ${count}`,
    answerMessage: `answer ${count}`,
    question: 'help',
    answeredAt,
  })
  const [old, young] = [new Date('2031-01-01'), new Date('2031-06-01')]
  for (let count = 0; count < 1201; count++) await memory.answered.record(answered(count, old))
  await memory.answered.record(answered(5000, young))
  await memory.forgetOld(new Date('2031-07-30'))
  expect((await memory.members.export(owner.id)).answered).toEqual([answered(5000, young)])
})
