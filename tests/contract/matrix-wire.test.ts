// What the Matrix surface says on the wire: login, answers, edits, invites, and what it does when refused.

import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { commands } from '../../commands/index.ts'
import { createAssistant } from '../../src/assistant/running/assistant.ts'
import type { MatrixSettings } from '../../src/matrix/client/settings.ts'
import { createMatrixSurface, type MatrixSurface } from '../../src/matrix/surface.ts'
import type { Memory } from '../../src/memory/memory.ts'
import { createLog } from '../../src/program/log.ts'
import { ada, event, joined as joinedIn, member, self, text } from '../support/matrix/events.ts'
import { type Homeserver, homeserverOnNock } from '../support/matrix/homeserver-on-nock.ts'
import { openTestMemory } from '../support/test-memory.ts'

const room = '!field:club.test'
const patient = { timeout: 10_000, interval: 20 }

let homeserver: Homeserver
let folder: string
let memory: Memory
let surface: MatrixSurface

beforeEach(async () => {
  homeserver = homeserverOnNock()
  folder = mkdtempSync(join(tmpdir(), 'matrix-wire-'))
  memory = await openTestMemory()
  surface = surfaceWith({ user: self, password: 'a password' })
})

afterEach(async () => {
  await surface.stop()
  homeserver.close()
  await memory.close()
  rmSync(folder, { recursive: true })
  expect(homeserver.unknown).toEqual([])
})

function surfaceWith(login: MatrixSettings['login']): MatrixSurface {
  const settings = { ...homeserver.settings, login }
  const assistant = createAssistant({ commands, memory, onFault: () => {} })
  return createMatrixSurface(
    {
      settings,
      folder: join(folder, 'matrix'),
      assistant,
      answered: memory.answered,
      draw: () => Promise.reject(new Error('no pictures here')),
      log: createLog('silent'),
    },
    () => {},
  )
}

const joined = (timeline: readonly object[], state?: readonly object[]) => joinedIn(room, timeline, state)
const state = (joinedAt_ms = Date.now() - 600_000) => [
  event('m.room.create', { room_version: '10', creator: ada }, { state_key: '' }),
  event('m.room.power_levels', { users: { [ada]: 100 } }, { state_key: '' }),
  event('m.room.name', { name: 'Club field' }, { state_key: '' }),
  member(ada, joinedAt_ms),
  member(self, joinedAt_ms),
]
const question = '!charge current pack: 3S 720 LiHV charger: 0.5/1/2/4A'
interface Relation {
  readonly 'm.in_reply_to': { readonly event_id: string }
}
const marks = () => homeserver.requests.filter(({ path }) => path.endsWith('/read_markers')).map(({ body }) => body)
const answers = () => homeserver.requests.filter(({ path }) => path.includes('/send/m.room.message/'))

async function start(timeline: object[] = [], joinedAt_ms?: number): Promise<void> {
  homeserver.first(joined(timeline, state(joinedAt_ms)))
  await surface.start()
}

describe('login', () => {
  test('by name and password, once: the session is kept for the next start', async () => {
    await start()
    const [login] = homeserver.requests.filter(({ path }) => path === '/v3/login')
    expect(login?.body).toEqual({
      type: 'm.login.password',
      identifier: { type: 'm.id.user', user: self },
      password: 'a password',
      initial_device_display_name: 'Chargehand',
    })
    const file = join(folder, 'matrix', 'session.json')
    expect(statSync(file).mode & 0o777).toBe(0o600)
    expect(JSON.parse(readFileSync(file, 'utf8'))).toMatchObject({ deviceId: 'BENCH', accessToken: 'secret-token' })

    await surface.stop()
    surface = surfaceWith({ user: self, password: 'a password' })
    await start()
    expect(homeserver.requests.filter(({ path }) => path === '/v3/login')).toHaveLength(1)
  })

  test('by token: the device is the one that the token belongs to', async () => {
    surface = surfaceWith({ accessToken: 'given-token' })
    await start()
    const who = homeserver.requests.find(({ path }) => path === '/v3/account/whoami')
    expect(who?.authorization).toBe('Bearer given-token')
    expect(homeserver.requests.some(({ path }) => path === '/v3/login')).toBe(false)
  })

  test('refused: says which setting is at fault, and not its value', async () => {
    homeserver.once('POST', /login$/, 403, { errcode: 'M_FORBIDDEN', error: 'Invalid username or password' })
    const refused = await surface.start().catch((error: Error) => error.message)
    expect(refused).toContain('MATRIX_PASSWORD: the Matrix server does not let us in (M_FORBIDDEN')
    expect(refused).not.toContain('a password')
  })

  test('a session that the server has paused is taken up again on the same device', async () => {
    await start()
    await surface.stop()
    homeserver.once('GET', /whoami$/, 401, { errcode: 'M_UNKNOWN_TOKEN', error: 'gone', soft_logout: true })
    surface = surfaceWith({ user: self, password: 'a password' })
    await start()
    const logins = homeserver.requests.filter(({ path }) => path === '/v3/login')
    expect(logins.map(({ body }) => body.device_id)).toEqual([undefined, 'BENCH'])
  })
})

describe('answers', () => {
  test('one text in reply, in two forms, that mentions the asker alone', async () => {
    await start()
    const asked = text(question)
    homeserver.sync(joined([asked]))
    await vi.waitFor(() => expect(answers()).toHaveLength(1), patient)
    const [answer] = answers()
    expect(answer).toMatchObject({ method: 'PUT', authorization: 'Bearer secret-token' })
    expect(answer?.path).toMatch(/^\/v3\/rooms\/!field:club\.test\/send\/m\.room\.message\/c[\w-]{32}$/)
    expect(answer?.body).toEqual({
      msgtype: 'm.text',
      body: expect.stringContaining('Read as: 3S 720mAh LiHV'),
      format: 'org.matrix.custom.html',
      formatted_body: expect.stringMatching(/^<p><strong>/),
      'm.mentions': { user_ids: [ada] },
      'm.relates_to': { 'm.in_reply_to': { event_id: asked.event_id } },
    })
    await vi.waitFor(
      async () => expect(await memory.answered.byQuestion(`matrix:${asked.event_id}`)).toBeDefined(),
      patient,
    )
  })

  test('in the first sync only what is new: nothing old, of ours, of bots or from before the join', async () => {
    const minutes = (ago: number) => ({ origin_server_ts: Date.now() - ago * 60_000 })
    const fresh = text(question)
    const notice = event('m.room.message', { msgtype: 'm.notice', body: question })
    await start(
      [text(question, minutes(10)), text(question, minutes(0.7)), text(question, { sender: self }), notice, fresh],
      Date.now() - 30_000,
    )
    await vi.waitFor(() => expect(answers()).not.toHaveLength(0), patient)
    expect(answers().map(({ body }) => body['m.relates_to'])).toEqual([
      { 'm.in_reply_to': { event_id: fresh.event_id } },
    ])
  })

  test('a machine that answers our answers, and one that is listed, get no endless answers', async () => {
    const feed = '@feed:club.test'
    await start()
    homeserver.sync(joined([member(feed, Date.now() - 60_000), text(question, { sender: feed })]))
    for (let at = 1; at <= 11; at += 1) {
      homeserver.sync(joined([text('!charge what?', { origin_server_ts: Date.now() + 1000 })]))
      await vi.waitFor(() => expect(answers()).toHaveLength(at), patient)
    }
    homeserver.sync(joined([text('!charge what?', { origin_server_ts: Date.now() + 1000 })]))
    const asked = text(question)
    homeserver.sync(joined([asked]))
    await vi.waitFor(() => expect(repliesTo().at(-1)).toBe(asked.event_id), patient)
    expect(answers()).toHaveLength(12)
    expect(answers().map(({ body }) => body['m.mentions'])).toEqual(Array(12).fill({ user_ids: [ada] }))
  })

  const repliesTo = () => answers().map(({ body }) => (body['m.relates_to'] as Relation)['m.in_reply_to'].event_id)

  test('what a sync left out is read back to where it was before, and answered in order', async () => {
    await start([text(question)])
    await vi.waitFor(() => expect(answers()).toHaveLength(1), patient)
    const [last] = repliesTo()
    const [first, second, third] = [text(question), text(question), text(question)]
    const known = text(question, { event_id: last })
    const pages = [
      { chunk: [second, text('talk')], end: 'older' },
      { chunk: [first, known, text(question, { origin_server_ts: Date.now() - 60_000 })], end: 'oldest' },
    ]
    for (const page of pages) homeserver.once('GET', /\/messages$/, 200, { start: '', state: [], ...page })
    homeserver.sync({
      rooms: { join: { [room]: { timeline: { events: [third], limited: true, prev_batch: 'gap' } } } },
    })
    await vi.waitFor(() => expect(answers()).toHaveLength(4), patient)
    expect(repliesTo()).toEqual([last, first.event_id, second.event_id, third.event_id])
    await vi.waitFor(() => expect(marks().at(-1)).toEqual({ 'm.fully_read': third.event_id }), patient)
  })

  test('a start goes on from the mark of the last one, however long ago', async () => {
    const hours = (ago: number) => ({ origin_server_ts: Date.now() - ago * 3_600_000 })
    const [before, next] = [text(question, hours(3)), text(question, hours(2))]
    homeserver.first({
      rooms: {
        join: {
          [room]: {
            timeline: { events: [before, next], prev_batch: 'older' },
            state: { events: state(Date.now() - 86_400_000) },
            account_data: { events: [{ type: 'm.fully_read', content: { event_id: before.event_id } }] },
          },
        },
      },
    })
    await surface.start()
    await vi.waitFor(() => expect(answers()).toHaveLength(1), patient)
    expect(repliesTo()).toEqual([next.event_id])
    expect(homeserver.requests.some(({ path }) => path.endsWith('/messages'))).toBe(false)
  })

  test('what was answered before is not answered again', async () => {
    const [again, fresh] = [text(question), text(question)]
    await memory.answered.record({
      place: `matrix:${room}`,
      askedBy: `matrix:${ada}`,
      questionMessage: `matrix:${again.event_id}`,
      answerMessage: 'matrix:$earlier',
      question: 'help',
      answeredAt: new Date(),
    })
    await start([again, fresh])
    await vi.waitFor(() => expect(answers()).not.toHaveLength(0), patient)
    expect(answers().map(({ body }) => body['m.relates_to'])).toEqual([
      { 'm.in_reply_to': { event_id: fresh.event_id } },
    ])
  })

  test('while the memory is away what is asked now is answered, and what may have been answered before the start is not', async () => {
    const away = () => Promise.reject(Object.assign(new Error('away'), { code: 'ECONNREFUSED' }))
    Object.assign(memory.answered, { byQuestion: away, record: away })
    await start([text(question, { origin_server_ts: Date.now() - 5000 })])
    const now = text(question, { origin_server_ts: Date.now() + 100 })
    homeserver.sync(joined([now]))
    await vi.waitFor(() => expect(answers()).not.toHaveLength(0), patient)
    expect(answers().map(({ body }) => body['m.relates_to'])).toEqual([{ 'm.in_reply_to': { event_id: now.event_id } }])
  })

  test('a server that asks to wait gets the same event again, under the same transaction', async () => {
    homeserver.once('PUT', /\/send\/m\.room\.message/, 429, {
      errcode: 'M_LIMIT_EXCEEDED',
      error: 'slow',
      retry_after_ms: 50,
    })
    homeserver.once('PUT', /\/send\/m\.room\.message/, 502, {})
    await start()
    homeserver.sync(joined([text(question)]))
    await vi.waitFor(() => expect(answers()).toHaveLength(3), patient)
    const [first, second, third] = answers()
    expect([second, third]).toEqual([first, first])
  })

  test('a danger does not wait for an answer that the server puts off', async () => {
    const later = { errcode: 'M_LIMIT_EXCEEDED', error: 'slow', retry_after_ms: 60_000 }
    homeserver.once('PUT', /\/send\/m\.room\.message/, 429, later)
    await start()
    homeserver.sync(joined([text(question)]))
    await vi.waitFor(() => expect(answers()).toHaveLength(1), patient)
    const fire = text('!charge my pack is on fire')
    homeserver.sync(joined([fire]))
    await vi.waitFor(() => expect(repliesTo()[1]).toBe(fire.event_id), { timeout: 3000, interval: 20 })
    expect(marks()).toEqual([])
  })

  test('a mark that the server does not take holds up nobody', async () => {
    homeserver.hush('POST', /read_markers$/)
    await start()
    homeserver.sync(joined([text(question)]))
    await vi.waitFor(() => expect(marks()).toHaveLength(1), patient)
    homeserver.sync(joined([text(question)]))
    await vi.waitFor(() => expect(answers()).toHaveLength(2), { timeout: 3000, interval: 20 })
    homeserver.close()
  })

  test('an answer that the server refuses does not hold back the next', async () => {
    homeserver.once('PUT', /\/send\/m\.room\.message/, 413, { errcode: 'M_TOO_LARGE', error: 'too large' })
    await start()
    const [refused, taken] = [text(question), text(question)]
    homeserver.sync(joined([refused, taken]))
    await vi.waitFor(() => expect(answers()).toHaveLength(2), patient)
    await vi.waitFor(
      async () => expect(await memory.answered.byQuestion(`matrix:${taken.event_id}`)).toBeDefined(),
      patient,
    )
    expect(await memory.answered.byQuestion(`matrix:${refused.event_id}`)).toBeUndefined()
  })
})

test('an invite from a server that the rule does not name is declined', async () => {
  await start()
  const invite = event('m.room.member', { membership: 'invite' }, { sender: '@eve:elsewhere.test', state_key: self })
  homeserver.sync({ rooms: { invite: { '!lure:elsewhere.test': { invite_state: { events: [invite] } } } } })
  await vi.waitFor(
    () => expect(homeserver.requests.map(({ path }) => path)).toContain('/v3/rooms/!lure:elsewhere.test/leave'),
    patient,
  )
})

test('nothing reaches the console, whatever the server does', async () => {
  const written: unknown[] = []
  const spies = (['log', 'debug', 'info', 'warn', 'error', 'trace'] as const).map(method =>
    vi.spyOn(console, method).mockImplementation((...words) => void written.push(words)),
  )
  homeserver.once('PUT', /\/send\/m\.room\.message/, 403, { errcode: 'M_FORBIDDEN', error: 'no' })
  homeserver.once('POST', /keys\/upload$/, 500, {})
  await start([text(question), text(question), event('m.room.encrypted', { algorithm: 'm.unheard.of' })])
  await vi.waitFor(() => expect(answers()).toHaveLength(2), patient)
  await surface.stop()
  for (const spy of spies) spy.mockRestore()
  expect(written).toEqual([])
})
