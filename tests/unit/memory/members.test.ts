// What is kept about one person: handed out in full, deleted in full, and nobody else's.

import { sql } from 'kysely'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Database } from '../../../src/memory/database.ts'
import type { Memory } from '../../../src/memory/memory.ts'
import { migrate } from '../../../src/memory/opening/migrate.ts'
import { migrations } from '../../../src/memory/opening/migrations.ts'
import { memoryIn } from '../../../src/memory/opening/open.ts'
import { directCommunityOf } from '../../../src/memory/owner.ts'
import { connectTestDatabase } from '../../support/test-memory.ts'

let db: Database
let memory: Memory
beforeEach(async () => {
  db = await connectTestDatabase()
  await migrate(db, migrations)
  memory = memoryIn(db)
})
afterEach(() => memory.close())

const entryOf = (person: string) => ({
  owner: { scope: 'person' as const, id: person },
  name: 'wren',
  kind: 'pack' as const,
  notation: '3S 720mAh LiHV',
})
const answerTo = (person: string) => ({
  place: 'room:shed',
  askedBy: person,
  questionMessage: `question of ${person}`,
  answerMessage: `answer to ${person}`,
  question: 'help',
  answeredAt: new Date('2031-05-04T10:00:00Z'),
})

const reminderOf = (person: string) => ({
  id: `reminder of ${person}`,
  code: 'k7f3',
  person,
  place: 'room:shed',
  channel: 'here' as const,
  kind: 'end' as const,
  about: '',
  setAt: new Date('2031-05-04T10:00:00Z'),
  dueAt: new Date('2031-05-04T10:45:00Z'),
  low_s: 2700,
  high_s: 2700,
})

const questionOf = (person: string) => ({
  id: `question that ${person} has asked`,
  kind: 'question',
  person,
  place: 'room:shed',
  body: { question: 'help' },
  dueAt: new Date('2031-05-04T10:00:00Z'),
})

const chargeOf = (person: string) => ({
  id: `charge of ${person}`,
  owner: { scope: 'person' as const, id: person },
  name: 'wren',
  notation: '3S 720mAh LiHV',
  at: new Date('2031-05-04T10:00:00Z'),
  charge_Ah: 0.64,
  to: { kind: 'soc' as const, soc: 1 },
})
const authorOf = (person: string) => ({
  community: 'room:club',
  person,
  name: 'somebody',
  at: new Date('2031-05-04T10:00:00Z'),
})
const learned = 'c-rate/amps'
const pending = { question: 'label/volts', seed: 7 }

/** Every table gets rows of two people, or, where it knows no people, any row. */
async function fillEveryTable(): Promise<void> {
  await memory.questions.keep('help')
  await memory.house.change('room:club', [{ rule: 'gentleLiIon', value: true }])
  await memory.noticed.add('room:club', new Date(), { kind: 'wrong', about: '', link: '' })
  const saying = { title: 'Wren', kind: 'text' as const, content: 'Ask at the bench.', canonical: '' }
  await memory.answers.add({ community: 'room:club', place: 'room:shed', ...saying }, 10)
  for (const person of ['room:ada', 'room:bo']) {
    await memory.reminders.add([reminderOf(person)], 10)
    await memory.due.add(questionOf(person))
    await memory.kit.save(entryOf(person), 10)
    await memory.answered.record(answerTo(person))
    await memory.log.add(chargeOf(person), 10)
    const first = { question: learned, seed: 1 }
    await memory.lessons.ask(person, first)
    await memory.lessons.settle(person, first, true)
    await memory.lessons.ask(person, pending)
    const direct = directCommunityOf(person)
    await memory.house.change(direct, [{ rule: 'gentleLiIon', value: true }])
    await memory.answers.add({ community: direct, place: direct, ...saying }, 10)
    await memory.kit.save({ ...entryOf(person), owner: { scope: 'community', id: direct } }, 10)
    await memory.log.add({ ...chargeOf(person), id: `at ${direct}`, owner: { scope: 'community', id: direct } }, 10)
    const change = { of: 'kit' as const, after: entryOf(person) }
    await memory.history.noting(authorOf(person), async () => ({ result: undefined, change }))
  }
}

async function everyRow(): Promise<Map<string, string[]>> {
  const rows = new Map<string, string[]>()
  for (const { name } of await db.introspection.getTables()) {
    const found = await sql`select * from ${sql.table(name)}`.execute(db)
    rows.set(
      name,
      found.rows.map(row => JSON.stringify(row)),
    )
  }
  return rows
}

test('after forgetting a person no cell of any table names them, and the others keep theirs', async () => {
  await fillEveryTable()
  const before = await everyRow()
  for (const [table, rows] of before) expect(rows, `${table} has a row for this test`).not.toEqual([])

  await memory.members.forget('room:ada')
  const after = await everyRow()
  for (const [table, rows] of before) {
    expect(after.get(table)).toEqual(rows.filter(row => !/room:(?:direct:)?ada/.test(row)))
  }
})

test('the export has everything that forgetting deletes', async () => {
  const alone = { scope: 'community' as const, id: directCommunityOf('room:ada') }
  await fillEveryTable()
  expect(await memory.members.export('room:ada')).toEqual({
    kit: [entryOf('room:ada'), { ...entryOf('room:ada'), owner: alone }],
    answered: [answerTo('room:ada')],
    reminders: [reminderOf('room:ada')],
    waiting: [{ question: 'help' }],
    log: [chargeOf('room:ada'), { ...chargeOf('room:ada'), id: `at ${alone.id}`, owner: alone }],
    alone: [{ gentleLiIon: true }, expect.objectContaining({ community: alone.id, content: 'Ask at the bench.' })],
    learned: [learned],
    pending: [pending],
    changed: [expect.objectContaining(authorOf('room:ada'))],
  })
  await memory.members.forget('room:ada')
  expect(await memory.members.export('room:ada')).toEqual({
    kit: [],
    answered: [],
    reminders: [],
    waiting: [],
    log: [],
    alone: [],
    learned: [],
    pending: [],
    changed: [],
  })
  expect((await memory.members.export('room:bo')).kit).toHaveLength(2)
})
