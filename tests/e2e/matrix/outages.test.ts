// Restarts, gaps, rate limits and a server that dies: nothing is lost, nothing is said twice.

import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { transactionId } from '../../../src/matrix/messages/send.ts'
import { openMemory } from '../../../src/memory/opening/open.ts'
import { startClub } from '../../support/matrix/club.ts'
import { until } from '../../support/matrix/member.ts'
import { passwordOf } from '../../support/matrix/synapse.ts'

const question = '!charge current pack: 3S 720 LiHV charger: 0.5/1/2/4A'

const { synapse, assistant, self, ada } = await startClub(['ada'])
const room = await ada.roomWith(self, { encrypted: true })

async function expectOneAnswerEach(asked: readonly string[]): Promise<void> {
  for (const id of asked) await ada.answer(room, id, self)
  // A question asked last and answered: by then a second answer to an earlier one would be there.
  const last = await ada.say(room, question)
  await ada.answer(room, last, self)
  expect(asked.map(id => ada.answersTo(room, id, self).length)).toEqual(asked.map(() => 1))
}

describe('the assistant stops', () => {
  test('a clean stop answers what it heard; what was asked meanwhile is answered after the start', async () => {
    const before = await ada.say(room, question)
    await ada.answer(room, before, self)
    expect(await assistant.stop()).toBe(0)
    const between = await ada.say(room, question)
    await assistant.start()
    await expectOneAnswerEach([before, between])
  })

  test('nothing but our own log reaches the console', async () => {
    const lines = assistant.log().split('\n').filter(Boolean)
    const strangers = lines.filter(line => !line.startsWith('{"level":'))
    expect([strangers, assistant.output()]).toEqual([[], ''])
  })

  test('the session is for the eyes of its owner only, and no secret stands in the keys or the log', async () => {
    const folder = join(assistant.folder, 'matrix')
    const session = readFileSync(join(folder, 'session.json'), 'utf8')
    const { accessToken } = JSON.parse(session) as { accessToken: string }
    expect(statSync(join(folder, 'session.json')).mode & 0o777).toBe(0o600)
    expect(statSync(folder).mode & 0o777).toBe(0o700)

    const stored = readdirSync(folder)
      .filter(file => file.startsWith('keys.sqlite'))
      .map(file => readFileSync(join(folder, file)).toString('latin1'))
      .join()
    expect(stored.includes('inbound_group_sessions')).toBe(true)
    const senderKey = (await ada.client.getCrypto()?.getOwnDeviceKeys())?.curve25519 ?? ''
    const secrets = [accessToken, passwordOf('chargehand'), room, senderKey, 'a passphrase for tests only']
    expect(secrets.filter(secret => stored.includes(secret))).toEqual([])
    expect(secrets.filter(secret => assistant.log().includes(secret))).toEqual([])
  })

  test('a crash between sending an answer and noting it: answered once, and noted after the restart', async () => {
    const asked = await ada.say(room, question)
    await ada.answer(room, asked, self)
    await assistant.kill()
    const before = await openMemory({ dataFolder: assistant.folder })
    await before.forgetOld(new Date(Date.now() + 91 * 86_400_000))
    await before.close()

    await assistant.start()
    await expectOneAnswerEach([asked])
    await assistant.stop()
    const after = await openMemory({ dataFolder: assistant.folder })
    const noted = await after.answered.byQuestion(`matrix:${asked}`)
    await after.close()
    expect(noted?.answerMessage).toBe(`matrix:${ada.answersTo(room, asked, self)[0]?.getId()}`)
    await assistant.start()
  })

  test('the server takes one event for each transaction id of a device', async () => {
    const asked = await ada.say(room, question)
    const answer = await ada.answer(room, asked, self)
    const { accessToken } = JSON.parse(readFileSync(join(assistant.folder, 'matrix', 'session.json'), 'utf8'))
    const path = `rooms/${encodeURIComponent(room)}/send/m.room.encrypted/${transactionId(asked)}`
    const again = await fetch(`${synapse.url}/_matrix/client/v3/${path}`, {
      method: 'PUT',
      headers: { authorization: `Bearer ${accessToken}` },
      body: JSON.stringify({ algorithm: 'm.megolm.v1.aes-sha2', ciphertext: 'a second answer' }),
    })
    expect(await again.json()).toEqual({ event_id: answer.getId() })
  })

  test('a gap of many messages: the last question is answered, earlier ones not again', async () => {
    const before = await ada.say(room, question)
    await ada.answer(room, before, self)
    assistant.signal('SIGSTOP')
    for (let i = 0; i < 80; i += 1) await ada.say(room, `talk ${i}`)
    const after = await ada.say(room, question)
    assistant.signal('SIGCONT')
    await expectOneAnswerEach([before, after])
  })
})

describe('the server', () => {
  test('limits our rate: every answer comes in the end, once', async () => {
    const limit = `v1/users/${self}/override_ratelimit`
    await synapse.admin('POST', limit, { messages_per_second: 1, burst_count: 1 })
    const refusals = () => synapse.log().match(/B 429 "PUT [^"]*\/send\//g)?.length ?? 0
    expect(refusals()).toBe(0)
    const asked: string[] = []
    // Each has its reactions too, one a second.
    for (let i = 0; i < 3; i += 1) asked.push(await ada.say(room, question))
    await expectOneAnswerEach(asked)
    expect(refusals()).toBeGreaterThan(0)
    await synapse.admin('DELETE', limit)
  })

  test('dies right after a question and comes back: the question is answered, once', async () => {
    const asked = await ada.say(room, question)
    await synapse.kill()
    await synapse.start()
    await until('members are back', () => ada.client.getSyncState() === 'SYNCING', 60_000)
    await expectOneAnswerEach([asked])
  })

  test('was not there when the assistant started: it connects once the server is back', async () => {
    await assistant.stop()
    await synapse.kill()
    const started = assistant.start()
    await synapse.start()
    await started
    await until('members are back', () => ada.client.getSyncState() === 'SYNCING', 60_000)
    await expectOneAnswerEach([await ada.say(room, question)])
  })
})

describe('the account', () => {
  test('keys stored under another passphrase: refused in plain words, and left as they are', async () => {
    await assistant.stop()
    const refused = assistant.start({ MATRIX_STORE_KEY: 'another passphrase altogether' })
    await expect(refused).rejects.toThrow(/ended with 78: .*MATRIX_STORE_KEY: does not open the stored message keys/s)
    expect(assistant.log()).not.toMatch(/^ +at /m)
    await assistant.start()
    await expectOneAnswerEach([await ada.say(room, question)])
  })

  test('a device removed by its owner: a new one is made, and new questions are answered', async () => {
    await assistant.stop()
    const folder = join(assistant.folder, 'matrix')
    const { deviceId } = JSON.parse(readFileSync(join(folder, 'session.json'), 'utf8')) as { deviceId: string }
    await synapse.admin('DELETE', `v2/users/${self}/devices/${deviceId}`)
    await assistant.start()
    await expectOneAnswerEach([await ada.say(room, question)])
  })
})
