// What is due in crowds, on a real SQLite file, for the bench of the loop: cards, reminders, and old rows that go.

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { commands } from '../../commands/index.ts'
import { createAssistant } from '../../src/assistant/running/assistant.ts'
import type { Memory } from '../../src/memory/memory.ts'
import { memoryFile } from '../../src/memory/opening/connect.ts'
import { openMemory } from '../../src/memory/opening/open.ts'
import { fakeBoard } from '../support/fake-noticeboard.ts'

export interface DueLoads {
  readonly loads: readonly (readonly [name: string, work: () => Promise<unknown>])[]
  close(): Promise<void>
}

const [cards, ofClub, reminders, rows] = [1000, 20, 5000, 1_000_000]

export async function openDueLoads(): Promise<DueLoads> {
  const folder = mkdtempSync(join(tmpdir(), 'chargehand-bench-'))
  const memory = await openMemory({ dataFolder: folder })
  await addCards(memory)
  await addReminders(memory)
  addOldRows(memoryFile(folder))
  const { noticeboard, standing } = fakeBoard()
  for (let at = 0; at < cards; at += 1)
    standing.push({ ...cardAt(at), reply: undefined as never, pinned: true, edits: 0 })
  const assistant = createAssistant({ commands, memory, noticeboard, onFault: fault => console.error(fault) })
  await assistant.begin()
  const struck = (kind: string) => () => assistant.strike(kind)
  return {
    loads: [
      [`${cards} cards refreshed`, struck('cards')],
      [`${reminders} reminders due`, struck('reminder')],
      [`${rows} old rows dropped`, struck('forgetting')],
    ],
    close: async () => {
      await memory.close()
      rmSync(folder, { recursive: true })
    },
  }
}

const cardAt = (at: number) => ({ place: `room:${Math.floor(at / ofClub)}`, message: `room:card-${at}` })

async function addCards(memory: Memory): Promise<void> {
  for (let at = 0; at < cards; at += 1) {
    const { place, message } = cardAt(at)
    const content = `current pack: ${2 + (at % 5)}S ${300 + at} LiPo charger: 0.5/1/2A`
    const saying = { title: `pack ${at}`, kind: 'question', content, canonical: '', place, community: place } as const
    const answer = await memory.answers.add(saying, ofClub)
    if (typeof answer === 'string') throw new Error(answer)
    await memory.answers.settle(answer, { place, canonical: '', card: { message, pinned: true, digest: 'earlier' } })
  }
}

async function addReminders(memory: Memory): Promise<void> {
  const now = new Date()
  const one = {
    code: 'r1',
    channel: 'here',
    kind: 'end',
    about: '',
    setAt: now,
    dueAt: now,
    low_s: 0,
    high_s: 0,
  } as const
  for (let first = 0; first < reminders; first += 1000) {
    const some = Array.from({ length: 1000 }, (_, at) => first + at)
    const set = some.map(at => ({ ...one, id: `reminder ${at}`, person: `room:${at}`, place: 'room:shed' }))
    if ((await memory.reminders.add(set, 1)) !== 'set') throw new Error('not set')
  }
}

function addOldRows(file: string): void {
  const database = new DatabaseSync(file)
  database.exec(`
    insert into answered (question_message, answer_message, place, asked_by, question, answered_at)
    with recursive at(n) as (select 1 union all select n + 1 from at where n < ${rows})
    select 'q' || n, 'a' || n, 'room:shed', 'room:' || (n % 5000), 'help', '2001-05-04T10:00:00.000Z' from at`)
  database.close()
}
