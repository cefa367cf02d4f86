// Whatever comes by HTTP from somebody without the key: refused, quickly, and the door stays open.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { slash } from '../support/discord-events.ts'
import { signed } from '../support/discord-signature.ts'
import { tryDoor } from './door.ts'
import { someText } from './grammar.ts'
import { openWire } from './wire.ts'

const printable = fc.string({ unit: fc.constantFrom(...'abcdef0123456789 -_:{}"'), maxLength: 130 })
const request = fc.record({
  method: fc.constantFrom('POST', 'POST', 'POST', 'GET', 'PUT', 'DELETE', 'OPTIONS', 'PATCH'),
  path: fc.oneof(fc.constantFrom('/discord/interactions', '/', '/metrics', '/discord/interactions/..'), fc.webPath()),
  body: fc.oneof(
    someText,
    fc.uint8Array({ maxLength: 400 }),
    fc.json(),
    fc.constant(JSON.stringify(slash('current', { pack: '3S 720 LiHV' }))),
    fc.integer({ min: 1, max: 400_000 }).map(length => '['.repeat(length)),
  ),
  headers: fc.record(
    {
      'x-signature-ed25519': fc.oneof(printable, fc.constant('0'.repeat(128))),
      'x-signature-timestamp': fc.oneof(
        printable,
        fc.constant('').map(() => String(Math.floor(Date.now() / 1000))),
      ),
      'content-type': fc.constantFrom('application/json', 'text/plain', 'x'),
      'content-encoding': fc.constantFrom('gzip', 'identity'),
    },
    { requiredKeys: [] },
  ),
})

it('http', async () => {
  const wire = await openWire()
  await tryDoor('http', request, async ({ method, path, body, headers }) => {
    const sent = method === 'GET' ? undefined : body
    const status = await fetch(`${wire.url}${path}`, {
      method,
      headers,
      ...(sent === undefined ? {} : { body: sent as string }),
    }).then(
      response => response.status,
      () => 'cut off',
    )
    if (status !== 'cut off') {
      expect(status).toBeGreaterThanOrEqual(400)
      expect(status).toBeLessThan(500)
    }
    expect(wire.logged()).not.toMatch(/an HTTP request failed/)
  })
  const body = JSON.stringify({ id: '1', type: 1, application_id: '2', token: 't', version: 1 })
  const pong = await fetch(`${wire.url}/discord/interactions`, { method: 'POST', body, headers: signed(body) })
  expect(pong.status).toBe(200)
  await wire.close()
})
