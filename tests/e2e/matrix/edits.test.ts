// A question that is edited or taken away once it was answered: the answer follows, and what was done is not done again.

import { setTimeout as sleep } from 'node:timers/promises'
import { describe, expect, test } from 'vitest'
import { roomOf, startClub } from '../../support/matrix/club.ts'
import { until } from '../../support/matrix/member.ts'

const { assistant, self, ada, ben } = await startClub(['ada', 'ben'])
const room = await roomOf([ada, ben], self)
await ada.client.setPowerLevel(room, ben.id, 50)

const current = (pack: string, more = '') => `!charge current pack: ${pack} charger: 0.5/1/2/4A${more}`
const isGone = (id: string, at = room) => ada.client.getRoom(at)?.findEventById(id)?.isRedacted() === true
const listed = async (): Promise<string> => (await ada.said(room, await ada.say(room, '!charge kit list'), self)).body
const shownNow = (id: string): Promise<string> =>
  until('the answer is edited', () => ada.edits(room, id).at(-1)?.getOriginalContent()['m.new_content']?.body)

async function asked(words: string): Promise<{ question: string; answer: string }> {
  const question = await ada.say(room, words)
  return { question, answer: (await ada.answer(room, question, self)).getId() ?? '' }
}

describe('an edit', () => {
  test('that leaves the verdict edits the answer, once', async () => {
    const { question, answer } = await asked(current('2S 450 LiPo'))
    await ada.edit(room, question, current('3S 720 LiHV'))
    expect(await shownNow(answer)).toContain('3S 720mAh LiHV')
    expect(ada.answersTo(room, question, self)).toHaveLength(1)
  })

  test('that makes it worse is answered by a new message that calls the asker, and the old answer goes', async () => {
    const { question, answer } = await asked(current('3S 720 LiHV'))
    await ada.edit(room, question, current('3S 720 LiHV', ' from: 2V'))
    // The old one goes as soon as the new one stands: both at once may never be seen.
    const anew = await until('a new answer', () =>
      ada.answersTo(room, question, self).find(one => one.getId() !== answer),
    )
    expect(anew.getOriginalContent()).toMatchObject({
      body: expect.stringContaining('NO ⛔ Do not charge'),
      'm.mentions': { user_ids: [ada.id] },
    })
    await until('the old answer is gone', () => isGone(answer))
    expect(ada.edits(room, answer)).toHaveLength(0)
    await ada.edit(room, question, current('3S 720 LiHV'))
    expect(await shownNow(anew.getId() ?? '')).toMatch(/^GO /)
  })

  test('of what was saved saves nothing, and says how to take it back', async () => {
    const { question, answer } = await asked('!charge kit save name: wren pack: 3S 720 LiHV')
    await ada.edit(room, question, '!charge kit save name: tern pack: 2S 450 LiPo')
    expect(await shownNow(answer)).toMatch(/after it was done: kit save\..*To take it back: !charge undo/)
    const kit = await listed()
    expect([kit.includes('3S 720mAh'), kit.includes('2S 450mAh')]).toEqual([true, false])
    await ada.answer(room, await ada.say(room, '!charge undo'), self)
    expect(await listed()).not.toContain('3S 720mAh')
  })

  test('is not heard again after a kill', async () => {
    const { question, answer } = await asked(current('2S 450 LiPo'))
    await ada.edit(room, question, current('3S 720 LiHV'))
    await shownNow(answer)
    await assistant.kill()
    await assistant.start()
    await listed()
    expect(ada.edits(room, answer)).toHaveLength(1)
  })
})

describe('a question that is taken away', () => {
  test.each(['its asker', 'a moderator'])('by %s takes its answer and its picture with it', async by => {
    const question = await ada.say(room, '!charge time pack: 3S 720 LiHV current: 1A from: 3.7V')
    const picture = await until('the picture', () => ada.answersTo(room, question, self)[1])
    const answer = await ada.answer(room, question, self)
    await (by === 'its asker' ? ada : ben).client.redactEvent(room, question)
    await until('both are gone', () => isGone(answer.getId() ?? '') && isGone(picture.getId() ?? ''))
  })

  test('takes what it was answered in private along, with the file, and the line that said so', async () => {
    const question = await ada.say(room, '!charge export me')
    const line = await ada.answer(room, question, self)
    const direct = await until(
      'an invite',
      () => ada.client.getRooms().find(one => one.getMyMembership() === 'invite')?.roomId,
    )
    await ada.client.joinRoom(direct)
    await until('answer and file', () => ada.heard(direct, self)[1])
    const [answer = '', file = ''] = ada.heard(direct, self).map(event => event.getId() ?? '')
    await ada.client.redactEvent(room, question)
    await until('all are gone', () => isGone(line.getId() ?? '') && isGone(answer, direct) && isGone(file, direct))
  })

  test('says what was done all the same, and how to take it back', async () => {
    const { question, answer } = await asked('!charge kit save name: swift pack: 3S 720 LiHV')
    const before = ada.heard(room, self).length
    await ada.client.redactEvent(room, question)
    const told = await until('word of it', () => ada.heard(room, self)[before])
    expect(told.getOriginalContent()).toMatchObject({
      body: expect.stringMatching(/done all the same: kit save\. To take it back: !charge undo/),
      'm.mentions': { user_ids: [ada.id] },
    })
    expect(isGone(answer)).toBe(true)
    expect(await listed()).toContain('swift')
  })

  test('is not what somebody is who takes their tap on an answer back: it stays', async () => {
    const { answer } = await asked(current('2S 450 LiPo'))
    const tap = await ben.react(room, answer, '❔')
    await shownNow(answer)
    await ben.client.redactEvent(room, tap)
    await listed()
    expect(isGone(answer)).toBe(false)
  })

  test('while the assistant was away takes its answer with it at the start', async () => {
    const { question, answer } = await asked(current('2S 450 LiPo'))
    await assistant.kill()
    await ada.client.redactEvent(room, question)
    await assistant.start()
    await until('the answer is gone', () => isGone(answer))
  })

  test('before it was read is not answered', async () => {
    await assistant.stop()
    const question = await ada.say(room, current('2S 450 LiPo'))
    await ada.client.redactEvent(room, question)
    await assistant.start()
    await listed()
    await sleep(1000)
    expect(ada.answersTo(room, question, self)).toHaveLength(0)
  })
})
