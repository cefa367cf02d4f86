// What moderators see and do in their rooms: emergencies told in the room of their own, answers marked as wrong.

import { expect, test } from 'vitest'
import { roomOf, startClub } from '../../support/matrix/club.ts'
import { until } from '../../support/matrix/member.ts'

const { self, ada, ben } = await startClub(['ada', 'ben'])
const room = await roomOf([ada, ben], self)
const question = 'current pack: 3S 720 LiHV charger: 0.5/1/2/4A'

test('an emergency is told with a link within a minute, and none of its words', { timeout: 60_000 }, async () => {
  await ada.answer(room, await ada.say(room, '!charge house set alerts: here emergency: 112'), self)
  const asked = await ben.say(room, '!charge my pack went up in flames on the bench')
  expect((await ben.said(room, asked, self)).body).toContain('Call 112.')
  const told = await until('the alert', () =>
    ada.heard(room, self).find(event => String(event.getContent().body).startsWith('EMERGENCY')),
  )
  const { body, formatted_body } = told.getContent()
  expect(body).toContain('fire or smoke: ben tells of it')
  expect(body).not.toContain('bench')
  expect(formatted_body).toContain(
    `<a href="https://matrix.to/#/${encodeURIComponent(room)}/${encodeURIComponent(asked)}`,
  )
})

test('a moderator’s cross strikes an answer, and who tapped on it is told', { timeout: 60_000 }, async () => {
  const asked = await ada.say(room, `!charge ${question}`)
  const answer = (await ada.answer(room, asked, self)).getId() ?? ''
  await ben.react(room, answer, '❔')
  await until('the opened answer', () => ada.edits(room, answer)[0])
  await ben.react(room, answer, '❌')
  await ada.react(room, answer, '❌')
  const struck = await until('the struck answer', () => ada.edits(room, answer)[1])
  const { body, formatted_body } = struck.getOriginalContent()['m.new_content'] ?? {}
  expect(body).toMatch(/^WRONG: .*\n~~GO ✅/)
  expect(formatted_body).toContain('<p><del><strong>GO ✅')
  const told = await until('who read it is told', () =>
    ben.heard(room, self).find(event => String(event.getContent().body).includes('marked an answer as wrong')),
  )
  expect(told.getContent()['m.mentions']).toEqual({ user_ids: [ben.id] })
  await ben.react(room, answer, '🔢')
  await ada.answer(room, await ada.say(room, `!charge ${question}`), self)
  expect(ada.edits(room, answer)).toHaveLength(2)
})
