// What was asked while the assistant was away: for an hour, and for days.

import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { roomOf, startClub } from '../../support/matrix/club.ts'
import { type Member, until } from '../../support/matrix/member.ts'

const later = fileURLToPath(new URL('../../support/matrix/later.ts', import.meta.url))
const question = '!charge current pack: 3S 720 LiHV charger: 0.5/1/2/4A'
const save = '!charge kit save name: wren pack: 3S 720 LiHV'
const hour_s = 3600

const { assistant, self, ada, ben } = await startClub(['ada', 'ben'])
const room = await roomOf([ada, ben], self)

/** What is said is heard so much later; gives the first answers. A fire of another member stands in no way of Ada's questions. */
async function heardAfter(away_s: number, ...said: readonly (readonly [Member, string])[]): Promise<string[]> {
  await assistant.stop()
  const asked: string[] = []
  for (const [member, words] of said) asked.push(await member.say(room, words))
  await assistant.start({ NODE_OPTIONS: `--import=${later}`, AHEAD_S: String(away_s) })
  const answers: string[] = []
  for (const id of asked) answers.push((await ada.said(room, id, self)).body)
  return answers
}

test('an hour late: no plain go, with when it was asked, and asked about before it is saved', async () => {
  const [calculated = '', saved = '', fire = ''] = await heardAfter(
    hour_s,
    [ada, question],
    [ada, save],
    [ben, '!charge my pack is on fire'],
  )
  expect(calculated).toMatch(/^CARE /)
  expect(calculated).toContain('may have changed since this was asked')
  expect(calculated).toContain('You asked this 1 h ago.')
  expect(saved).toContain('Shall I do this? Saves a pack')
  expect(fire).toMatch(/^NO ⛔ Get away/)
})

test.each([2, 20])('%s days late: one line, save for an emergency', async days => {
  const [calculated = '', saved = '', fire = ''] = await heardAfter(
    (days * 24 + 1) * hour_s,
    [ada, question],
    [ada, save],
    [ben, '!charge my pack is on fire'],
  )
  const line = 'This came while I was away; ask again if you still need it.'
  expect([calculated, saved]).toEqual([line, line])
  expect(fire).not.toContain(line)
  expect(fire).toContain('ago')
})

test('nothing of it is said again by the next start, and nothing was saved', async () => {
  const before = ada.heard(room, self).length
  await assistant.stop()
  await assistant.start()
  const asked = await ada.say(room, '!charge kit list')
  expect((await ada.said(room, asked, self)).body).toContain('Nothing is saved by name yet')
  await until('the list', () => ada.heard(room, self).length === before + 1)
})
