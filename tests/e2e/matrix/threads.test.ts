// What goes on from an answer without a prefix: in a thread, as apps write there, and in a direct room.

import { Preset } from 'matrix-js-sdk'
import { expect, test } from 'vitest'
import { roomOf, startClub } from '../../support/matrix/club.ts'
import { until } from '../../support/matrix/member.ts'

const { assistant, self, ada, ben } = await startClub(['ada', 'ben'])
const room = await roomOf([ada, ben], self)
const time = (pack: string) => `time pack: ${pack} current: 1A from: 3.7V`

/** Without a reply of their own making apps name the last message of the thread: https://spec.matrix.org/v1.15/client-server-api/#fallback-for-unthreaded-clients */
function inThread(root: string) {
  const relationOf = (id: string) => ada.client.getRoom(room)?.findEventById(id)?.getWireContent()['m.relates_to']
  const events = ada.client.getRoom(room)?.getLiveTimeline().getEvents() ?? []
  const last = events.findLast(
    event => relationOf(event.getId() ?? '')?.event_id === root && event.isRelation('m.thread'),
  )
  const reply = { 'm.in_reply_to': { event_id: last?.getId() ?? root } }
  return { 'm.relates_to': { rel_type: 'm.thread', event_id: root, is_falling_back: true, ...reply } }
}

const thread = (root: string) => ({
  say: (words: string, by = ada) => by.say(room, words, inThread(root)),
  async asks(words: string, by = ada) {
    const said = await by.said(room, await by.say(room, words, inThread(root)), self)
    expect(said['m.relates_to']).toMatchObject({ rel_type: 'm.thread', event_id: root })
    return said.body
  },
})

async function asked(words: string) {
  const question = await ada.say(room, `!charge ${words}`)
  return { question, answer: (await ada.answer(room, question, self)).getId() ?? '' }
}

test('a thread on the question, behind talk of others that is left alone', async () => {
  const { question } = await asked(time('3S 720 LiHV'))
  const { say, asks } = thread(question)
  const thanks = await say('nice, thank you', ben)
  expect(await asks('and at 0.5A?')).toMatch(/3S 720mAh LiHV.*0\.5A/)
  expect(ada.answersTo(room, thanks, self)).toHaveLength(0)
})

test('a thread on the answer, behind talk, goes on from what was said there last, also after a start', async () => {
  const { say, asks } = thread((await asked(time('3S 720 LiHV'))).answer)
  await say('that is longer than I thought', ben)
  expect(await asks('and at 0.5A?', ben)).toMatch(/3S 720mAh LiHV.*0\.5A/)
  expect(await asks(`!charge ${time('4S 1300 LiPo')}`)).toContain('4S 1300mAh LiPo')
  await say('so be it', ben)
  await assistant.stop()
  await assistant.start()
  expect(await asks('and at 2A?')).toMatch(/4S 1300mAh LiPo.*2A/)
})

test('a thread on talk goes on from the answer that was given in it, and a word opens that', async () => {
  const { say, asks } = thread(await ben.say(room, 'who has a pack to charge?'))
  await asks(`!charge ${time('3S 720 LiHV')}`)
  await say('mine is the same', ben)
  const next = await say('and at 0.5A?')
  const answer = await ada.answer(room, next, self)
  expect(answer.getContent().body).toMatch(/3S\s720mAh\sLiHV.*0\.5A/)
  await say('I see', ben)
  await say('why', ben)
  const opened = await until('the opened answer', () => ada.edits(room, answer.getId() ?? '')[0])
  expect(opened.getOriginalContent()['m.new_content']?.body).toContain('Why:')
})

test('a direct room goes on from what was asked before', async () => {
  const direct = await ben.roomWith(self, { preset: Preset.TrustedPrivateChat, is_direct: true, name: '' })
  await ben.answer(direct, await ben.say(direct, time('4S 2200 LiPo')), self)
  const next = await ben.say(direct, 'and at 2A?')
  expect((await ben.said(direct, next, self)).body).toMatch(/4S 2200mAh LiPo.*2A/)
})
