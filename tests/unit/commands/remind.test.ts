// Reminders in use: set for a charge that starts now, given when due, once, and by a way that is open.

import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { linesOf } from '../../../src/assistant/layers/short.ts'
import { createAssistant } from '../../../src/assistant/running/assistant.ts'
import { type Asking, askingOf, member, otherMember } from '../../support/ask.ts'
import { commandNamed } from '../../support/commands.ts'
import { endFaultless } from '../../support/end-faultless.ts'
import { type FakeBoard, fakeBoard } from '../../support/fake-noticeboard.ts'

const time = commandNamed('time')
const remindCancel = commandNamed('remind cancel')
const remindList = commandNamed('remind list')
const remindMe = commandNamed('remind me')

const commands = [time, remindMe, remindList, remindCancel]
const charge = 'time pack: 3S 720 LiHV current: 1A from: 3.7V per cell'

let board: FakeBoard
let asking: Asking
let now: Date
const clock = () => now
const wait = (minutes: number) => {
  now = new Date(now.getTime() + minutes * 60_000)
}

beforeEach(async () => {
  now = new Date('2031-05-04T10:00:00Z')
  board = fakeBoard()
  asking = await askingOf(commands, { noticeboard: board.noticeboard, clock })
})
afterEach(() => endFaultless(asking))

const faults: unknown[] = []
/** As after a restart: an assistant of its own on the same memory. */
const assistantOn = (noticeboard = board.noticeboard) =>
  createAssistant({ commands, memory: asking.memory, noticeboard, clock, onFault: fault => faults.push(fault) })
const strike = () => assistantOn().strike()
afterEach(() => {
  expect(faults.splice(0)).toEqual([])
})

async function done(question: string, by = member) {
  const reply = await asking.ask(question, by)
  expect(reply.problem).toBeUndefined()
  return reply
}
const problemOf = async (question: string, by = member) => (await asking.ask(question, by)).problem
const said = () => board.notices.map(({ reply }) => reply.headline)

describe('a reminder that is changed', () => {
  test.each([
    ['remind me in 45 min', 'make it 50', 1, 50],
    ['remind me in 45 min', 'no, 30 min', 1, 30],
    ['remind me in 45 min', 'and in 2 hours too', 2, 120],
  ])('%s, %s: %d to come', async (first, then, count, last_min) => {
    await done(first)
    await done(then)
    const ends = (await asking.memory.reminders.of(member.asker.id)).filter(({ kind }) => kind === 'end')
    expect(ends).toHaveLength(count)
    expect(ends.at(-1)?.dueAt).toEqual(new Date(now.getTime() + last_min * 60_000))
  })
})

describe('a reminder for the charge that was spoken of', () => {
  test.each([
    ['how long for a 3s 2200 lipo at 2.2A from 3.7V', 'okay give me a shout when its done'],
    ['6s 5000 lipo at 5A how long', 'ping me once its full'],
    ['charging a 3s 2100 lipo now at 2.1A, how long', "let me know when it's finished"],
    ['how long for a 3s 850 lipo', 'set an alarm for when its ready please'],
  ])('%s, %s', async (first, then) => {
    await done(first)
    expect((await done(then)).question).toMatch(/^remind me for: time pack: /)
    const reminders = await asking.memory.reminders.of(member.asker.id)
    expect(reminders.filter(({ kind }) => kind === 'end')).toHaveLength(1)
  })
})

describe('a reminder after a time', () => {
  test('asks first whether somebody is with the charge, then to check it', async () => {
    const { headline, cautions } = await done('remind me in: 45min')
    expect(headline).toBe(
      'I remind you in a direct message in 45 min to check the charge, and in 15 min whether you are still with it. A reminder does not watch the pack, and may come late or not at all: stay with it.',
    )
    expect(cautions.map(({ key }) => key)).toContain('stayWithIt')
    wait(14)
    await strike()
    expect(said()).toEqual([])
    wait(1)
    await strike()
    expect(said()).toEqual(['Are you still with the charge? Feel the pack now: stop if it is hot, swells or smells.'])
    wait(30)
    await strike()
    expect(said()[1]).toBe('Check the charge: the 45 min that you asked for are over.')
    expect(board.notices).toHaveLength(2)
    expect(await asking.memory.reminders.of(member.asker.id)).toEqual([])
  })

  test('comes where it was set if that is wished, and calls the one who set it', async () => {
    await done('remind me in: 5min place: here')
    wait(5)
    await strike()
    expect(board.notices).toMatchObject([{ place: 'room:bench-talk', calls: ['room:wim'] }])
  })

  test.each(['remind me in 45 min', 'remind me in: 0.75h', 'please remind me in 45 minutes'])(
    'may be asked as: %s',
    async question => {
      expect((await done(question)).figures[0]).toMatchObject({ key: 'remindIn', value: 2700 })
    },
  )

  test('in days is of no charge: one comes, and speaks of none', async () => {
    const { headline, assumed } = await done('nudge me in three months to check the groups')
    expect([headline, assumed]).toEqual([
      'I remind you in a direct message in 90 days. It may come late or not at all.',
      [],
    ])
    expect((await done('remind list')).working).toEqual([expect.stringMatching(/^\w{4}: in 90 days\.$/)])
    wait(90 * 24 * 60)
    await strike()
    expect(said()).toEqual(['You wanted to be reminded: 90 days are over.'])
  })

  test('so short that both would come together is one', async () => {
    await done('remind me in: 9min')
    expect(await asking.memory.reminders.of(member.asker.id)).toHaveLength(1)
  })
})

describe('a reminder for a time question', () => {
  test('comes at the earliest end, and says how long it may need', async () => {
    const timed = (await done(charge)).figures.find(({ key }) => key === 'chargeTime')
    const { figures, assumed } = await done(`remind me for: ${charge}`)
    // As it is said at the bench, and never later.
    expect(figures[0]?.value).toBe(Math.floor((timed?.low ?? 0) / 60) * 60)
    expect(assumed).toContain('the charge starts now')
    wait(15)
    await strike()
    wait(Math.ceil((timed?.low ?? 0) / 60) - 15)
    await strike()
    expect(said()).toHaveLength(2)
    expect(said()[1]).toMatch(/^Check the charge: it may need \d+ min to .*min, and \d+ min have gone/)
    expect(board.notices[1]?.reply.readAs).toContain('time pack: 3S 720mAh LiHV')
  })

  test('is offered under its answer, and what is offered works', async () => {
    const offered = (await done(charge)).followUps.find(({ label }) => label === 'Remind me')
    expect((await done(offered?.question ?? '')).headline).toContain('I remind you')
    const reminder = (await asking.memory.reminders.of(member.asker.id))[0]
    expect((await done(reminder?.about ?? '')).question).toBe((await done(charge)).question)
  })

  test('is neither offered nor set for what must not be charged', async () => {
    const hurried = 'time pack: 3S 720 LiHV current: 3A from: 3.7V per cell'
    expect((await done(hurried)).followUps.map(({ label }) => label)).not.toContain('Remind me')
    const reply = await done(`remind me for: ${hurried}`)
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toContain('No reminder is set')
    expect((await done('remind me for: time pack: 3S 720 LiHV from: 2.1V per cell')).verdict).toBe('do not charge')
    expect(await asking.memory.reminders.of(member.asker.id)).toEqual([])
  })

  test('asks nothing but times', async () => {
    await done('remind me in: 45min')
    expect(await problemOf('remind me for: remind cancel')).toBeDefined()
    expect(await problemOf('remind me for: time pack: 3S')).toBeDefined()
    expect(await asking.memory.reminders.of(member.asker.id)).toHaveLength(2)
  })
})

describe('the way that was chosen', () => {
  test.each(['remind me in: 5min place: direct', 'remind me in: 5min'])('direct: %s', async question => {
    expect((await done(question)).headline).toContain('in a direct message')
    wait(5)
    await strike()
    expect(board.notices).toMatchObject([{ person: 'room:wim' }])
  })

  test('is direct where only the asker sees the answer', async () => {
    await done('remind me in: 5min', { ...member, place: { id: 'room:bench-talk', direct: true } })
    wait(5)
    await strike()
    expect(board.notices).toMatchObject([{ person: 'room:wim' }])
  })

  test('direct where the place is closed, and says what is missing there', async () => {
    await done('remind me in: 5min place: here')
    board.hindered.post = 'Closed.'
    wait(5)
    await strike()
    expect(board.notices).toMatchObject([{ person: 'room:wim' }])
    expect(said()[0]).toMatch(/^Check the charge: .* Closed\. A moderator there can change that\.$/)
  })

  test('where direct messages are closed the place hears only that', async () => {
    await done(`remind me for: ${charge}`)
    board.hindered.direct = 'Closed.'
    wait(15)
    await strike()
    expect(board.notices).toMatchObject([{ place: 'room:bench-talk', calls: ['room:wim'] }])
    expect(board.notices.flatMap(({ reply }) => linesOf(reply))).toEqual(['I could not reach you in private.'])
    expect(JSON.stringify(board.notices)).not.toContain('3S')
  })

  test('where both are closed, the log has it, and it is not tried for ever', async () => {
    await done('remind me in: 5min')
    Object.assign(board.hindered, { post: 'Closed.', direct: 'Closed too.' })
    wait(5)
    await strike()
    expect(String(faults.splice(0)[0])).toContain('Closed too. Closed.')
    wait(60)
    await strike()
  })
})

describe('each comes once', () => {
  test('however many replicas look at once', async () => {
    for (let at = 0; at < 5; at += 1) await done('remind me in: 5min')
    wait(5)
    await Promise.all([strike(), strike(), strike(), strike()])
    await strike()
    expect(board.notices).toHaveLength(5)
  })

  test('after a restart, and says that it is late', async () => {
    await done('remind me in: 45min')
    wait(70)
    await strike()
    wait(70)
    await strike()
    expect(said()).toEqual([
      'Check the charge: the 45 min that you asked for are over. This comes 25 min late: I could not send it before.',
    ])
  })

  test('of a charge that ended days ago nothing is said', async () => {
    await done('remind me in: 45min')
    wait(3 * 24 * 60)
    await strike()
    expect(said()).toEqual([])
    expect(await asking.memory.reminders.of(member.asker.id)).toEqual([])
  })

  test('a platform that fails is tried again when the lease is over', async () => {
    await done('remind me in: 5min')
    board.hindered.platform = new Error('no connection')
    wait(5)
    await strike()
    expect(faults.splice(0)).toHaveLength(1)
    delete board.hindered.platform
    await strike()
    expect(said()).toEqual([])
    wait(2)
    await strike()
    expect(said()).toHaveLength(1)
  })

  test('a send that outlasts its lease is not begun a second time', async () => {
    await done('remind me in: 5min place: direct')
    const { promise: open, resolve } = Promise.withResolvers<void>()
    const { promise: begun, resolve: begin } = Promise.withResolvers<void>()
    const slow = assistantOn({
      ...board.noticeboard,
      direct: async (person, notice) => {
        begin()
        await open
        return board.noticeboard.direct(person, notice)
      },
    })
    wait(5)
    const first = slow.strike()
    await begun
    wait(5)
    const second = slow.strike()
    resolve()
    await Promise.all([first, second])
    expect(board.notices).toHaveLength(1)
  })
})

describe('list and cancel', () => {
  test('show and drop the asker’s own', async () => {
    await done('remind me in: 45min')
    await done('remind me in: 9min', otherMember)
    const { working, headline } = await done('remind list')
    expect(headline).toBe('Reminders to come: 2.')
    expect(working[0]).toMatch(/^[a-z2-9]{4}: in 15 min, asks whether/)
    const code = working[0]?.slice(0, 4)
    expect((await done(`remind cancel code: ${code}`, otherMember)).headline).toBe('There was nothing to cancel.')
    expect((await done(`remind cancel code: ${code}`)).headline).toBe('Cancelled: 2 reminders.')
    expect((await done('remind cancel', otherMember)).headline).toBe('Cancelled: one reminder.')
    wait(60)
    await strike()
    expect(said()).toEqual([])
  })

  test('forgetting a person cancels theirs', async () => {
    await done('remind me in: 45min')
    await asking.memory.members.forget(member.asker.id)
    wait(60)
    await strike()
    expect(said()).toEqual([])
  })
})

describe('is refused', () => {
  test.each([
    ['remind me', 'how long'],
    ['remind me in: 45min for: time pack: 3S 720 LiHV', 'one of these'],
    ['remind me in: 45min at: 13:20', 'one of these'],
    ['remind me at: tomorrow', 'one of these'],
    ['remind me at: 25:00', 'time of day'],
    ['remind me in: 45', 'unit'],
    ['remind me in: 30s', '1 min'],
    ['remind me in: 9000h', '366 days'],
    ['remind me in: 45min place: moon', 'here'],
    ['remind cancel code: nonsense', 'four'],
  ])('%s', async (question, hint) => {
    expect(JSON.stringify(await problemOf(question))).toContain(hint)
  })

  test('more than one person needs', async () => {
    for (let at = 0; at < 10; at += 1) await done('remind me in: 45min')
    expect((await problemOf('remind me in: 45min'))?.what).toContain('20')
  })

  test('where nothing can be said first', async () => {
    const mute = await askingOf(commands, { clock })
    expect((await mute.ask('remind me in: 45min')).problem?.what).toContain('only answer')
    expect((await mute.ask(charge)).followUps.map(({ label }) => label)).not.toContain('Remind me')
    await mute.memory.close()
  })
})
