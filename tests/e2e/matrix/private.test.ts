// What is for one person alone: it goes to a direct room, opened where there is none, and no other room reads it.

import { Preset } from 'matrix-js-sdk'
import { describe, expect, test } from 'vitest'
import { roomOf, startClub } from '../../support/matrix/club.ts'
import { type Member, until } from '../../support/matrix/member.ts'

const { synapse, self, ada, ben, cem } = await startClub(['ada', 'ben', 'cem'])
const room = await roomOf([ada, ben], self)
await cem.client.joinRoom(room)
/** https://spec.matrix.org/v1.18/client-server-api/#invite-permission */
await cem.client.setAccountData('m.invite_permission_config' as never, { default_action: 'block' } as never)

const notReached = 'I could not reach you in private.'

const invitedBy = (member: Member): string[] =>
  member.client
    .getRooms()
    .filter(one => one.getMyMembership() === 'invite')
    .map(one => one.roomId)

async function asked(words: string, by = ada): Promise<string> {
  return (await by.said(room, await by.say(room, `!charge ${words}`), self)).body
}

/** What the assistant says there, decrypted, one message of many. */
async function toldIn(direct: string, member: Member, at: number): Promise<Record<string, unknown>> {
  const event = await until(`message ${at} in private`, () => member.heard(direct, self)[at])
  await until('it decrypts', () => !event.isEncrypted() || event.getClearContent() !== null)
  return event.getContent()
}

describe('a direct room', () => {
  let direct: string

  test('is opened for an export that was asked for among others', async () => {
    await asked('kit save name: wren pack: 3S 720 LiHV')
    expect(await asked('export me')).toBe('I have answered you in private.')
    direct = await until('an invite', () => invitedBy(ada)[0])
    expect(ada.client.getRoom(direct)?.getDMInviter()).toBe(self)
    await ada.client.joinRoom(direct)
    expect((await toldIn(direct, ada, 0)).body).toContain('Records that I keep about you')
    expect(await toldIn(direct, ada, 1)).toMatchObject({ msgtype: 'm.file', filename: 'about-me.json' })
    expect(ada.client.getRoom(direct)?.hasEncryptionStateEvent()).toBe(true)
    expect(ada.heard(room, self).some(event => JSON.stringify(event.getContent()).includes('Records'))).toBe(false)
  })

  test('is the same for the next: the result of a lesson, a list of reminders', async () => {
    await asked('lesson ask lesson: c-rate')
    expect(await asked('lesson answer a')).toBe('I have answered you in private.')
    expect(await asked('remind list')).toBe('I have answered you in private.')
    expect((await toldIn(direct, ada, 3)).body).toContain('no reminder')
    expect(invitedBy(ada).filter(id => id !== direct)).toEqual([])
  })

  test('takes a reminder that was set among others', async () => {
    expect(await asked('remind me in: 1min')).toContain('in a direct message')
    await asked('remind me in: 1min', cem)
    const before = ada.heard(room, self).length
    const reminder = await until('the reminder', () => ada.heard(direct, self)[4], 90_000)
    await until('it decrypts', () => reminder.getClearContent() !== null)
    expect(reminder.getContent()).toMatchObject({ msgtype: 'm.text', 'm.mentions': { user_ids: [ada.id] } })
    const inRoom = await until('word to who lets nobody invite them', () => ada.heard(room, self).slice(before)[0])
    expect(inRoom.getContent()).toMatchObject({ body: notReached, 'm.mentions': { user_ids: [cem.id] } })
    expect(ada.heard(room, self)).toHaveLength(before + 1)
  })

  test('of whom nobody may invite: the room is only told that, and no empty room is left', async () => {
    const roomsOf = () => synapse.admin('GET', `v1/users/${self}/joined_rooms`)
    const before = await roomsOf()
    expect(await asked('export me', cem)).toBe(notReached)
    expect(await roomsOf()).toEqual(before)
  })

  test('of whom has left it: the room is only told that', async () => {
    await ada.client.leave(direct)
    await until('the assistant sees it', () => ada.client.getRoom(direct)?.getMyMembership() === 'leave')
    expect(await asked('export me')).toBe(notReached)
  })

  test('is not needed by whoever asks in one', async () => {
    const own = await ben.roomWith(self, { preset: Preset.TrustedPrivateChat, is_direct: true, name: '' })
    const list = await ben.say(own, 'remind list')
    expect((await ben.said(own, list, self)).body).toContain('no reminder')
    expect(invitedBy(ben)).toEqual([])
  })
})

describe('hints', () => {
  test('carry the prefix among others, and none in a direct room', async () => {
    expect(await asked('kit list', ben)).toContain(': !charge kit save name:')
    const own = ben.client.getRooms().find(one => one.roomId !== room)?.roomId ?? ''
    const list = await ben.say(own, 'kit list')
    expect((await ben.said(own, list, self)).body).toContain(': kit save name:')
    expect(await asked('current pack: 3S', ben)).toContain('!charge')
  })
})
