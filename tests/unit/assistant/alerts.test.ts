// What moderators are told unasked: emergencies and unsound packs, once each, in the room that they chose, whatever breaks.

import { afterEach, beforeEach, expect, test } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import { createAssistant } from '../../../src/assistant/running/assistant.ts'
import { type Asking, askingOf, member, moderator, otherMember } from '../../support/ask.ts'
import { type FakeBoard, fakeBoard } from '../../support/fake-noticeboard.ts'

let board: FakeBoard
let asking: Asking
let now: Date
const clock = () => now
const office: Occasion = { ...moderator, place: { id: 'room:moderators', direct: false } }
const linked = (by: Occasion): Occasion => ({
  ...by,
  asked: {
    id: `room:${by.asker.name}`,
    at_ms: now.getTime(),
    way: '',
    openFor_s: 60,
    link: 'https://example.org/asked',
  },
})

beforeEach(async () => {
  now = new Date('2031-05-04T10:00:00Z')
  board = fakeBoard()
  asking = await askingOf(commands, { noticeboard: board.noticeboard, clock })
})
afterEach(async () => {
  await asking.assistant.settled()
  await asking.memory.close()
})

async function ask(question: string, by: Occasion = linked(member)) {
  const reply = await asking.ask(question, by)
  await asking.assistant.settled()
  return reply
}
const chosen = () => ask('house set alerts: here', office)
const told = () => board.notices.map(({ place, links, reply }) => [place, reply.headline, links])

test.each([
  ['my pack is on fire', /^EMERGENCY, fire or smoke: Wim tells of it/],
  ['I burned my hand at the charger', /^EMERGENCY, somebody is hurt: Wim/],
  ['my 3S 720 lipo is all puffed up, how do I charge it', /^Unsound pack, swollen: Wim/],
])('"%s" is told, with a link and none of its words', async (words, headline) => {
  await chosen()
  await ask(words)
  expect(told()).toEqual([['room:moderators', expect.stringMatching(headline), ['https://example.org/asked']]])
  expect(JSON.stringify(board.notices)).not.toContain(words.slice(-12))
})

test('told again soon by the same person it is the same; another person, or later, is told anew', async () => {
  await chosen()
  for (const _ of [1, 2, 3]) await ask('my pack is on fire')
  expect(told()).toHaveLength(1)
  await ask('my pack is on fire', linked(otherMember))
  expect(told()).toHaveLength(2)
  now = new Date(now.getTime() + 20 * 60_000)
  await ask('my pack is on fire')
  expect(told()).toHaveLength(3)
})

test('nobody is told where no room was chosen, of what was lifted, of another club, or of what is no such danger', async () => {
  await ask('my pack is on fire')
  await chosen()
  await ask('my pack is on fire', { ...linked(member), community: { id: 'room:other' } })
  await ask('my pack came down in a crash')
  await ask('how do I charge a 3S 720 lihv')
  await ask('house set alerts: none', office)
  await ask('yes', office)
  now = new Date(now.getTime() + 20 * 60_000)
  await ask('my pack is on fire')
  expect(told()).toEqual([])
  expect(asking.faults).toEqual([])
})

test('what is asked on of an answer tells nothing anew', async () => {
  await chosen()
  const { question = '' } = await ask('my 3S 720 lipo is all puffed up, can I charge it at 1A')
  expect(told()).toHaveLength(1)
  now = new Date(now.getTime() + 20 * 60_000)
  await ask(question === '' ? 'current pack: 3S 720 LiPo told: swollen' : question)
  expect(told()).toHaveLength(1)
})

test('while the memory is away it is told all the same', async () => {
  await chosen()
  await ask('house show')
  const { due } = asking.memory
  const away = { ...due, add: () => Promise.reject(Object.assign(new Error('away'), { code: 'ECONNREFUSED' })) }
  Object.assign(asking.memory, { due: away })
  const assistant = createAssistant({
    commands,
    memory: asking.memory,
    noticeboard: board.noticeboard,
    clock,
    knownRules: new Map([[member.community.id, { moderatorsRoom: 'room:moderators' }]]),
    onFault: () => {},
  })
  await assistant.answer('my pack is on fire', linked(member))
  await assistant.settled()
  expect(told()).toHaveLength(1)
  Object.assign(asking.memory, { due })
})

test('what a broken platform kept back is told when it is there again', async () => {
  await chosen()
  board.hindered.platform = new Error('gone')
  await ask('my pack is on fire')
  expect(told()).toEqual([])
  delete board.hindered.platform
  now = new Date(now.getTime() + 30_000)
  await asking.assistant.strike()
  expect(told()).toHaveLength(1)
})

test('only a moderator chooses the room', async () => {
  expect((await ask('house set alerts: here')).problem?.what).toContain('Only moderators')
})
