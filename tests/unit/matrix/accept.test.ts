// What counts as said to us now.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { accept, type Heard, type Situation } from '../../../src/matrix/rooms/accept.ts'

const now_ms = Date.parse('2026-05-02T10:00:00Z')
const heard: Heard = { sender: '@ada:club.test', what: 'm.text', sentAt_ms: now_ms - 1_000 }
const situation: Situation = {
  self: '@chargehand:club.test',
  bots: ['@feed:club.test'],
  joinedAt_ms: now_ms - 3_600_000,
  answered: false,
}
const decided = (said: Partial<Heard>, about: Partial<Situation> = {}) =>
  accept({ ...heard, ...said }, { ...situation, ...about })

describe('accept', () => {
  it('takes text and reactions', () => {
    expect([decided({}), decided({ what: 'm.reaction' })]).toEqual(['accepted', 'accepted'])
  })

  it.each(['m.notice', 'm.emote', 'm.image', 'm.room.member', 'm.room.encrypted', 'undefined'])(
    'leaves %s alone',
    what => expect(decided({ what })).toBe('not a question'),
  )

  it('never hears itself', () => {
    expect(decided({ sender: situation.self })).toBe('own')
  })

  it('hears no account that is known for a bot', () => {
    expect(decided({ sender: '@feed:club.test' })).toBe('a bot')
  })

  it('answers nothing from before its join, nor where it is not', () => {
    expect(decided({}, { joinedAt_ms: heard.sentAt_ms + 1 })).toBe('before our join')
    expect(decided({}, { joinedAt_ms: undefined })).toBe('before our join')
    expect(decided({}, { joinedAt_ms: heard.sentAt_ms })).toBe('accepted')
  })

  it('takes what was said while we were away, whatever the clock of its server shows', () => {
    for (const away_ms of [-3_600_000, 3_000_000]) expect(decided({ sentAt_ms: now_ms - away_ms })).toBe('accepted')
  })

  it('answers nothing twice', () => {
    expect(decided({}, { answered: true })).toBe('answered')
  })

  it('accepts only what is text or reaction, of others, since our join and new, whatever else is so', () => {
    const time_ms = fc.integer({ min: now_ms - 200_000, max: now_ms + 200_000 })
    fc.assert(
      fc.property(
        fc.constantFrom('m.text', 'm.notice', 'm.reaction', 'm.room.encrypted'),
        fc.constantFrom('@ada:club.test', situation.self),
        time_ms,
        fc.option(time_ms, { nil: undefined }),
        fc.boolean(),
        (what, sender, sentAt_ms, joinedAt_ms, answered) => {
          if (accept({ what, sender, sentAt_ms }, { ...situation, joinedAt_ms, answered }) !== 'accepted') return
          expect(['m.text', 'm.reaction']).toContain(what)
          expect(sender).not.toBe(situation.self)
          expect(answered).toBe(false)
          expect(joinedAt_ms).toBeLessThanOrEqual(sentAt_ms)
        },
      ),
    )
  })
})
