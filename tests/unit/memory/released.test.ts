// What a club has stored with any released version opens, and answers. Its databases stand in the fixtures, one for each kind.

import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { Client } from 'pg'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import { createAssistant } from '../../../src/assistant/running/assistant.ts'
import { openMemory } from '../../../src/memory/opening/open.ts'
import { type Asking, askingOf } from '../../support/ask.ts'
import { fakeBoard } from '../../support/fake-noticeboard.ts'
import { testDatabaseUrl } from '../../support/test-memory.ts'

const releases = new URL('../../fixtures/releases/', import.meta.url)
const fixture = (version: string, file: string) => readFileSync(new URL(`${version}/${file}`, releases), 'utf8')

const wim: Occasion = {
  surface: 'room',
  asker: { id: 'room:wim', name: 'Wim', moderates: false },
  community: { id: 'room:larkfield', name: 'Larkfield' },
  place: { id: 'room:bench', direct: true },
}

let folder: string
let asking: Asking

async function upgraded(version: string): Promise<void> {
  folder = mkdtempSync(join(tmpdir(), 'released-'))
  const databaseUrl = await testDatabaseUrl()
  if (databaseUrl) {
    const client = new Client({ connectionString: databaseUrl })
    await client.connect()
    await client.query(fixture(version, 'postgres.sql'))
    await client.end()
  } else {
    const database = new DatabaseSync(join(folder, 'chargehand.db'))
    database.exec(fixture(version, 'sqlite.sql'))
    database.close()
  }
  asking = await askingOf(commands, {
    memory: await openMemory({ dataFolder: folder, databaseUrl }),
    clock: () => new Date('2026-11-29T00:00:00Z'),
  })
}

async function closed(): Promise<void> {
  expect(asking.faults).toEqual([])
  await asking.memory.close()
  rmSync(folder, { recursive: true })
}

describe.each(readdirSync(releases))('a memory of %s', version => {
  beforeAll(() => upgraded(version))
  afterAll(closed)

  const asked = JSON.parse(fixture(version, 'asked.json')) as [string, string][]
  it.each(asked)('answers %s', async (question, says) => {
    const reply = await asking.ask(question, wim)
    expect(reply.problem, question).toBeUndefined()
    expect([reply.headline, ...reply.working, ...reply.figures.map(({ text }) => text)].join('\n')).toMatch(
      new RegExp(says),
    )
  })
})

describe('a memory of 0.1.0', () => {
  beforeAll(() => upgraded('0.1.0'))
  afterAll(closed)

  it('answers the question behind a button', async () => {
    const question = await asking.memory.questions.find('SSVfjrj5WuAwpg7j')
    expect(question).toBe(
      'time pack: 3S 720mAh LiHV charger: 0.5/1/2/4A 80W 1-4S 9-20V current: 1A from: 3.7V per cell',
    )
    const reply = await asking.ask(question ?? '', wim)
    expect(reply.problem).toBeUndefined()
    expect(reply.question).toContain('charger: 0.5/1/2/4A 80W 1-4S 9-20V')
    expect(reply.question).toContain('current: 1A')
  })

  it('hands out all that is kept of a person', async () => {
    const data = await asking.memory.members.export('room:wim')
    expect(data.kit).toHaveLength(1)
    expect(data.reminders).toHaveLength(2)
    expect(data.log).toHaveLength(2)
    expect(data.answered).toHaveLength(1)
  })

  it('gives the reminders that wait in it', async () => {
    const [first, ...others] = await asking.memory.reminders.of('room:wim')
    if (!first) throw new Error('there is none')
    const board = fakeBoard()
    const { noticeboard } = board
    const faults: unknown[] = []
    const at = (clock: Date) =>
      createAssistant({
        commands,
        memory: asking.memory,
        noticeboard,
        clock: () => clock,
        onFault: fault => faults.push(fault),
      })
    await at(new Date(first.dueAt.getTime() - 1)).strike()
    expect(board.notices).toEqual([])
    await at(first.dueAt).strike()
    expect(board.notices).toMatchObject([{ key: first.id, calls: ['room:wim'] }])
    expect(await asking.memory.reminders.of('room:wim')).toEqual(others)
    expect(faults).toEqual([])
  })
})
