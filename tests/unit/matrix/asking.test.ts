// The ways to ask in a room, and what is talk among people.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Manner, type Message, readAsking } from '../../../src/matrix/messages/asking.ts'

const self = '@chargehand:club.test'
const room: Manner = { prefix: '!charge', self, name: 'Chargehand', direct: false }
const direct: Manner = { ...room, direct: true }
const said = (body: string, more: Partial<Message> = {}): Message => ({
  body,
  mentions: undefined,
  repliesTo: undefined,
  thread: undefined,
  ...more,
})
const question = 'current 3S 720 LiHV'

describe('readAsking', () => {
  it.each([
    [`!charge ${question}`],
    [`  !CHARGE   ${question}  `],
    [`!charge\n${question}`],
    [`${self} ${question}`],
    [`${self}: ${question}`],
    [`Chargehand: ${question}`],
    [`chargehand, ${question}`],
  ])('hears %j in a room', body => {
    expect(readAsking(said(body), room)).toEqual({ words: question, addressed: true })
  })

  it.each([
    [question],
    ['!chargers are cheap'],
    ['I asked Chargehand yesterday'],
    ['Chargehand said so'],
    ['unchargehand: that'],
  ])('leaves %j to people', body => {
    expect(readAsking(said(body), room)).toBeUndefined()
  })

  it('believes the app about whom a message mentions', () => {
    const mentions = [self]
    expect(readAsking(said(`what about ${question}, Chargehand?`, { mentions }), room)).toEqual({
      words: `what about ${question}, ?`,
      addressed: true,
    })
    expect(readAsking(said(`Chargehand: ${question}`, { mentions: ['@ada:club.test'] }), room)).toBeUndefined()
  })

  it('takes everything in direct messages, as it stands', () => {
    expect(readAsking(said(question), direct)).toEqual({ words: question, addressed: true })
    expect(readAsking(said('what charge rate suits me'), { ...direct, name: 'charge' })).toEqual({
      words: 'what charge rate suits me',
      addressed: true,
    })
  })

  it('takes a reply as one that may change an earlier question, without the quote of older apps', () => {
    const quoted = '> <@chargehand:club.test> Set 0.5 A\n> Verdict: go\n\nat 2A'
    const repliesTo = '$answer'
    expect(readAsking(said(quoted, { repliesTo }), room)).toEqual({ words: 'at 2A', addressed: false, repliesTo })
    expect(readAsking(said('at 2A', { repliesTo, mentions: [self] }), room)).toEqual({
      words: 'at 2A',
      addressed: true,
      repliesTo,
    })
    expect(readAsking(said(`!charge ${question}`, { repliesTo }), room)).toEqual({ words: question, addressed: true })
  })

  it('treats a prefix or a name of any signs as text, and never throws', () => {
    expect(readAsking(said(`.*( ${question}`), { ...room, prefix: '.*(' })?.words).toBe(question)
    const text = fc.string({ unit: 'grapheme', maxLength: 60 })
    fc.assert(
      fc.property(
        text,
        text,
        fc.string({ minLength: 1, maxLength: 20 }),
        fc.boolean(),
        (body, name, prefix, isDirect) => {
          readAsking(said(body), { self, name, prefix, direct: isDirect })
        },
      ),
    )
  })
})
