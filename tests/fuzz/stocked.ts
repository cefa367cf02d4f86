// A memory with a little of everything in it, and questions that look at all of that.

import { expect } from 'vitest'
import { commands } from '../../commands/index.ts'
import type { Database } from '../../src/memory/database.ts'
import { connect } from '../../src/memory/opening/connect.ts'
import { migrate } from '../../src/memory/opening/migrate.ts'
import { migrations } from '../../src/memory/opening/migrations.ts'
import { memoryIn } from '../../src/memory/opening/open.ts'
import { type Asking, askingOf, moderator } from '../support/ask.ts'
import { fakeBoard } from '../support/fake-noticeboard.ts'

const said = [
  'kit save name: wren pack: 3S 720 LiHV',
  'kit save name: flightbox charger: 0.5/1/2/4A 80W for: club',
  'kit save name: car source: car for: club',
  'house set rate: 0.8C gentle: yes',
  'house set chemistry: LiPo storage: 3.8V floor: 3.6V',
  'answer save title: Bench question: current pack: wren',
  'answer save title: Where text: At the bench by the door.',
  'log charge name: wren put-back: 600mAh from: 3.6V',
  'log charge name: wren put-back: 580mAh from: 3.65V took: 58min',
  'remind me in: 45min',
  'handbook about: storage',
  'lesson',
]
const looking = [
  ...['current pack: wren charger: flightbox', 'kit list', 'house show', 'answer list', 'answer show title: Bench'],
  ...['log show name: wren', 'log export name: wren', 'remind list', 'history', 'lesson', 'time pack: 3S 720 LiHV'],
  ...['undo', 'how long for wren', 'source source: car pack: wren', 'forget me confirm: forget'],
]
const clock = () => new Date('2031-05-04T09:00:00Z')

export async function stockedDatabase(place = ':memory:'): Promise<Database> {
  const database = connect({ dataFolder: place })
  await migrate(database, migrations)
  const asking = await askingOf(commands, { memory: memoryIn(database), clock, noticeboard: fakeBoard().noticeboard })
  for (const question of said) await asking.ask(question, moderator)
  await asking.assistant.settled()
  expect(asking.faults).toEqual([])
  return database
}

/** Each gets a whole reply. Faults are told and logged, but never thrown, and what needs no memory is answered. */
export async function askOfAll(asking: Asking, mayFail = false): Promise<void> {
  for (const question of looking) {
    const reply = await asking.ask(question, moderator)
    expect(reply.headline, question).not.toBe('')
    expect(
      reply.figures.filter(({ value }) => !Number.isFinite(value)),
      question,
    ).toEqual([])
    if (question.startsWith('time') && !(mayFail && reply.fault)) expect(reply.command).toBe('time')
  }
  await asking.assistant.settled()
}
