// Whatever comes as an interaction, signed as Discord signs it: an answer of Discord's form, or a refusal.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { newId, press, slash, submit, typing } from '../support/discord-events.ts'
import { callbackFaults } from '../support/discord-payload.ts'
import { signed } from '../support/discord-signature.ts'
import { tryDoor } from './door.ts'
import { broken, someText, someValue } from './grammar.ts'
import { openWire } from './wire.ts'

const command = fc.constantFrom(...commands.map(({ name }) => name), 'ask', 'nonesuch')
const option = fc.constantFrom(...new Set(commands.flatMap(({ takes }) => Object.keys(takes))), 'question', 'private')
const value = fc.oneof(someValue, someText, fc.boolean())
const sane = fc.oneof(
  fc.tuple(command, fc.dictionary(option, value, { maxKeys: 5 })).map(([name, options]) => slash(name, options)),
  fc.tuple(command, option, someValue).map(([name, about, text]) => typing(name, about, text)),
  fc.oneof(someValue, fc.constantFrom('v1:brief:AAAAAAAAAAAAAAAA', 'v1:why:', 'v0')).map(id => press(id)),
  fc.tuple(someValue, someText).map(([id, text]) => submit(id, text)),
)
const interaction = fc.oneof(
  sane.map(one => ({ one, isSound: true })),
  broken(sane).map(one => ({ one, isSound: false })),
)

it('slash', async () => {
  const wire = await openWire()
  await tryDoor('slash', interaction, async ({ one: drawn, isSound }) => {
    // No event comes twice.
    const one = typeof drawn === 'object' && drawn !== null && 'id' in drawn ? { ...drawn, id: newId() } : drawn
    const body = JSON.stringify(one) ?? ''
    const asked = (one as { type?: unknown } | null)?.type
    // Who sends too much is cut off: each comes on a connection of its own.
    const headers = { ...signed(body), connection: 'close' }
    const sent = fetch(`${wire.url}/discord/interactions`, { method: 'POST', body, headers })
    const response = Buffer.byteLength(body) > 256 * 1024 ? await sent.catch(() => undefined) : await sent
    if (!response) return
    const said = await response.text()
    // What Discord never sends is refused, or found out on the way and logged.
    if (isSound || response.status !== 500) expect([200, 202, 400, 409, 413]).toContain(response.status)
    else expect(said).toBe('no answer')
    if (response.status === 200) expect(callbackFaults(JSON.parse(said), asked)).toEqual([])
    const faults = wire.faults.splice(0)
    if (isSound) expect(faults).toEqual([])
  })
  await wire.close()
})
