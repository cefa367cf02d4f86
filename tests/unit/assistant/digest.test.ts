// The digest of a week: off unless a club wants it, in its moderators' room, counting what was asked and quoting nothing.

import { afterEach, beforeEach, expect, test } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import { type Asking, askingOf, member, moderator, otherMember } from '../../support/ask.ts'
import { type FakeBoard, fakeBoard } from '../../support/fake-noticeboard.ts'

let board: FakeBoard
let asking: Asking
let now: Date
const office: Occasion = { ...moderator, place: { id: 'room:moderators', direct: false } }

beforeEach(async () => {
  now = new Date('2031-05-04T10:00:00Z')
  board = fakeBoard()
  asking = await askingOf(commands, { noticeboard: board.noticeboard, clock: () => now })
})
afterEach(async () => {
  await asking.assistant.settled()
  expect(asking.faults).toEqual([])
  await asking.memory.close()
})

let asked = 0
async function ask(question: string, by: Occasion = member) {
  asked += 1
  const link = `https://example.org/asked-${asked}`
  await asking.ask(question, {
    ...by,
    asked: { id: `room:asked-${asked}`, at_ms: now.getTime(), way: '', openFor_s: 60, link },
  })
  await asking.assistant.settled()
  return link
}
async function wait(days: number) {
  now = new Date(now.getTime() + days * 86_400_000)
  await asking.assistant.strike()
}
const digests = () => board.notices.filter(({ reply }) => reply.headline.startsWith('The last seven days'))

test('comes a week after it was asked for, and each week again, with counts by family and links', async () => {
  await ask('house set alerts: here digest: weekly', office)
  for (const question of [
    'may I charge alone while I sleep',
    'can I leave a charge running while I am at the shops',
    'current pack: 3S 720 LiPo charger: 2A',
  ])
    await ask(question)
  const unread = await ask('qwertz uiop asdf', otherMember)
  await wait(6.9)
  expect(digests()).toEqual([])
  await wait(0.2)
  const [first] = digests()
  expect(first).toMatchObject({ place: 'room:moderators', links: [unread] })
  expect(first?.reply.headline).toMatch(/here: 3 refused, 1 not understood, 0 marked wrong\./)
  expect(first?.reply.lines[1]).toBe('Refused: nobody with the charge 2, numbers out of limits 1.')
  expect(JSON.stringify(first)).not.toContain('qwertz')
  await wait(7.1)
  expect(digests()[1]?.reply.headline).toContain('0 refused, 0 not understood, 0 marked wrong')
})

test('is off by default: nothing is kept, and nothing comes', async () => {
  await ask('house set alerts: here', office)
  await ask('may I charge alone while I sleep')
  expect(await asking.memory.noticed.of(member.community.id)).toEqual([])
  await wait(8)
  expect(digests()).toEqual([])
})

test('ends when it is lifted, and comes again when it is wanted again', async () => {
  await ask('house set alerts: here digest: weekly', office)
  await ask('house set digest: none', office)
  await wait(8)
  expect(digests()).toEqual([])
  await ask('house set digest: weekly', office)
  await wait(7.1)
  expect(digests()).toHaveLength(1)
})

test('counts what was marked as wrong', async () => {
  await ask('house set alerts: here digest: weekly', office)
  const posted = await board.noticeboard.post(member.place.id, { reply: await asking.ask('help'), key: 'answer' })
  await asking.assistant.markWrong(moderator, 'message' in posted ? posted.message : '')
  await wait(7.1)
  expect(digests()[0]?.reply.headline).toContain('1 marked wrong')
})

test('what it tells of is dropped soon after', async () => {
  await ask('house set alerts: here digest: weekly', office)
  await ask('may I charge alone while I sleep')
  await asking.memory.forgetOld(new Date(now.getTime() + 16 * 86_400_000))
  expect(await asking.memory.noticed.of(member.community.id)).toEqual([])
})
