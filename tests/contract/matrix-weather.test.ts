// Bad weather at the Matrix server: it asks to wait, has faults, falls silent. Nothing is lost, nothing said twice, the log told once.

import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { type Assistant, createAssistant } from '../../src/assistant/running/assistant.ts'
import { bench } from '../support/discord-commands.ts'
import { keptLog } from '../support/discord-room.ts'
import { type OnNock, openOnNock } from '../support/matrix/on-nock.ts'
import { openTestMemory } from '../support/test-memory.ts'

let server: OnNock
let logged: () => string
let end: () => Promise<void>
/** Answers wait for it. */
let held: Promise<void>

beforeEach(async () => {
  const memory = await openTestMemory()
  const { log, text } = keptLog()
  logged = text
  const assistant = createAssistant({ commands: [bench], memory, onFault: fault => log.error(String(fault)) })
  held = Promise.resolve()
  const answer: Assistant['answer'] = async (...asked) => held.then(() => assistant.answer(...asked))
  server = await openOnNock({ ...assistant, answer }, memory, log)
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'], shouldAdvanceTime: true })
  end = async () => {
    vi.useRealTimers()
    await server.close()
    await memory.close()
  }
})
afterEach(() => end())

const isSend = /\/send\/m\.room\.message/
const isSync = /^\/v3\/sync$/
const ask = () => server.say('bench pack: 3S 720 LiHV')
const pass = (seconds: number) => vi.advanceTimersByTimeAsync(seconds * 1000)
/** Half a second goes by with each look. */
const tries = async (count: number) => {
  const looked = async () => {
    await pass(0.5)
    expect(server.sent()).toHaveLength(count)
  }
  await vi.waitFor(looked, { timeout: 20_000, interval: 20 })
  return server.sent().map(({ path, body }) => [path, body])
}
/** The server takes one event for each transaction, so the same again is said once. */
async function expectAnsweredOnce(count: number): Promise<void> {
  const [first, ...others] = await tries(count)
  expect(others).toEqual(others.map(() => first))
  const next = ask()
  const last = (await tries(count + 1)).at(-1)
  expect(last).toMatchObject([expect.anything(), { 'm.relates_to': { 'm.in_reply_to': { event_id: next } } }])
  expect(logged().split('does not answer').length - 1).toBe(1)
}

test('an answer that takes long is given when it is there, and nothing before it', async () => {
  const { promise, resolve } = Promise.withResolvers<void>()
  held = promise
  const asked = ask()
  await pass(60)
  expect(server.sent()).toEqual([])
  resolve()
  expect((await tries(1))[0]).toMatchObject([
    expect.anything(),
    { 'm.relates_to': { 'm.in_reply_to': { event_id: asked } } },
  ])
})

test('where it asks to wait long, it is left alone until then', async () => {
  const error = { errcode: 'M_LIMIT_EXCEEDED', error: 'slow', retry_after_ms: 90_000 }
  server.homeserver.once('PUT', isSend, 429, error)
  ask()
  await tries(1)
  await pass(85)
  await tries(1)
  await pass(6)
  await expectAnsweredOnce(2)
})

test('through a storm of 502, of what is sent and what is heard', async () => {
  server.homeserver.once('PUT', isSend, 502, {}, 6)
  server.homeserver.once('GET', isSync, 502, {}, 4)
  ask()
  await tries(1)
  await pass(100)
  await expectAnsweredOnce(7)
})

test('where it asks to wait before it tells what is new', async () => {
  const error = { errcode: 'M_LIMIT_EXCEEDED', error: 'slow', retry_after_ms: 5000 }
  server.homeserver.once('GET', isSync, 429, error, 4)
  ask()
  await pass(60)
  await expectAnsweredOnce(1)
})

test('where it falls silent on a connection that seems to live, with what is sent', async () => {
  server.homeserver.hush('PUT', isSend)
  ask()
  await tries(1)
  await pass(35)
  await expectAnsweredOnce(2)
})

test('where it falls silent on one, with what is heard', async () => {
  server.homeserver.hush('GET', isSync)
  server.say('the last that comes through')
  await tries(1)
  ask()
  await pass(60)
  await tries(1)
  await pass(60)
  await tries(2)
  expect(server.sent()[1]?.body).toMatchObject({ body: expect.stringContaining('Set 0.5') })
})
