// Encrypted rooms: read, answered, and still read after a kill at any moment.

import { createDecipheriv, createHash } from 'node:crypto'
import { setTimeout as sleep } from 'node:timers/promises'
import { expect, test } from 'vitest'
import { startClub } from '../../support/matrix/club.ts'
import { until } from '../../support/matrix/member.ts'

const question = '!charge current 3S 720 LiHV on a 0.5/1/2/4A charger'

const { synapse, assistant, ada } = await startClub(['ada'])

test('a question in an encrypted room is answered, encrypted', async () => {
  const room = await ada.roomWith(assistant.userId, { encrypted: true })
  const asked = await ada.say(room, question)
  const answer = await ada.answer(room, asked, assistant.userId)
  await until('the answer decrypts', () => answer.getClearContent() !== null)
  expect(answer.getWireType()).toBe('m.room.encrypted')
  expect(answer.getContent().body).toMatch(/3S 720mAh LiHV/)
  expect(answer.getContent().msgtype).toBe('m.text')
})

test('a chart comes as an encrypted image that the room can open, with its words', async () => {
  const room = await ada.roomWith(assistant.userId, { encrypted: true })
  const asked = await ada.say(room, '!charge time pack: 3S 720 LiHV current: 1A from: 3.7V')
  const image = await until('the picture', () => ada.answersTo(room, asked, assistant.userId)[1])
  await until('it decrypts', () => image.getClearContent() !== null)
  const { msgtype, body, info, file } = image.getContent()
  expect({ msgtype, mimetype: info.mimetype, width: info.w }).toEqual({
    msgtype: 'm.image',
    mimetype: 'image/png',
    width: 800,
  })
  expect(body).toMatch(/min/)

  const at = ada.client.mxcUrlToHttp(file.url, undefined, undefined, undefined, false, true, true)
  const stored = await fetch(at ?? '', { headers: { authorization: `Bearer ${ada.client.getAccessToken()}` } })
  const bytes = Buffer.from(await stored.arrayBuffer())
  expect(createHash('sha256').update(bytes).digest('base64').replace(/=+$/, '')).toBe(file.hashes.sha256)
  const key = Buffer.from(file.key.k, 'base64url')
  const plain = createDecipheriv('aes-256-ctr', key, Buffer.from(file.iv, 'base64')).update(bytes)
  expect(bytes.subarray(1, 4).toString()).not.toBe('PNG')
  expect(plain.subarray(1, 4).toString()).toBe('PNG')
  expect(plain).toHaveLength(info.size)
})

test('members see the device verified', async () => {
  const crypto = ada.client.getCrypto()
  const devices = await crypto?.getUserDeviceInfo([assistant.userId], true)
  const [deviceId] = devices?.get(assistant.userId)?.keys() ?? []
  const status = await crypto?.getDeviceVerificationStatus(assistant.userId, deviceId ?? '')
  expect(status?.signedByOwner).toBe(true)
})

test('killed between two messages, ten times: every message answered once, one device', async () => {
  const room = await ada.roomWith(assistant.userId, { encrypted: true })
  const asked: string[] = [await ada.say(room, `${question} at the start`)]
  await ada.answer(room, asked[0] ?? '', assistant.userId)
  for (let round = 0; round < 10; round += 1) {
    // At odd rounds soon after the question, so that the kill falls before, in and after the answer.
    const before = await ada.say(room, question)
    if (round % 2 === 0) await ada.answer(room, before, assistant.userId)
    else await sleep(round * 15)
    await assistant.kill()
    const between = await ada.say(room, question)
    await assistant.start()
    const after = await ada.say(room, question)
    asked.push(before, between, after)
    for (const id of asked) await ada.answer(room, id, assistant.userId)
  }
  expect(asked.map(id => ada.answersTo(room, id, assistant.userId).length)).toEqual(asked.map(() => 1))
  const answers = asked.flatMap(id => ada.answersTo(room, id, assistant.userId))
  for (const answer of answers) {
    await until('the answer decrypts', () => answer.getClearContent() !== null)
    expect(answer.getContent().body).toMatch(/LiHV/)
  }
  expect(ada.heard(room, assistant.userId)).toHaveLength(asked.length)

  const { devices } = (await synapse.admin('GET', `v2/users/${assistant.userId}/devices`)) as {
    devices: { device_id: string; display_name: string | null }[]
  }
  // The one made by registering the account has never been used.
  expect(devices.filter(({ display_name }) => display_name === 'Chargehand')).toHaveLength(1)
})

test('a message whose key is kept from the assistant: said once, plainly; later ones are answered', async () => {
  const crypto = ada.client.getCrypto()
  if (!crypto) throw new Error('the member has no encryption')
  const room = await ada.roomWith(assistant.userId, { encrypted: true })
  crypto.globalBlacklistUnverifiedDevices = true
  const unreadable = [await ada.say(room, question), await ada.say(room, question)]
  const told = await until('word that a message could not be read', () => ada.heard(room, assistant.userId)[0])
  await until('it decrypts', () => told.getClearContent() !== null)
  expect(told.getContent().body).toContain('I could not read a message here')

  crypto.globalBlacklistUnverifiedDevices = false
  const readable = await ada.say(room, question)
  await ada.answer(room, readable, assistant.userId)
  expect(unreadable.flatMap(id => ada.answersTo(room, id, assistant.userId))).toHaveLength(1)
  expect(ada.heard(room, assistant.userId)).toHaveLength(2)
})
