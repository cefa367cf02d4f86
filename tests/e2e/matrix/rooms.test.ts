// A plain room, threads, edits, direct messages, invites, permissions and upgrades, as members meet them.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as sleep } from 'node:timers/promises'
import { Preset } from 'matrix-js-sdk'
import { describe, expect, test, vi } from 'vitest'
import { roomOf, startClub } from '../../support/matrix/club.ts'
import { Member, until } from '../../support/matrix/member.ts'

const question = 'current pack: 3S 720 LiHV charger: 0.5/1/2/4A'

const { synapse, assistant, self, ada, ben } = await startClub(['ada', 'ben'], {
  MATRIX_INVITES: '@ada:club.test @ben:club.test',
  MATRIX_ROOMS: '#bench:club.test #hangar:club.test',
})
const room = await roomOf([ada, ben], self)

/** Long enough for an answer that must not come: others take a tenth of it. */
const quiet_ms = 2_000

describe('ways to ask', () => {
  test('behind the prefix: a text that refers to the question and mentions the asker alone', async () => {
    const asked = await ada.say(room, `!charge ${question}`)
    const answer = await ada.said(room, asked, self)
    expect(answer).toMatchObject({
      msgtype: 'm.text',
      body: expect.stringContaining('Read as: 3S 720mAh LiHV'),
      format: 'org.matrix.custom.html',
      formatted_body: expect.stringContaining('<strong>GO ✅ 3S LiHV, balance charge, 0.5'),
      'm.mentions': { user_ids: [ada.id] },
    })
  })

  test('by mention, as new apps and as old ones write it', async () => {
    const mention = { 'm.mentions': { user_ids: [self] } }
    const asNew = await ada.say(room, `chargehand: ${question}`, mention)
    const asOld = await ada.say(room, `${self} ${question}`)
    for (const asked of [asNew, asOld]) {
      expect((await ada.said(room, asked, self)).body).toContain('Read as: 3S 720mAh LiHV')
    }
  })

  test('in plain words', async () => {
    const asked = await ada.say(room, '!charge what current for a 3s 720 hv on a 0.5/1/2/4 A charger')
    expect((await ada.said(room, asked, self)).body).toContain('Read as: 3S 720mAh LiHV')
  })

  test('talk among people, notices and mentions of others are left alone', async () => {
    const talk = [
      await ada.say(room, question),
      await ada.say(room, 'I asked chargehand yesterday'),
      await ada.say(room, `chargehand ${question}`, { 'm.mentions': { user_ids: [ben.id] } }),
      await ada.send(room, { msgtype: 'm.notice', body: `!charge ${question}` }),
      await ada.send(room, { msgtype: 'm.emote', body: `!charge ${question}` }),
      await ada.say(room, '!chargers are cheap today'),
    ]
    await sleep(quiet_ms)
    expect(talk.map(id => ada.answersTo(room, id, self).length)).toEqual(talk.map(() => 0))
  })

  test('with the file that was asked for, in direct messages', async () => {
    const direct = await ben.roomWith(self, { preset: Preset.TrustedPrivateChat, is_direct: true, name: '' })
    await ben.answer(direct, await ben.say(direct, 'kit save name: tern pack: 2S 600 LiPo for: me'), self)
    const asked = await ben.say(direct, 'export me')
    const file = await until('the file', () => ben.answersTo(direct, asked, self)[1])
    const { msgtype, filename, url } = file.getContent()
    expect({ msgtype, filename }).toEqual({ msgtype: 'm.file', filename: 'about-me.json' })
    const at = ben.client.mxcUrlToHttp(url, undefined, undefined, undefined, false, true, true)
    const stored = await fetch(at ?? '', { headers: { authorization: `Bearer ${ben.client.getAccessToken()}` } })
    expect(await stored.json()).toMatchObject({ kit: [{ name: 'tern', notation: '2S 600mAh LiPo' }] })
  })

  test('in direct messages without a prefix, and with one', async () => {
    const direct = await ben.roomWith(self, { preset: Preset.TrustedPrivateChat, is_direct: true, name: '' })
    const plain = await ben.say(direct, question)
    const prefixed = await ben.say(direct, `!charge ${question}`)
    for (const asked of [plain, prefixed]) {
      const { body } = await ben.said(direct, asked, self)
      expect(body).toContain('Read as: 3S 720mAh LiHV')
      expect(body).not.toContain('!charge')
    }
  })

  test('a reply to an answer changes one thing, whoever replies', async () => {
    const asked = await ada.say(room, `!charge time pack: 3S 720 LiHV current: 1A from: 3.7V`)
    const answer = await ada.answer(room, asked, self)
    const changed = await ben.say(room, 'at 0.5A', {
      'm.relates_to': { 'm.in_reply_to': { event_id: answer.getId() } },
    })
    const { body, ...content } = await ben.said(room, changed, self)
    expect(body).toMatch(/Read as: .*3S 720mAh LiHV.*0\.5A/)
    expect(content).toMatchObject({ 'm.mentions': { user_ids: [ben.id] } })
  })

  test('a reply that changes nothing is talk among people', async () => {
    const asked = await ada.say(room, `!charge ${question}`)
    const answer = await ada.answer(room, asked, self)
    const thanks = await ada.say(room, 'thank you', {
      'm.relates_to': { 'm.in_reply_to': { event_id: answer.getId() } },
    })
    await sleep(quiet_ms)
    expect(ada.answersTo(room, thanks, self)).toHaveLength(0)
  })
})

describe('threads and edits', () => {
  test('a question in a thread is answered in it', async () => {
    const root = await ada.say(room, 'Which charger is on the bench?')
    const asked = await ada.say(room, `!charge ${question}`, {
      'm.relates_to': {
        rel_type: 'm.thread',
        event_id: root,
        is_falling_back: true,
        'm.in_reply_to': { event_id: root },
      },
    })
    const answer = await ada.answer(room, asked, self)
    expect(answer.getWireContent()['m.relates_to']).toEqual({
      rel_type: 'm.thread',
      event_id: root,
      'm.in_reply_to': { event_id: asked },
    })
  })

  test('an edit of the question edits the answer, each time', async () => {
    const asked = await ada.say(room, '!charge current pack: 2S 450 LiPo charger: 1/2/3A')
    const answer = (await ada.answer(room, asked, self)).getId() ?? ''
    for (const [edit, pack] of ['3S 720 LiHV', '4S 1300 LiPo'].entries()) {
      await ada.edit(room, asked, `!charge current pack: ${pack} charger: 1/2/3A`)
      const edited = await until('the answer is edited', () => ada.edits(room, answer)[edit])
      const content = edited.getOriginalContent()
      expect(content['m.new_content']).toMatchObject({ msgtype: 'm.text' })
      expect(content['m.new_content']?.body).toContain(`Read as: ${pack.replace(/(\d+) L/, '$1mAh L')}`)
    }
    expect(ada.answersTo(room, asked, self)).toHaveLength(1)
  })

  test('the picture of an answer follows the edits of its question', async () => {
    const asked = await ada.say(room, '!charge time pack: 3S 720 LiHV current: 1A from: 3.7V')
    const picture = (await until('the picture', () => ada.answersTo(room, asked, self)[1])).getId() ?? ''
    const now = async (edit: number) =>
      (await until('the picture is edited', () => ada.edits(room, picture)[edit])).getOriginalContent()['m.new_content']
    await ada.edit(room, asked, '!charge time pack: 4S 1300 LiPo current: 1A from: 3.7V')
    expect(await now(0)).toMatchObject({ msgtype: 'm.image', url: expect.stringMatching(/^mxc:/) })
    await ada.edit(room, asked, `!charge ${question}`)
    expect(await now(1)).toMatchObject({ msgtype: 'm.text', body: expect.stringContaining('no longer fits') })
    expect(ada.answersTo(room, asked, self)).toHaveLength(2)
  })

  test('a picture comes in the thread of its question and calls nobody', async () => {
    const asked = await ada.say(room, '!charge time pack: 3S 720 LiHV current: 1A from: 3.7V')
    const picture = await until('the picture', () => ada.answersTo(room, asked, self)[1])
    const { content } = await ada.client.fetchRoomEvent(room, picture.getId() ?? '')
    expect(content).toMatchObject({ msgtype: 'm.image', filename: 'chart-1.png' })
    expect(content?.['m.mentions']).toEqual({})
    expect(content?.['m.relates_to']).toEqual({
      rel_type: 'm.thread',
      event_id: asked,
      'm.in_reply_to': { event_id: asked },
    })
  })

  test('an edit that makes a question of a message has it answered', async () => {
    const asked = await ada.say(room, `!chrage ${question}`)
    await ada.edit(room, asked, `!charge ${question}`)
    expect((await ada.said(room, asked, self)).body).toContain('Read as: 3S 720mAh LiHV')
  })

  test('another member cannot edit the question', async () => {
    const asked = await ada.say(room, `!charge ${question}`)
    const answer = (await ada.answer(room, asked, self)).getId() ?? ''
    await ben.edit(room, asked, '!charge current pack: 6S 5000 LiPo charger: 4A')
    await sleep(quiet_ms)
    expect(ada.edits(room, answer)).toHaveLength(0)
  })

  test('a reaction opens a layer, another closes it, and words do the same', async () => {
    const asked = await ada.say(room, `!charge ${question}`)
    const answer = (await ada.answer(room, asked, self)).getId() ?? ''
    const edited = async (count: number): Promise<string> => {
      const edit = await until(`edit ${count} of the answer`, () => ada.edits(room, answer)[count - 1])
      return edit.getOriginalContent()['m.new_content']?.body
    }
    expect((await ada.said(room, asked, self)).body).not.toContain('Why:')
    await ben.react(room, answer, '❔')
    expect(await edited(1)).toContain('Why:')
    await ben.react(room, answer, '➖')
    expect(await edited(2)).not.toContain('Why:')
    await ben.say(room, 'why', { 'm.relates_to': { 'm.in_reply_to': { event_id: answer } } })
    expect(await edited(3)).toContain('Why:')
    await ben.react(room, answer, '👍')
    await sleep(quiet_ms)
    expect(ada.edits(room, answer)).toHaveLength(3)
  })

  test('an answer comes with the signs that it tells of, also where questions come fast', async () => {
    const asked = [
      await ada.say(room, `!charge ${question}`),
      await ben.say(room, '!charge cutoff pack: 2S 2600 Li-ion'),
    ]
    for (const id of asked) {
      const answer = await ada.answer(room, id, self)
      const told = String(answer.getOriginalContent().body).split('\n').at(-1) ?? ''
      const signs = told.split(' · ').map(tap => tap.split(/\s/)[0])
      expect(signs).toContain('1️⃣')
      const placed = await until('all signs', () => {
        const now = ada.signs(room, answer.getId() ?? '', self)
        return now.length >= signs.length && now
      })
      expect(placed).toEqual(signs)
    }
  })

  test('a tap is followed once, though it comes again after a kill', async () => {
    const answer = (await ada.answer(room, await ada.say(room, `!charge ${question}`), self)).getId() ?? ''
    await ben.react(room, answer, '❔')
    await until('the opened answer', () => ada.edits(room, answer)[0])
    await assistant.kill()
    await assistant.start()
    await ada.answer(room, await ada.say(room, `!charge ${question}`), self)
    expect(ada.edits(room, answer)).toHaveLength(1)
  })

  test('a number asks what an answer suggests, for whoever taps it', async () => {
    const asked = await ada.say(room, `!charge ${question}`)
    const answer = (await ada.answer(room, asked, self)).getId() ?? ''
    await ben.react(room, answer, '1️⃣')
    const next = await ada.answer(room, answer, self)
    expect(next.getOriginalContent()['m.mentions']).toEqual({ user_ids: [ben.id] })
    expect(next.getOriginalContent().body).toContain('It takes about')
  })
})

test('what a question has changed is not changed again to open a layer', async () => {
  const asked = await ada.say(room, '!charge kit save name: wren pack: 3S 720 LiHV')
  const answer = (await ada.answer(room, asked, self)).getId() ?? ''
  await ada.react(room, answer, '❔')
  await sleep(quiet_ms)
  expect(ada.edits(room, answer)).toHaveLength(0)
})

describe('load and size', () => {
  test('two questions at once are both answered, each to its asker', async () => {
    const [first, second] = await Promise.all([
      ada.say(room, `!charge ${question}`),
      ben.say(room, '!charge current pack: 4S 1300 LiPo charger: 1/2/3A'),
    ])
    expect((await ada.said(room, first, self)).body).toContain('3S 720mAh LiHV')
    expect(await ada.said(room, second, self)).toMatchObject({
      body: expect.stringContaining('4S 1300mAh LiPo'),
      'm.mentions': { user_ids: [ben.id] },
    })
  })

  test('a message of 60 kB gets a short answer that says what is wrong', async () => {
    const asked = await ada.say(room, `!charge current pack: ${'3S '.repeat(20_000)}`)
    const { body } = await ada.said(room, asked, self)
    expect(body).toContain('I need a question of at most 4000 characters')
    expect(body.length).toBeLessThan(3_000)
  })

  test("what the asker typed stays text in the answer's HTML", async () => {
    const asked = await ada.say(room, '!charge current pack: <img src=x onerror=alert(1)> @room')
    const answer = await ada.said(room, asked, self)
    expect(answer.formatted_body).not.toContain('<img')
    expect(answer['m.mentions']).toEqual({ user_ids: [ada.id] })
  })
})

describe('rooms', () => {
  test('an invite that the rule does not name is declined', async () => {
    const eve = await Member.at(synapse, 'eve')
    const { room_id } = await eve.client.createRoom({ invite: [self] })
    await until('the invite is declined', () => eve.membership(room_id, self) === 'leave')
    eve.leave()
  })

  test('nothing said before the assistant joined is answered', async () => {
    const { room_id } = await ada.client.createRoom({ preset: Preset.PublicChat, name: 'Club field' })
    const before = await ada.say(room_id, `!charge ${question}`)
    await ada.client.invite(room_id, self)
    await until('the assistant joins', () => ada.membership(room_id, self) === 'join')
    const after = await ada.say(room_id, `!charge ${question}`)
    await ada.answer(room_id, after, self)
    expect(ada.answersTo(room_id, before, self)).toHaveLength(0)
  })

  test('only a moderator sends the assistant away', async () => {
    const club = await ada.roomWith(self, { invite: [self, ben.id], preset: Preset.PublicChat })
    await ben.client.joinRoom(club)
    const refused = await ben.say(club, '!charge leave')
    expect((await ben.said(club, refused, self)).body).toContain('Only a moderator')
    expect(ada.membership(club, self)).toBe('join')
    await ada.say(club, '!charge leave')
    await until('the assistant leaves', () => ada.membership(club, self) === 'leave')
  })

  test.each(['leaves', 'is kicked from', 'is banned from'])(
    'its account keeps nothing of a room that it %s',
    async way => {
      const direct = await ben.roomWith(self, { preset: Preset.PrivateChat, is_direct: true, name: '' })
      const { accessToken } = JSON.parse(readFileSync(join(assistant.folder, 'matrix', 'session.json'), 'utf8'))
      const get = (path: string) =>
        fetch(`${synapse.url}/_matrix/client/v3/${path}`, { headers: { authorization: `Bearer ${accessToken}` } })
      const isNoted = async () =>
        (await (await get(`user/${encodeURIComponent(self)}/account_data/m.direct`)).text()).includes(direct)
      const status = async () => (await get(`rooms/${encodeURIComponent(direct)}/messages?dir=b`)).status
      await ben.answer(direct, await ben.say(direct, question), self)
      expect([await isNoted(), await status()]).toEqual([true, 200])
      if (way === 'leaves') await ben.say(direct, 'leave')
      else await (way === 'is kicked from' ? ben.client.kick(direct, self) : ben.client.ban(direct, self))
      await vi.waitFor(async () => expect([await isNoted(), await status()]).toEqual([false, 403]), 10_000)
    },
  )

  test('where it may not speak, it does nothing, and names the permission in direct messages with the asker', async () => {
    const direct = await ada.roomWith(self, { preset: Preset.TrustedPrivateChat, is_direct: true, name: '' })
    const hush = await ada.roomWith(self, {
      name: 'Announcements',
      power_level_content_override: { events_default: 50 },
    })
    await ada.say(hush, '!charge kit save name: plover pack: 3S 720 LiHV')
    await ada.say(hush, `!charge ${question}`)
    const told = await until('word of the missing permission', () => ada.heard(direct, self)[0])
    expect(told.getContent().body).toBe(
      'I may not send messages in Announcements: that needs power level 50, and mine is 0. A moderator there can change that.',
    )
    await ada.client.setPowerLevel(hush, self, 50)
    expect((await ada.said(hush, await ada.say(hush, '!charge kit list'), self)).body).not.toContain('plover')
    expect(assistant.log().match(/may not send messages in Announcements/g)).toHaveLength(1)
  })

  test('rooms of the configuration: an open one is joined, at a closed one it knocks and comes when let in', async () => {
    const mona = await Member.at(synapse, 'mona')
    const { room_id: open } = await ada.client.createRoom({ preset: Preset.PublicChat, room_alias_name: 'bench' })
    const { room_id: closed } = await mona.client.createRoom({
      room_alias_name: 'hangar',
      initial_state: [{ type: 'm.room.join_rules', state_key: '', content: { join_rule: 'knock' } }],
    })
    await assistant.stop()
    await assistant.start()
    await until('the assistant joins', () => ada.membership(open, self) === 'join')
    await until('the assistant knocks', () => mona.membership(closed, self) === 'knock')
    await assistant.stop()
    await assistant.start()
    await mona.client.invite(closed, self)
    await until('the assistant comes in', () => mona.membership(closed, self) === 'join')
    await mona.answer(closed, await mona.say(closed, `!charge ${question}`), self)
    mona.leave()
  })

  test.each(['10', '12'])('an upgrade to room version %s is followed, and the old room left', async version => {
    const old = await ada.roomWith(self, { preset: Preset.PublicChat, room_version: '10' })
    const { replacement_room } = await ada.client.upgradeRoom(old, version as never)
    await until('the assistant joins', () => ada.membership(replacement_room, self) === 'join')
    await until('the assistant leaves', () => ada.membership(old, self) === 'leave')
    const asked = await ada.say(replacement_room, `!charge ${question}`)
    await ada.answer(replacement_room, asked, self)
  })

  test('the creator of a version 12 room moderates it, though the power levels do not say so', async () => {
    const twelve = await ada.roomWith(self, { room_version: '12' })
    await ada.say(twelve, '!charge leave')
    await until('the assistant leaves', () => ada.membership(twelve, self) === 'leave')
  })
})
