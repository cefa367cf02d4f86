// An answer that a moderator marks as wrong is struck, and those who have read it are told; nobody else marks any.

import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import { type Asking, askingOf, member, moderator, otherMember } from '../../support/ask.ts'
import { commandNamed } from '../../support/commands.ts'
import { endFaultless } from '../../support/end-faultless.ts'
import { type FakeBoard, fakeBoard } from '../../support/fake-noticeboard.ts'

let board: FakeBoard
let asking: Asking
let message: string
beforeEach(async () => {
  board = fakeBoard()
  asking = await askingOf([commandNamed('help')], { noticeboard: board.noticeboard })
  const posted = await board.noticeboard.post(member.place.id, { reply: await asking.ask('help'), key: 'answer' })
  message = 'message' in posted ? posted.message : ''
  await asking.memory.answered.record({
    place: member.place.id,
    askedBy: member.asker.id,
    questionMessage: 'room:question',
    answerMessage: message,
    question: 'help',
    answeredAt: new Date(),
  })
})
afterEach(() => endFaultless(asking))

const tap = (by: Occasion, id: string) =>
  asking.assistant.tapped({ ...by, asked: { id, at_ms: 0, way: '', openFor_s: 1 } }, message)
const struck = () => board.standing.map(one => one.struck)

test('it is struck, and whoever asked or tapped is told once, with a link; the moderator knows already', async () => {
  for (const [by, id] of [
    [otherMember, 'room:tap-1'],
    [otherMember, 'room:tap-2'],
    [moderator, 'room:tap-3'],
  ] as const)
    await tap(by, id)
  expect(await asking.assistant.markWrong(moderator, message)).toBe(true)
  expect(struck()[0]).toContain('WRONG')
  const [notice, ...others] = board.notices
  expect(others).toEqual([])
  expect(notice?.calls?.toSorted()).toEqual([otherMember.asker.id, member.asker.id].toSorted())
  expect(notice).toMatchObject({ place: member.place.id, links: [`https://example.org/${message}`] })
  expect(notice?.reply.headline).toContain('marked an answer as wrong')
  expect((await asking.memory.answered.byAnswer(message))?.question).toBe('')
})

test('nobody else marks one, nor from elsewhere, nor what is not there', async () => {
  const elsewhere = { ...moderator, place: { id: 'room:field', direct: false } }
  const alone = { ...moderator, place: { ...moderator.place, direct: true } }
  for (const by of [member, elsewhere, alone]) expect(await asking.assistant.markWrong(by, message)).toBe(false)
  expect(await asking.assistant.markWrong(moderator, 'room:nothing')).toBe(false)
  expect(struck()).toEqual([undefined])
  expect(board.notices).toEqual([])
})

test('taps on an answer whose id begins alike are taps on another', async () => {
  await asking.assistant.tapped(
    { ...otherMember, asked: { id: 'room:t', at_ms: 0, way: '', openFor_s: 1 } },
    `${message}0`,
  )
  expect(await asking.memory.answered.readersOf(message)).toEqual([])
})
