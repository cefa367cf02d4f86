// People can verify the assistant, and a lost data folder costs it neither that nor what it could read.

import { execFileSync } from 'node:child_process'
import { rmSync } from 'node:fs'
import { join } from 'node:path'
import type { VerificationRequest } from 'matrix-js-sdk/lib/crypto-api/verification.js'
import { expect, test, vi } from 'vitest'
import { startClub } from '../../support/matrix/club.ts'
import { type Member, until } from '../../support/matrix/member.ts'
import { passwordOf } from '../../support/matrix/synapse.ts'

const recoveryKey = execFileSync(process.execPath, ['src/matrix/recovery-key.ts'], { encoding: 'utf8' }).trim()
const question = '!charge current 3S 720 LiHV on a 0.5/1/2/4A charger'

/** Memory is swept all the time, as a busy host may: what is held only weakly is lost at once, not some day. */
const swept = '--expose-gc --import=data:text/javascript,setInterval(gc,250).unref()'
const club = await startClub(['ada', 'ben'], {
  MATRIX_RECOVERY_KEY: recoveryKey,
  MATRIX_VERIFIERS: '@ada:club.test',
  NODE_OPTIONS: swept,
})
const { assistant, self, ada, ben } = club
const room = await ada.roomWith(self, { encrypted: true })

const cryptoOf = ({ client }: Member) => {
  const crypto = client.getCrypto()
  if (!crypto) throw new Error('the member has no encryption')
  return crypto
}
/** With an identity of their own, as apps make at the first login. */
async function withIdentity(member: Member): Promise<void> {
  const login = { type: 'm.login.password', identifier: { type: 'm.id.user', user: member.id } }
  const password = passwordOf(member.id.slice(1, member.id.indexOf(':')))
  await cryptoOf(member).bootstrapCrossSigning({
    authUploadDeviceSigningKeys: async upload => void (await upload({ ...login, password })),
  })
}
const devicesSeen = async () => [...((await cryptoOf(ada).getUserDeviceInfo([self], true)).get(self)?.values() ?? [])]
const isSigned = async (device: string) =>
  (await cryptoOf(ada).getDeviceVerificationStatus(self, device))?.signedByOwner ?? false
const isVerified = async () => (await cryptoOf(ada).getUserVerificationStatus(self)).isCrossSigningVerified()
const shown = (words: string) =>
  assistant
    .log()
    .split('\n')
    .filter(line => line.includes(words))
    .map(line => JSON.parse(line))

/** As an app holds what it shows: the SDK holds a request only weakly, and whoever awaits its end is held by nothing else. */
const shownByApp: VerificationRequest[] = []
async function requestedBy(member: Member, direct: string): Promise<VerificationRequest> {
  const request = await cryptoOf(member).requestVerificationDM(self, direct)
  shownByApp.push(request)
  return request
}
const phaseOf = (request: VerificationRequest, phase: number) => until(`phase ${phase}`, () => request.phase === phase)

test('its fingerprint is in the log, and no key', async () => {
  const [device] = await devicesSeen()
  const [line] = shown('fingerprint')
  expect(line.fingerprint.replaceAll(' ', '')).toBe(device?.getFingerprint())
  expect(assistant.log()).not.toContain(recoveryKey)
})

test('a moderator who is named compares emoji with the log, and has it verified; nobody else', async () => {
  await withIdentity(ada)
  await withIdentity(ben)
  expect(await isVerified()).toBe(false)
  const direct = await ada.roomWith(self)
  const request = await requestedBy(ada, direct)
  await phaseOf(request, 3)
  const verifier = await request.startVerification('m.sas.v1')
  // Asked for, not listened to: they may be there before the server has confirmed our start.
  const { sas, confirm } = await until('the emoji', () => verifier.getShowSasCallbacks() ?? undefined)
  const emoji = sas.emoji?.map(([, name]) => name) ?? []
  await Promise.all([verifier.verify(), confirm()])
  await phaseOf(request, 6)
  await until('the assistant has seen the end too', () => shown('"verified"').length > 0)
  expect(emoji).toHaveLength(7)
  expect(shown('emoji').map(line => line.emoji)).toEqual([emoji.join(', ')])
  await vi.waitFor(async () => expect(await isVerified()).toBe(true), { timeout: 10_000, interval: 50 })

  const bens = await ben.roomWith(self, { encrypted: true })
  // Keys are looked up where something is encrypted for them.
  await ben.say(bens, 'hello')
  const refused = await requestedBy(ben, bens)
  await phaseOf(refused, 5)
})

test('after its data folder is lost it is the same to its members, and reads what it could read', async () => {
  const before = await ada.say(room, question)
  await ada.answer(room, before, self)
  const [first] = await devicesSeen()
  await until('the keys are backed up', () => /"PUT [^"]*room_keys\/keys/.test(club.synapse.log()))
  await assistant.kill()
  rmSync(join(assistant.folder, 'matrix'), { recursive: true })
  const meanwhile = await ada.say(room, question)
  await assistant.start()
  await ada.answer(room, meanwhile, self)
  const now = (await devicesSeen()).find(({ deviceId }) => deviceId !== first?.deviceId)
  expect(await isSigned(now?.deviceId ?? '')).toBe(true)
  expect(await isVerified()).toBe(true)
  expect([before, meanwhile].map(id => ada.answersTo(room, id, self).length)).toEqual([1, 1])
  const answer = await ada.answer(room, await ada.say(room, question), self)
  expect(answer.getWireType()).toBe('m.room.encrypted')
})

test('another recovery key opens nothing: that is said, and all goes on', async () => {
  await assistant.stop()
  const other = execFileSync(process.execPath, ['src/matrix/recovery-key.ts'], { encoding: 'utf8' }).trim()
  await assistant.start({ MATRIX_RECOVERY_KEY: other })
  expect(shown('MATRIX_RECOVERY_KEY does not open')).toHaveLength(1)
  await ada.answer(room, await ada.say(room, question), self)
})
