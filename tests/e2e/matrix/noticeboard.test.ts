// Cards and reminders in Matrix rooms: pinned beside others' pins, edited in place, left alone where people took them away.

import { EventType } from 'matrix-js-sdk'
import { describe, expect, test } from 'vitest'
import { roomOf, startClub } from '../../support/matrix/club.ts'
import { type Content, until } from '../../support/matrix/member.ts'

const { assistant, self, ada, ben } = await startClub(['ada', 'ben'])

/** A room in which the assistant may pin, with Ben as an ordinary member. */
async function clubRoom(options: { encrypted?: boolean; powerOfAssistant?: number } = {}): Promise<string> {
  const { powerOfAssistant = 50, encrypted = false } = options
  const room = await roomOf([ada, ben], self, { encrypted })
  await ada.client.setPowerLevel(room, self, powerOfAssistant)
  return room
}

async function asked(room: string, question: string, by = ada): Promise<string> {
  const id = await by.say(room, `!charge ${question}`)
  return (await by.said(room, id, self)).body
}

const pinsOf = async (room: string): Promise<string[]> => {
  const content = await ada.client.getStateEvent(room, EventType.RoomPinnedEvents, '').catch(() => ({}))
  return (content as { pinned?: string[] }).pinned ?? []
}

/** Messages of the assistant that answer nobody and replace none. */
const notices = (room: string, by = ada) =>
  by.heard(room, self).filter(event => event.getWireContent()['m.relates_to'] === undefined)

async function savedCard(room: string, title = 'Wren'): Promise<string> {
  const saved = await asked(room, `answer save title: ${title} question: current pack: 3S 720 LiHV charger: 0.5/1/2A`)
  expect(saved).toContain('and it is pinned here')
  const card = await until('the card', () => notices(room).at(-1))
  return card.getId() ?? ''
}

const editsSay = (room: string, id: string, words: string) =>
  until(`an edit that says ${words}`, () =>
    ada.edits(room, id).some(edit => (edit.getOriginalContent()['m.new_content'] as Content)?.body.includes(words)),
  )

describe.each([false, true])('a card, in a room that is encrypted: %s', encrypted => {
  test('is pinned beside what others pinned, edited in place, and taken away with its pin', async () => {
    const room = await clubRoom({ encrypted })
    const others = await ada.say(room, 'Field closed on Sunday')
    await ada.client.sendStateEvent(room, EventType.RoomPinnedEvents, { pinned: [others] }, '')

    const card = await savedCard(room)
    expect(await pinsOf(room)).toEqual([others, card])
    const [shown] = notices(room)
    expect(shown?.getOriginalContent()).toMatchObject({
      msgtype: 'm.text',
      body: expect.stringMatching(/^GO ✅ Wren: 3S LiHV, balance charge, 0\.5\sA/),
      'm.mentions': {},
    })
    expect(await asked(room, 'current pack: 3S 720 LiHV charger: 0.5/1/2A', ben)).toContain(
      `See also: the standard answer "Wren" of this club, https://matrix.to/#/`,
    )

    await asked(room, 'house set chemistry: LiHV rate: 0.6C pinned: change')
    await editsSay(room, card, 'rules of this club')
    expect(await pinsOf(room)).toEqual([others, card])

    await asked(room, 'answer remove title: Wren')
    expect(await pinsOf(room)).toEqual([others])
    await until('the card is redacted', () => ada.client.getRoom(room)?.findEventById(card)?.isRedacted())
  })
})

describe('people’s hands', () => {
  test('a card that was unpinned stays unpinned; one that was deleted comes back on request', async () => {
    const room = await clubRoom()
    const card = await savedCard(room)
    await ada.client.sendStateEvent(room, EventType.RoomPinnedEvents, { pinned: [] }, '')
    await asked(room, 'house set chemistry: LiHV rate: 0.6C pinned: change')
    await editsSay(room, card, 'rules of this club')
    expect(await pinsOf(room)).toEqual([])

    await ada.client.redactEvent(room, card)
    await asked(room, 'house set chemistry: LiHV rate: 0.7C pinned: change')
    await asked(room, 'answer post title: Wren')
    const again = await until('the new card', () => notices(room).find(event => !event.isRedacted()))
    expect(again.getId()).not.toBe(card)
    expect(await pinsOf(room)).toEqual([again.getId()])
  })

  test('without the power level the card stands unpinned, and the answer says what is missing', async () => {
    const room = await clubRoom({ powerOfAssistant: 0 })
    const said = await asked(room, 'answer save title: Where we charge text: At the bench.')
    expect(said).toContain('it stands here, not pinned')
    expect(said).toContain('needs power level 50, and mine is 0')
    expect(notices(room)).toHaveLength(1)
  })

  test('an ordinary member changes nothing', async () => {
    const room = await clubRoom()
    expect(await asked(room, 'answer save title: Mine text: x', ben)).toContain('Only moderators')
    expect(notices(room)).toEqual([])
    expect(await pinsOf(room)).toEqual([])
  })
})

test('a change asked for while it was away is on the card after a start', async () => {
  const room = await clubRoom()
  const card = await savedCard(room)
  await assistant.kill()
  await ada.say(room, '!charge house set chemistry: LiHV rate: 0.6C pinned: change')
  await assistant.start()
  await editsSay(room, card, 'rules of this club')
})

describe('a reminder', () => {
  test('set before a kill comes after it, once, as a message that notifies its person', async () => {
    const room = await clubRoom()
    expect(await asked(room, 'remind me in: 1min place: here', ben)).toContain('I remind you here in 1 min')
    await assistant.kill()
    await assistant.start()
    const reminder = await until('the reminder', () => notices(room, ben)[0], 90_000)
    expect(reminder.getOriginalContent()).toMatchObject({
      msgtype: 'm.text',
      body: expect.stringMatching(/^Check the charge: the 1\smin that you asked for/),
      'm.mentions': { user_ids: [ben.id] },
    })
    await asked(room, 'hello', ben)
    expect(notices(room, ben)).toHaveLength(1)
  }, 120_000)
})
