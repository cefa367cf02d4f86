// Who changed what is told to all; whoever made a change takes it back, while nobody has changed it since.

import { afterEach, beforeEach, expect, test } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import { type Asking, askingOf, member, moderator } from '../../support/ask.ts'
import { type FakeBoard, fakeBoard } from '../../support/fake-noticeboard.ts'

const otherModerator: Occasion = { ...moderator, asker: { id: 'room:per', name: 'Per', moderates: true } }

let now: Date
let board: FakeBoard
let asking: Asking
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

/** Asks a minute later. */
async function asked(question: string, by: Occasion = moderator) {
  now = new Date(now.getTime() + 60_000)
  const { headline } = await asking.ask(question, by)
  await asking.assistant.settled()
  return headline
}

const rules = () => asking.memory.house.rules(moderator.community.id)
const answers = () => asking.memory.answers.list(moderator.community.id)
const kit = async (who: Occasion) => (await asking.memory.members.export(who.asker.id)).kit

test('a rule comes back as it was, one change after the other', async () => {
  await asked('house set chemistry: LiPo rate: 1.5C')
  await asked('house set chemistry: LiPo rate: 1C storage: 3.8V')
  expect(await asked('undo')).toContain('Taken back: LiPo: highest charge rate 1C')
  expect(await rules()).toEqual({ maxRate_C: { LiPo: 1.5 } })
  await asked('undo')
  expect(await rules()).toEqual({})
  expect(await asked('undo')).toContain('nothing')
})

test('an answer that was removed comes back with its card, one that was edited with its words', async () => {
  await asked('answer save title: Bench text: By the door.')
  await asked('answer edit title: Bench new-title: The bench text: In the shed.')
  await asked('undo')
  expect(await answers()).toMatchObject([{ title: 'Bench', content: 'By the door.' }])
  await asked('answer remove title: Bench')
  expect(board.standing).toEqual([])
  await asked('undo')
  expect(await answers()).toMatchObject([{ title: 'Bench', content: 'By the door.' }])
  expect(board.standing).toHaveLength(1)
  await asked('undo')
  expect(await answers()).toEqual([])
  expect(board.standing).toEqual([])
})

test('a card that was moved goes back', async () => {
  await asked('answer save title: Bench text: By the door.')
  await asked('answer move title: Bench', { ...moderator, place: { id: 'room:field', direct: false } })
  expect(board.standing).toMatchObject([{ place: 'room:field' }])
  await asked('undo')
  expect(board.standing).toMatchObject([{ place: moderator.place.id }])
})

test('a member has their own pack back with its charges, for ten minutes', async () => {
  await asked('kit save name: wren pack: 3S 720 LiHV', member)
  await asked('log charge name: wren put-back: 300mAh', member)
  await asked('kit remove name: wren', member)
  expect(await kit(member)).toEqual([])
  await asked('undo', member)
  expect(await kit(member)).toMatchObject([{ name: 'wren', notation: '3S 720mAh LiHV' }])
  expect((await asking.memory.members.export(member.asker.id)).log).toMatchObject([{ charge_Ah: 0.3 }])
  await asked('kit rename name: wren to: robin', member)
  await asked('undo', member)
  expect(await kit(member)).toMatchObject([{ name: 'wren' }])
  await asked('kit remove name: wren', member)
  now = new Date(now.getTime() + 11 * 60_000)
  expect(await asked('undo', member)).toContain('older than ten minutes')
  expect(await kit(member)).toEqual([])
})

test('nobody takes back what another has changed, nor what was changed since', async () => {
  await asked('house set chemistry: LiPo rate: 1.5C')
  expect(await asked('undo', otherModerator)).toContain('nothing')
  await asked('house set chemistry: LiPo rate: 1C', otherModerator)
  expect(await asked('undo')).toContain('changed again since')
  expect(await rules()).toEqual({ maxRate_C: { LiPo: 1 } })
})

test('who moderates no longer takes back nothing of the club', async () => {
  await asked('house set chemistry: LiPo rate: 1C')
  const former = { ...moderator, asker: { ...moderator.asker, moderates: false } }
  expect(await asked('undo', former)).toContain('Only moderators')
  expect(await rules()).toEqual({ maxRate_C: { LiPo: 1 } })
})

test('the history says who, when, what and what it was; own packs are nobody else’s business', async () => {
  await asked('house set chemistry: LiPo rate: 1C')
  await asked('kit save name: wren pack: 3S 720 LiHV', member)
  await asked('kit save name: heron pack: 4S 5000 Li-ion for: club', otherModerator)
  await asked('undo', otherModerator)
  const { headline, working } = await asking.ask('history', member)
  expect([headline, ...working].join('\n')).toBe(
    [
      'The last change here: 2031-05-04 10:04 UTC, Per took a change back: heron (4S 5000mAh Li-ion) removed from the kit.',
      '2031-05-04 10:03 UTC, Per: heron saved as 4S 5000mAh Li-ion (taken back).',
      '2031-05-04 10:01 UTC, Odile: LiPo: highest charge rate 1C (before: LiPo: highest charge rate not set).',
    ].join('\n'),
  )
})

test('who is forgotten stands in no history, and what they changed stays', async () => {
  await asked('house set chemistry: LiPo rate: 1C')
  await asked('forget me confirm: forget')
  const told = await asked('history', member)
  expect(told).not.toContain('Odile')
  expect(told).toContain('highest charge rate 1C')
})

test('a change that fails is neither made nor noted', async () => {
  await asked('answer save title: Bench text: By the door.')
  await asked('answer save title: bench text: Elsewhere.')
  expect(await asking.memory.history.latest(moderator.community.id, 9)).toHaveLength(1)
})
