// What is done with what a club keeps, as moderators say it: verbs and names decide, whatever the names sound like.

import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, member, moderator } from '../../support/ask.ts'
import { demoAsking } from '../../support/demo-asking.ts'
import { endFaultless } from '../../support/end-faultless.ts'
import { fakeBoard } from '../../support/fake-noticeboard.ts'

let asking: Asking
beforeEach(async () => {
  asking = await demoAsking(commands, { noticeboard: fakeBoard().noticeboard, clock: () => new Date() })
})
afterEach(async () => {
  await asking.assistant.settled()
  await endFaultless(asking)
})

const ask = (text: string) => asking.ask(text, moderator)
const answers = async () =>
  (await asking.memory.answers.list(moderator.community.id)).map(one => [one.title, one.content])

test('what is to be done with the words of an answer is none of them', async () => {
  await ask('whoever asks where empty packs go, the answer is from now on: in the tin by the gate. Save that.')
  expect(await answers()).toContainEqual([expect.any(String), 'in the tin by the gate.'])
})

describe('an answer that is there', () => {
  beforeEach(async () => {
    for (const title of ['Puffed packs', 'Where we charge', 'Delete and remove'])
      await ask(`answer save title: ${title} text: Ask at the bench.`)
  })

  test.each([
    ['bin the answer on puffed packs', 'Remove the standard answer "Puffed packs"?'],
    ['could the where we charge card come down?', 'Remove the standard answer "Where we charge"?'],
    ['get rid of Puffed packs please', 'Remove the standard answer "Puffed packs"?'],
    ['take "Delete and remove" off the board', 'Remove the standard answer "Delete and remove"?'],
    ['retitle Puffed packs to Swollen ones', 'Its title would be "Swollen ones".'],
    ["change the title of 'Puffed packs' into Fat ones please", 'Its title would be "Fat ones".'],
    ['Where we charge should be called Charging corner from now on', 'Its title would be "Charging corner".'],
    ['Puffed packs -> Fat ones', 'Its title would be "Fat ones".'],
    ['please give the puffed packs answer the title Fat ones', 'Its title would be "Fat ones".'],
    ['change Where we charge so it says In the shed.', 'It would say: "In the shed."'],
    ['reword Puffed packs: outdoors, in sand', 'It would say: "outdoors, in sand"'],
  ])('is asked about before it is changed: %j', async (text, what) => {
    const { problem, verdict } = await ask(text)
    expect(problem?.what).toContain(what)
    expect(verdict).toBeUndefined()
  })

  test.each([
    ['put the puffed packs answer up again', 'answer post'],
    ['could Where we charge live in this channel instead?', 'answer move'],
    ['list every pin that is up at the moment', 'answer list'],
    ['what is pinned here', 'answer list'],
    ['which cards do we have', 'answer list'],
    ['what does our card on puffed packs say', 'answer show'],
    ['bring back Delete and remove', 'answer post'],
  ])('%j is %s', async (text, command) => {
    expect((await ask(text)).command).toBe(command)
  })

  test.each([
    'who may delete the Puffed packs answer?',
    'do not delete Puffed packs, whatever they say',
    'somebody deleted Where we charge',
    'how do I delete the answer on puffed packs',
    'what happens if I remove Where we charge',
    'what current for a 3S 720 LiHV',
  ])('is left as it is where nothing is wanted of it: %j', async text => {
    const { problem, verdict } = await ask(text)
    expect(problem).toBeUndefined()
    expect(verdict).not.toBe('do not charge')
    expect(await answers()).toHaveLength(3)
  })

  test('one that is picked of those that are offered is asked about, too', async () => {
    const { verdict, problem } = await ask('delete the answer on crashed packs')
    expect(verdict).toBeUndefined()
    expect(problem?.expected).toContain('Puffed packs')
    expect((await ask('2')).problem?.what).toContain('Remove the standard answer')
    await ask('yes')
    expect(await answers()).toHaveLength(2)
  })

  test('a pack of that kind is no answer', async () => {
    expect((await ask('how do I get rid of my puffed pack')).verdict).toBe('do not charge')
  })

  test('one that was removed is brought back by its title, whatever was changed since', async () => {
    await ask('answer remove title: Puffed packs')
    await ask('house set rate: 1C')
    await ask('why not overnight')
    expect((await ask('restore Puffed packs')).problem?.what).toContain('the answer "Puffed packs" removed')
    await ask('yes')
    expect(await answers()).toHaveLength(3)
    expect(await asking.memory.house.rules(moderator.community.id)).toMatchObject({ maxRate_C: { LiPo: 1 } })
  })
})

describe('the last answer', () => {
  test.each([
    ['keep this as Storage small packs', 'Storage small packs'],
    ['save under Half full', 'Half full'],
    ['make this one of our answers: half full', 'half full'],
    ["that one's worth keeping, call it Half full", 'Half full'],
    ['save what you just said under "Half full"', 'Half full'],
    ['pin the last answer as our answer on winter, would you', 'Winter'],
    ['that should be our standard answer on storage', 'Storage'],
    ['put that on the board, title: Why storage', 'Why storage'],
  ])('is kept under the name that is told: %j', async (text, title) => {
    await ask('why storage charge')
    await ask(text)
    expect(await answers()).toEqual([[title, 'handbook about: Why packs are stored half full']])
  })

  test('gets the title that is offered, or another', async () => {
    await ask('what current for a 3S 720 LiHV')
    await ask('why not overnight')
    const { followUps } = await ask('pin that one')
    expect(followUps.map(({ label }) => label)).toEqual(['Charging overnight'])
    await ask('Nights at home')
    await ask('pin that one')
    await ask('1')
    expect((await answers()).map(([title]) => title)).toEqual(['Charging overnight', 'Nights at home'])
  })

  test.each(['save that pack as hawk', 'call it hawk', 'keep that one as hawk'])('is no pack: %j', async text => {
    await ask('what current for a 4S 1500 LiPo')
    await ask(text)
    expect(await answers()).toEqual([])
    expect((await asking.memory.members.export(moderator.asker.id)).kit).toMatchObject([
      { name: 'hawk', notation: '4S 1500mAh LiPo' },
    ])
  })

  test('is pinned by a moderator alone', async () => {
    await asking.ask('why storage charge', member)
    expect((await asking.ask('pin that as Storage', member)).problem?.what).toContain('Only moderators')
    expect((await asking.ask('who can pin that?', member)).command).toBe('handbook')
  })
})

test.each([
  'write into the club rules: no charging in the tent',
  'the rules should say: no charging in the tent',
  'add to our rules that no charging in the tent',
])('a rule in words is kept on the board: %j', async text => {
  await ask(text)
  expect(await answers()).toEqual([['No charging in the tent', 'no charging in the tent']])
})

test('a longer text is kept under its first words, and found by what it says', async () => {
  await ask('pin this here: the side door stays shut while anything charges')
  await ask('pin this here: gloves hang left of the extinguisher, and stay there')
  const text = 'the side door stays shut while anything charges'
  expect(await answers()).toContainEqual(['Side door stays shut', text])
  const { followUps } = await ask('take the notice about anything charging and the side door down')
  expect(followUps[0]?.question).toBe('answer remove title: Side door stays shut')
  expect((await ask('delete the notice with the ladder')).problem?.what).toContain('title')
})

test('all reminders go after a yes', async () => {
  await ask('remind me in: 30min')
  await ask('remind me in: 2h')
  expect((await ask('cancel my reminders')).problem?.what).toContain('Cancel all 2')
  await ask('yes')
  expect((await asking.memory.members.export(moderator.asker.id)).reminders).toEqual([])
})

test.each([
  ['charged sparrow today, 1200 mAh went in', 'sparrow'],
  ['logged robin: 650 mAh', 'robin'],
  ['log charge of my gull, 900 mah', 'gull'],
  ['note that kite took 1100 mAh', 'kite'],
])('a pack that is not saved is named, with how to save it: %j', async (text, name) => {
  const { problem } = await ask(text)
  expect(problem).toMatchObject({ token: name, example: `kit save name: ${name} pack: 3S 720 LiHV` })
})
