// What moderators say of answers and rules in their own words, and the change that it is read as.

import { afterEach, beforeEach, expect, test } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, member, moderator } from '../../support/ask.ts'
import { demoAsking } from '../../support/demo-asking.ts'
import { endFaultless } from '../../support/end-faultless.ts'
import { fakeBoard } from '../../support/fake-noticeboard.ts'
import talks from './talks-of-moderators.json' with { type: 'json' }

let asking: Asking
const begin = async () => {
  asking = await demoAsking(commands, { noticeboard: fakeBoard().noticeboard, clock: () => new Date() })
}
const end = async () => {
  await asking.assistant.settled()
  await endFaultless(asking)
}
beforeEach(begin)
afterEach(end)

/** What it is read as, in notation: done, or asked about first. */
async function readAs(text: string): Promise<string> {
  const { question, problem, followUps } = await asking.ask(text, moderator)
  return question ?? (problem ? (followUps[0]?.question ?? '') : '')
}

/** Of a hundred lines the model may leave so many unread; none may be read as another change. */
const mostUnread_percent = 1

test('what moderators say is read as the change that they mean, or as none', async () => {
  const unread: string[] = []
  for (const { said } of talks) {
    await end()
    await begin()
    for (const [text = '', as = ''] of said) {
      const read = (await readAs(text)).toLowerCase()
      if (read === '' && as !== '') unread.push(text)
      else expect([text, read]).toEqual([text, as === '' ? '' : expect.stringContaining(as.toLowerCase())])
    }
  }
  const lines = talks.flatMap(({ said }) => said)
  expect(unread.length, unread.join(' | ')).toBeLessThanOrEqual((lines.length * mostUnread_percent) / 100)
})

test.each([
  'the answer to "who has the mower" is: ask Hinnerk',
  'whoever asks about the gate should hear: ask the warden',
  'the one about puffed packs should say outdoors',
  'we no longer need the puffed packs answer',
  'nobody charges above 1C from now on',
])('a member is told that it takes a moderator: %j', async text => {
  await asking.ask('answer save title: Puffed packs text: Ask at the bench.', moderator)
  expect((await asking.ask(text, member)).problem?.what).toContain('Only moderators')
})

test.each(['my puffed pack, what do I do', 'a puffed pack, what now?'])('a danger is no title: %j', async text => {
  await asking.ask('answer save title: Puffed packs text: Ask at the bench.', moderator)
  expect((await asking.ask(text, member)).verdict).toBe('do not charge')
})

test.each([
  'short answer please: why not charge overnight',
  'someone asks about charging in the car: is it ok',
  'my mate said nobody should charge below 5 degrees',
  'the charger should say 12.6 but reads 12.2',
])('nothing is changed by what only sounds so: %j', async text => {
  await asking.ask(text, moderator)
  expect(await asking.memory.answers.list(moderator.community.id)).toEqual([])
  expect(await asking.memory.house.rules(moderator.community.id)).toEqual({})
})

test('one that is not there is said to be missing, and the same of others is offered', async () => {
  await asking.ask('answer save title: Puffed packs text: Ask at the bench.', moderator)
  const { problem, followUps } = await asking.ask('the answer on the mower should say ask Hinnerk', moderator)
  expect(problem?.what).toContain('no standard answer "mower"')
  expect(followUps.map(({ question }) => question)).toEqual(['answer edit title: Puffed packs text: ask Hinnerk'])
})

test('what was changed is not changed once more by a word that points at it', async () => {
  await asking.ask('answer save title: Coffee text: From ten.', moderator)
  await asking.ask('the coffee answer should say from eleven', moderator)
  await asking.ask('yes', moderator)
  const { problem } = await asking.ask("I don't think anybody needs these days", moderator)
  expect(problem?.what ?? '').not.toContain('Change the standard answer')
})
