// What a question changes is done once, and its reply delivered, however often it comes and whatever breaks.

import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Way } from '../../../src/assistant/due/inbox.ts'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import type { Reply } from '../../../src/assistant/reply.ts'
import { createAssistant } from '../../../src/assistant/running/assistant.ts'
import type { Memory } from '../../../src/memory/memory.ts'
import { member, moderator } from '../../support/ask.ts'
import { fakeBoard } from '../../support/fake-noticeboard.ts'
import { openTestMemory } from '../../support/test-memory.ts'

let memory: Memory
let now: Date
let faults: unknown[]
let sent: { id: string | undefined; reply: Reply }[]
let way: Way
beforeEach(async () => {
  memory = await openTestMemory()
  now = new Date()
  faults = []
  sent = []
  way = {
    ready: () => true,
    deliver: async ({ asked }, reply) => {
      sent.push({ id: asked?.id, reply })
      return 'delivered'
    },
  }
})
afterEach(() => memory.close())

const wait = (s: number) => {
  now = new Date(now.getTime() + s * 1000)
}
/** As after a restart, where it is called again. */
const assistantOn = (on = memory) =>
  createAssistant({
    commands,
    memory: on,
    noticeboard: fakeBoard().noticeboard,
    ways: new Map([['room', way]]),
    clock: () => now,
    onFault: fault => faults.push(fault),
  })
/** Asked before the assistant started, as what comes again is. */
const asked = (id: string, by: Occasion = member, at_ms = Date.now() - 60_000): Occasion => ({
  ...by,
  asked: { id: `room:${id}`, at_ms, way: { line: id }, openFor_s: 600 },
})
const remindMe = 'remind me in: 45min'
const reminders = () => memory.reminders.of(member.asker.id)
const stored = async (id: string) => JSON.stringify((await memory.due.find(`room:${id}`)) ?? null)

test('the same question twice changes once, and is answered the same', async () => {
  const first = await assistantOn().answer(remindMe, asked('1'))
  const again = await assistantOn().answer(remindMe, asked('1'))
  expect(first.problem).toBeUndefined()
  expect(JSON.parse(JSON.stringify(again))).toEqual(JSON.parse(JSON.stringify(first)))
  expect(await reminders()).toHaveLength(2)
})

test('twenty times at once changes once', async () => {
  const assistant = assistantOn()
  const replies = await Promise.all(Array.from({ length: 20 }, () => assistant.answer(remindMe, asked('1'))))
  expect(new Set(replies.map(({ headline }) => headline)).size).toBe(1)
  expect(await reminders()).toHaveLength(2)
  expect(faults).toEqual([])
})

test('once it is delivered nothing of it is left but that it was done', async () => {
  const assistant = assistantOn()
  await assistant.answer(remindMe, asked('1'))
  expect(await stored('1')).toMatch(/remind.*wim/)
  await assistant.delivered(asked('1'))
  expect(await stored('1')).not.toMatch(/remind|wim/)
  wait(3600)
  await assistant.strike('question')
  expect(sent).toEqual([])
  const again = await assistantOn().answer(remindMe, asked('1'))
  expect(again.problem?.what).toBe('That was done before, and answered.')
  expect(await reminders()).toHaveLength(2)
})

test('what was acted on and not delivered is delivered by whoever comes next', async () => {
  const first = await assistantOn().answer(remindMe, asked('1'))
  const next = assistantOn()
  await next.strike('question')
  expect(sent).toEqual([])
  wait(31)
  await next.strike('question')
  await next.strike('question')
  expect(sent.map(({ id, reply }) => [id, reply.headline])).toEqual([['room:1', first.headline]])
  expect(faults).toEqual([])
  expect(await reminders()).toHaveLength(2)
})

test('what was stored and not acted on is done by whoever comes next', async () => {
  const cut = { ...memory, together: () => new Promise<never>(() => {}) }
  void assistantOn(cut).answer(remindMe, asked('1'))
  await expect.poll(() => stored('1')).toContain('remind me in: 45min')
  expect(await reminders()).toEqual([])
  wait(31)
  await assistantOn().strike('question')
  expect(sent).toHaveLength(1)
  expect(await reminders()).toHaveLength(2)
})

test('what was stored and not acted on is done when it comes again', async () => {
  const cut = { ...memory, together: () => new Promise<never>(() => {}) }
  void assistantOn(cut).answer(remindMe, asked('1'))
  await expect.poll(() => stored('1')).toContain('remind me in: 45min')
  const reply = await assistantOn().answer(remindMe, asked('1'))
  expect([reply.command, reply.problem]).toEqual(['remind me', undefined])
  expect(await reminders()).toHaveLength(2)
})

describe('of two that run beside each other', () => {
  const later = () => asked('1', member, now.getTime() + 1)

  test('the second gets the reply of the first, and changes nothing', async () => {
    const [one, other] = [assistantOn(), assistantOn()]
    const first = await one.answer(remindMe, later())
    expect((await other.answer(remindMe, later())).lines).toEqual(first.lines)
    expect(await reminders()).toHaveLength(2)
  })

  test('the second says that it was done, once the first has delivered', async () => {
    const [one, other] = [assistantOn(), assistantOn()]
    await one.answer(remindMe, later())
    await one.delivered(later())
    expect((await other.answer(remindMe, later())).problem?.what).toBe('That was done before, and answered.')
    expect(await reminders()).toHaveLength(2)
  })

  test('only the one that answers marks what was delivered', async () => {
    const [one, other] = [assistantOn(), assistantOn()]
    await one.answer(remindMe, later())
    await other.delivered(later())
    await other.delivered({ asked: undefined })
    expect(await stored('1')).toMatch(/remind/)
    expect(faults).toEqual([])
  })
})

test('what could not be stored is told once, and never done', async () => {
  const cut = { ...memory, due: { ...memory.due, add: () => Promise.reject(new Error('cut')) } }
  const reply = await assistantOn(cut).answer(remindMe, asked('1'))
  expect(reply.fault).toBeDefined()
  expect(await stored('1')).toBe('null')
  wait(31)
  await assistantOn().strike('question')
  expect(sent).toEqual([])
  expect(await reminders()).toEqual([])
})

test('a reply that cannot be stored is a fault that is told', async () => {
  const broken = () => Promise.reject(new Error('full'))
  const cut = { ...memory, due: { ...memory.due, put: broken }, together: () => Promise.reject(new Error('cut')) }
  const reply = await assistantOn(cut).answer(remindMe, asked('1'))
  expect(reply.fault).toBeDefined()
  expect(faults.map(fault => (fault as Error).message)).toContain('full')
})

test('nothing is delivered by a surface that is not ready', async () => {
  await assistantOn().answer(remindMe, asked('1'))
  way = { ...way, ready: () => false }
  wait(31)
  await assistantOn().strike('question')
  expect(sent).toEqual([])
})

test('what fails on the way changes nothing, and is told', async () => {
  const half = {
    ...memory,
    together: <T>(work: (kept: Memory) => Promise<T>) =>
      memory.together(async kept => {
        await work(kept)
        throw new Error('cut')
      }),
  }
  const reply = await assistantOn(half).answer(remindMe, asked('1'))
  expect(reply.fault).toBeDefined()
  expect(await reminders()).toEqual([])
  wait(31)
  await assistantOn().strike('question')
  expect(sent.map(({ reply: { fault } }) => fault)).toEqual([reply.fault])
  expect(await reminders()).toEqual([])
})

test('a problem that is found in the midst of a change undoes it, and is delivered', async () => {
  const assistant = assistantOn()
  await assistant.answer('kit save name: wren pack: 3S 720 LiHV', member)
  const owner = { scope: 'person', id: member.asker.id } as const
  await memory.kit.save({ owner, name: 'wren', kind: 'pack', notation: '2S 450mAh LiPo' }, 10)
  const { problem } = await assistant.answer('undo', asked('1'))
  expect(problem).toBeDefined()
  wait(31)
  await assistantOn().strike('question')
  expect(sent.map(({ reply }) => reply.problem?.what)).toEqual([problem?.what])
  expect((await memory.kit.find([owner], ['wren']))[0]?.notation).toBe('2S 450mAh LiPo')
})

test('what only calculates is not stored', async () => {
  const reply = await assistantOn().answer('current pack: 3S 720 LiHV', asked('1'))
  expect(reply.verdict).toBe('go')
  expect(await stored('1')).toBe('null')
})

test('a way that fails is tried again, one that is closed is told once', async () => {
  let tries = 0
  way = {
    ...way,
    deliver: async () => {
      tries += 1
      if (tries < 3) throw new Error('no connection')
      return { closed: 'nobody is there' }
    },
  }
  await assistantOn().answer(remindMe, asked('1'))
  const next = assistantOn()
  for (let s = 0; s < 300; s += 5) {
    wait(5)
    await next.strike('question')
  }
  expect(tries).toBe(3)
  expect(faults.map(fault => (fault as Error).message)).toEqual(['no connection', 'no connection', 'nobody is there'])
})

test('what is too late is told, and not delivered', async () => {
  await assistantOn().answer(remindMe, asked('1'))
  wait(601)
  await assistantOn().strike('question')
  expect(sent).toEqual([])
  expect(faults).toHaveLength(1)
  expect(await stored('1')).not.toMatch(/remind|wim/)
})

test('forgetting a person reaches what waits, but not the answer to that', async () => {
  const cut = { ...memory, together: () => new Promise<never>(() => {}) }
  void assistantOn(cut).answer(remindMe, asked('1'))
  await expect.poll(() => stored('1')).toContain('remind me in: 45min')
  const forgotten = await assistantOn().answer('forget me confirm: forget', asked('2'))
  expect(forgotten.headline).toContain('deleted')
  wait(31)
  await assistantOn().strike('question')
  expect(sent.map(({ id }) => id)).toEqual(['room:2'])
  expect(await reminders()).toEqual([])
  expect(await stored('2')).not.toContain('wim')
})

test('an undo that comes again takes back no earlier change', async () => {
  const assistant = assistantOn()
  for (const pack of ['3S 720 LiHV', '3S 850 LiHV', '3S 1000 LiHV'])
    await assistant.answer(`kit save name: wren pack: ${pack}`, member)
  await assistant.answer('undo', asked('1'))
  await assistantOn().answer('undo', asked('1'))
  const [wren] = await memory.kit.find([{ scope: 'person', id: member.asker.id }], ['wren'])
  expect(wren?.notation).toContain('850')
})

test('a standard answer that was saved and broken off before its card stood is told as saved', async () => {
  const save = 'answer save title: Where text: At the bench by the door.'
  const cut = { ...memory, answers: { ...memory.answers, settle: () => new Promise<never>(() => {}) } }
  void assistantOn(cut).answer(save, asked('1', moderator))
  await expect.poll(() => memory.answers.list(moderator.community.id)).toHaveLength(1)
  wait(31)
  await assistantOn().strike('question')
  expect(sent.map(({ reply }) => [reply.problem, reply.command])).toEqual([[undefined, 'answer save']])
  expect(await memory.answers.list(moderator.community.id)).toHaveLength(1)
  const other = await assistantOn().answer(save, asked('2', moderator))
  expect(other.problem?.what).toContain('Where')
})

test('standard answers that are asked for again leave one card', async () => {
  const board = fakeBoard()
  const assistant = () =>
    createAssistant({
      commands,
      memory,
      noticeboard: board.noticeboard,
      clock: () => now,
      onFault: fault => faults.push(fault),
    })
  const save = 'answer save title: Where text: At the bench by the door.'
  await assistant().answer(save, asked('1', moderator))
  await assistant().answer(save, asked('1', moderator))
  expect(board.standing).toHaveLength(1)
  await assistant().answer('answer remove title: Where', asked('2', moderator))
  expect(board.standing).toHaveLength(0)
  expect(await memory.answers.list(moderator.community.id)).toEqual([])
  expect(faults).toEqual([])
})

test('what was told not to be saved is not saved later', async () => {
  let isAway = false
  const away = () => Promise.reject(Object.assign(new Error('connection lost'), { code: '08006' }))
  const shaky = {
    ...memory,
    due: {
      ...memory.due,
      put: () => away(),
      done: (...of: Parameters<Memory['due']['done']>) => (isAway ? away() : memory.due.done(...of)),
    },
    together: away,
  }
  const assistant = assistantOn(shaky)
  isAway = true
  const reply = await assistant.answer(remindMe, asked('1'))
  expect(reply.problem?.what).toContain('Not saved')
  await assistant.delivered(asked('1'))
  expect(faults.map(fault => (fault as Error).message)).toContain('connection lost')
  isAway = false
  wait(31)
  await assistant.strike('question')
  expect(sent).toEqual([])
  expect(await reminders()).toEqual([])
  expect(await stored('1')).not.toMatch(/remind|wim/)
})
