// Reminders for a time of day: by the club's clock, by the one that is told, put off by another time behind them.

import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { linesOf } from '../../../src/assistant/layers/short.ts'
import { type Asking, askingOf, member, moderator, otherMember } from '../../support/ask.ts'
import { endFaultless } from '../../support/end-faultless.ts'
import { type FakeBoard, fakeBoard } from '../../support/fake-noticeboard.ts'

let board: FakeBoard
let asking: Asking
let now: Date
beforeEach(async () => {
  now = new Date('2031-05-04T10:42:10Z')
  board = fakeBoard()
  asking = await askingOf(commands, { noticeboard: board.noticeboard, clock: () => now })
})
afterEach(() => endFaultless(asking))

const wait = (minutes: number) => {
  now = new Date(now.getTime() + minutes * 60_000)
}
const inVienna = () => asking.memory.house.change(member.community.id, [{ rule: 'clock', value: 'Europe/Vienna' }])
async function done(question: string, by = member) {
  const reply = await asking.ask(question, by)
  expect(reply.problem).toBeUndefined()
  return reply
}
/** When each is due, in UTC. */
const ends = async () =>
  (await asking.memory.reminders.of(member.asker.id))
    .filter(({ kind }) => kind === 'end')
    .map(({ dueAt }) => dueAt.toISOString().slice(11, 16))

describe('by the clock of the club', () => {
  beforeEach(inVienna)

  test.each([
    ['remind me at: 13:20', '11:20', 'at 13:20, in 38 min,'],
    ['put a reminder for me at 13:20, second set comes off then', '11:20', 'at 13:20, in 38 min,'],
    ['remind me at half past nine', '19:30', 'at 21:30, in 8 h 48 min,'],
    ['remind me at 9.30', '19:30', 'at 21:30, in 8 h 48 min,'],
    ['remind me at 9:30 am', '07:30', 'tomorrow at 9:30, in 20 h 48 min,'],
    ['remind me at 1:20 pm', '11:20', 'at 13:20, in 38 min,'],
    ['remind me at: 1:20 pm', '11:20', 'at 13:20, in 38 min,'],
    ['remind me at 09:30', '07:30', 'tomorrow at 9:30,'],
    ['remind me at noon', '10:00', 'tomorrow at 12:00,'],
    ['remind me in 45 min', '11:27', 'at 13:27, in 45 min,'],
  ])('%s', async (question, due, said) => {
    expect((await done(question)).headline).toContain(said)
    expect(await ends()).toEqual([due])
  })

  test('an hour that both halves of the day have is the next, which is said', async () => {
    expect((await done('remind me at half past two')).headline).toContain('Am or pm was not said: 14:30 is the next.')
    for (const sure of ['remind me at half past two pm', 'remind me at 14:30'])
      expect((await done(sure)).headline).not.toContain('Am or pm')
  })

  test('is a minute away at least, and as far as its day', async () => {
    expect((await asking.ask('remind me at: 12:43')).problem?.what).toContain('in 50 s')
    const tuesday = await done('remind me at: tuesday 13:20')
    expect(tuesday.headline).toMatch(/at 13:20, in \d/)
    expect((await done('remind me at: 12:42 pm')).headline).toContain('tomorrow at 12:42, in 24 h')
  })

  test.each([
    ['2031-03-29T23:30:00Z', 'remind me at 4 am', '02:00', 'at 4:00, in 2 h 30 min'],
    ['2031-10-25T22:30:00Z', 'remind me at 4 am', '03:00', 'at 4:00, in 4 h 30 min'],
  ])('counts over a change of the clocks: %s', async (at, question, due, said) => {
    now = new Date(at)
    expect((await done(question)).headline).toContain(said)
    expect(await ends()).toEqual([due])
  })

  test('is given for its time, and listed by it', async () => {
    await done('remind me at 13:20')
    expect((await done('remind list')).working[1]).toMatch(/: at 13:20, in 38 min, asks you to check the charge\.$/)
    wait(38)
    await asking.assistant.strike()
    expect(board.notices.at(-1)?.reply.headline).toBe(
      'Check the charge: your reminder for 13:20, 38 min after you asked.',
    )
  })
})

describe('where no clock is known', () => {
  test('both ways are offered, and each is taken in answer', async () => {
    for (const [answer, due] of [
      ['it is 12:40', '11:22'],
      ['12:40', '11:22'],
      ['its a quarter to one', '11:17'],
      ['in 30 min', '11:12'],
    ] as const) {
      const reply = await asking.ask('remind me at 13:20')
      expect(linesOf(reply)[0]).toContain(
        'I do not see the clock where you are: say in how long, or tell me what time it is now: "it is 12:40".',
      )
      expect(await ends()).toEqual([])
      await done(answer)
      expect(await ends()).toEqual([due])
      await done('remind cancel')
    }
  })

  test.each(['remind me at 14:00', 'no, 14:00', 'at 14:00'])('another time is no answer to that: %s', async then => {
    await asking.ask('remind me at 13:20')
    expect((await asking.ask(then)).problem?.what).toContain('do not see the clock')
    expect((await done('it is 12:40')).headline).toContain('at 14:00, in 1 h 20 min')
  })

  test('what it asked for is not taken of somebody else', async () => {
    await asking.ask('remind me at 13:20')
    expect((await asking.ask('it is 12:40', otherMember)).command).not.toBe('remind me')
  })

  test.each([
    ['it is 12:40, remind me at 13:20', 'at 13:20, in 40 min'],
    ['remind me at 13:20, it is 12:40 now', 'at 13:20, in 40 min'],
    ["it's half past nine, remind me at ten", 'at 10:00, in 30 min'],
    ["it's 9:40, remind me at 10 pm", 'at 22:00, in 20 min'],
    ['remind me at: 0:10 now: 23:40', 'tomorrow at 0:10, in 30 min'],
    ['it is 12:40, remind me in 30 min', 'at 13:10, in 30 min'],
  ])('it is worked out of the one that is told: %s', async (question, said) => {
    expect((await done(question)).headline).toContain(said)
  })

  test('the one that was told still holds later, and no longer than a reminder by it', async () => {
    await done('it is 12:40, remind me at 13:20')
    wait(10)
    expect((await done('better half past one')).headline).toContain('at 13:30, in 40 min')
    await done('remind cancel')
    expect((await asking.ask('remind me at 13:40')).problem?.what).toContain('do not see the clock')
  })

  test('the one that is told stands above that of the club', async () => {
    await inVienna()
    expect((await done('it is 15:40, remind me at 16:00')).headline).toContain('at 16:00, in 20 min')
  })
})

describe('behind a reminder that is set', () => {
  beforeEach(inVienna)

  test.each([
    ['remind me at 13:20', 'better half past one', ['11:30']],
    ['remind me at 13:20', 'better quarter to ten', ['19:45']],
    ['remind me at 13:20', 'no, 14:10', ['12:10']],
    ['remind me at 13:20', 'make it 14:10', ['12:10']],
    ['remind me at 13:20', 'no, remind me at 14:10', ['12:10']],
    ['remind me at 13:20', 'better in 50 min', ['11:32']],
    ['remind me in 45 min', 'better 14:10', ['12:10']],
    ['remind me in 45 min', 'and at 14:10 too', ['11:27', '12:10']],
    ['remind me at 13:20', 'remind me at 14:10', ['11:20', '12:10']],
    ['remind me at 13:20', 'second set comes off at 14:10', ['11:20', '12:10']],
    ['remind me at 13:20', 'i would like it at 14:10', ['12:10']],
    ['remind me at 13:20', '14:10', ['12:10']],
    ['remind me at 13:20', 'thanks, see you at 14:10', ['11:20']],
  ])('%s, %s', async (first, then, due) => {
    await done(first)
    await done(then)
    expect(await ends()).toEqual(due)
  })

  test('another time leaves the place as it was', async () => {
    await done('remind me in: 45min place: here')
    expect((await done('better 14:10')).headline).toContain('I remind you here at 14:10')
  })

  test('another time that cannot be leaves the first', async () => {
    await done('remind me at 13:20')
    expect((await asking.ask('no, 12:43')).problem?.what).toContain('in 50 s')
    expect(await ends()).toEqual(['11:20'])
  })
})

describe('the clock of a club', () => {
  const zone = async () => (await asking.memory.house.rules(member.community.id)).clock

  test.each([
    ['house set clock: Europe/Vienna', 'Europe/Vienna'],
    ['our club is in Europe/Vienna', 'Europe/Vienna'],
    ['we are on Vienna time', 'Europe/Vienna'],
    ['our field is on UTC+2', '+02:00'],
  ])('%s: set by moderators, shown, and taken away', async (words, expected) => {
    expect((await asking.ask(words)).problem?.what).toContain('Only moderators')
    await done(words, moderator)
    expect(await zone()).toBe(expected)
    expect((await done('house show')).working).toContain(`clock: ${expected}`)
    expect((await done('remind me at 13:20')).headline).toContain('at 13:20, in 38 min')
    await done('house set clock: none', moderator)
    expect(await zone()).toBeUndefined()
  })

  test('that nobody knows is refused with an example', async () => {
    const { problem, followUps } = await asking.ask('house set clock: Middle Earth', moderator)
    expect(problem).toMatchObject({ token: 'Middle Earth', example: 'Europe/Vienna' })
    expect(followUps).toMatchObject([{ question: 'house set clock: Europe/Vienna' }])
    expect(await zone()).toBeUndefined()
  })

  test('is offered while it is typed', async () => {
    expect(await asking.assistant.complete('house set', 'clock', 'vie', moderator)).toContain('Europe/Vienna')
    expect(await asking.assistant.complete('house set', 'clock', 'no', moderator)).toContain('none')
  })
})
