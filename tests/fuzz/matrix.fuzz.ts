// Whatever a homeserver sends down: the question that comes after it is answered.

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { expect, it, vi } from 'vitest'
import { commands } from '../../commands/index.ts'
import { createAssistant } from '../../src/assistant/running/assistant.ts'
import { createMatrixSurface } from '../../src/matrix/surface.ts'
import { createLog } from '../../src/program/log.ts'
import { ada, event, joined, member, self, text } from '../support/matrix/events.ts'
import { homeserverOnNock } from '../support/matrix/homeserver-on-nock.ts'
import { openTestMemory } from '../support/test-memory.ts'
import { tryDoor } from './door.ts'
import { broken, someText, someValue } from './grammar.ts'

const room = '!field:club.test'
const about = { 'm.relates_to': { rel_type: 'm.replace', event_id: '$event-1' } }
const sane = fc.oneof(
  someText.map(body => text(`!charge ${body}`)),
  someText.map(body =>
    event('m.room.message', { msgtype: 'm.text', body: `* ${body}`, 'm.new_content': { body }, ...about }),
  ),
  someValue.map(key => event('m.reaction', { 'm.relates_to': { rel_type: 'm.annotation', event_id: '$answer', key } })),
  fc
    .constantFrom('m.notice', 'm.image', 'm.emote')
    .map(msgtype => event('m.room.message', { msgtype, body: '!charge help' })),
  fc
    .constantFrom('leave', 'invite', 'ban', 'knock')
    .map(membership => event('m.room.member', { membership }, { state_key: '@ada2:club.test' })),
  someValue.map(ciphertext =>
    event('m.room.encrypted', { algorithm: 'm.megolm.v1.aes-sha2', ciphertext, session_id: 'x' }),
  ),
  fc.constant('').map(() => event('m.room.redaction', {}, { redacts: '$event-1' })),
)

it('matrix', async () => {
  const homeserver = homeserverOnNock()
  const folder = mkdtempSync(join(tmpdir(), 'matrix-fuzz-'))
  const memory = await openTestMemory()
  const faults: unknown[] = []
  const assistant = createAssistant({ commands, memory, onFault: fault => faults.push(fault) })
  const surface = createMatrixSurface(
    {
      settings: homeserver.settings,
      folder: join(folder, 'matrix'),
      assistant,
      answered: memory.answered,
      draw: () => Promise.reject(new Error('no pictures here')),
      log: createLog('silent'),
    },
    () => {},
  )
  homeserver.first(
    joined(
      room,
      [],
      [self, ada].map(person => member(person, Date.now() - 60_000)),
    ),
  )
  await surface.start()
  let [asked, drawnSoFar] = [0, 0]
  await tryDoor('matrix', fc.array(fc.oneof(sane, broken(sane)), { minLength: 1, maxLength: 3 }), async drawn => {
    // No event comes twice, and each person asks within what is fair.
    const fresh = drawn.map(one => ({
      ...(one as object),
      event_id: `$drawn-${++drawnSoFar}`,
      origin_server_ts: Date.now(),
    }))
    homeserver.sync(joined(room, fresh))
    const last = text('!charge what current for a 3S 720 LiHV', { sender: `@pilot${++asked}:club.test` })
    homeserver.sync(joined(room, [last]))
    await vi.waitFor(
      () => expect(homeserver.requests.some(({ body }) => JSON.stringify(body).includes(last.event_id))).toBe(true),
      { timeout: 15_000, interval: 5 },
    )
    expect(faults).toEqual([])
  })
  await surface.stop()
  homeserver.close()
  await memory.close()
  rmSync(folder, { recursive: true })
})
