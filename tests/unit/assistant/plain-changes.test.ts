// What is kept, changed in plain words: names and titles are found, and nothing goes without a yes to that very question.

import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { unsure } from '../../../src/assistant/asking/confirming.ts'
import { english } from '../../../src/ground/locale.ts'
import { type Asking, askingOf, member, moderator, otherMember } from '../../support/ask.ts'
import { commandNamed } from '../../support/commands.ts'
import { fakeBoard } from '../../support/fake-noticeboard.ts'

let asking: Asking
beforeEach(async () => {
  const { noticeboard } = fakeBoard()
  let now_ms = Date.parse('2031-05-04T10:00:00Z')
  const clock = () => {
    now_ms += 1000
    return new Date(now_ms)
  }
  asking = await askingOf(commands, { noticeboard, clock })
})
afterEach(async () => {
  await asking.assistant.settled()
  expect(asking.faults).toEqual([])
  await asking.memory.close()
})

const titles = async () => (await asking.memory.answers.list(moderator.community.id)).map(({ title }) => title)
const rules = () => asking.memory.house.rules(moderator.community.id)
const kit = async () => (await asking.memory.members.export(member.asker.id)).kit.map(one => [one.name, one.notation])

describe('what may not have been meant', () => {
  test.each([
    [0.5, true],
    [0.9, false],
  ])('is asked about where it is as likely as %d: %s', (likelihood, asks) => {
    const locale = english('.')
    const question = { command: 'kit save', options: {} }
    const understanding = { intent: 'kit save' as const, likelihood, values: [], notUnderstood: [] }
    const said = unsure(commandNamed('kit save'), { question, understanding }, locale.own('wren'), locale)
    expect(said && `${said(locale)}`).toEqual(
      asks
        ? 'Shall I do this? Saves a pack, charger or source by name, for you or for the club. Here: wren.'
        : undefined,
    )
    expect(unsure(commandNamed('kit list'), { question, understanding }, locale.own('wren'), locale)).toBeUndefined()
  })
})

describe('names as people type them', () => {
  test.each([
    ['save wren 3S 720 LiHV', 'wren', '3S 720mAh LiHV'],
    ['save "big one" = 6S 5000 LiPo', 'big one', '6S 5000mAh LiPo'],
    ['save “big one” = 6S 5000 LiPo', 'big one', '6S 5000mAh LiPo'],
    ['call my 4s 1500 lipo hawk', 'hawk', '4S 1500mAh LiPo'],
    ['please save the yellow 2S 800 LiPo as Tit Two', 'tit two', '2S 800mAh LiPo'],
    ['save pack Alder: 5S 900 LiPo', 'alder', '5S 900mAh LiPo'],
    ['save pack 7: 5S 900 LiPo', 'pack-7', '5S 900mAh LiPo'],
  ])('%s', async (words, name, notation) => {
    const { problem } = await asking.ask(words)
    // What is not quite sure is asked about first.
    if (problem) expect((await asking.ask(problem.example)).problem).toBeUndefined()
    expect(await kit()).toEqual([[name, notation]])
  })

  test('no word is taken for one that was not given as one', async () => {
    expect((await asking.ask('my 3S 850mAh LiHV: it slammed into the runway')).verdict).toBe('go with care')
    expect(await kit()).toEqual([])
  })

  test('one that means something else is refused', async () => {
    expect((await asking.ask('save my 2S 450 LiPo as storage')).problem?.what).toContain('storage')
    expect(await kit()).toEqual([])
  })

  test.each(['time', 'yes', 'no', 'more', 'less', 'why', 'figures', 'care', 'short'])(
    '%s is what a tap or an answer says, so another is offered',
    async word => {
      const { problem, followUps } = await asking.ask(`save ${word} = 3S 720 LiHV`)
      expect(problem?.what).not.toContain('Shall I')
      expect(followUps.map(({ label }) => label)).toEqual([`save my-${word} = 3S 720mAh LiHV`])
      await asking.ask(followUps[0]?.question ?? '')
      expect(await kit()).toEqual([[`my-${word}`, '3S 720mAh LiHV']])
    },
  )

  test('between quotes it is taken whole, or refused', async () => {
    await asking.ask('save wren 3S 720 LiHV')
    await asking.ask('save "wren two" = 4S 1500 LiPo')
    expect((await asking.ask('save "4S spare" = 4S 1500 LiPo')).problem?.token).toBe('4S spare')
    expect((await kit()).map(([name]) => name)).toEqual(['wren', 'wren two'])
  })

  test('one that stands for another pack is asked about first', async () => {
    await asking.ask('save wren 3S 720 LiHV')
    expect((await asking.ask('save wren 3S 850 LiHV')).problem?.what).toContain('3S 720mAh LiHV')
    await asking.ask('no')
    expect(await kit()).toEqual([['wren', '3S 720mAh LiHV']])
    await asking.ask('save wren 3S 850 LiHV')
    await asking.ask('yes')
    expect(await kit()).toEqual([['wren', '3S 850mAh LiHV']])
  })
})

describe('standard answers', () => {
  beforeEach(async () => {
    for (const title of ['Adapters', 'Cold packs', 'Puffed packs'])
      await asking.ask(`answer save title: ${title} text: Ask at the bench.`, moderator)
  })

  test('one is found by likeness, and removed after a yes', async () => {
    const { problem, followUps } = await asking.ask('delete the answer on adapters', moderator)
    expect(problem?.what).toContain('Remove the standard answer "Adapters"?')
    expect(followUps.map(({ question }) => question)).toEqual(['answer remove title: Adapters', 'no'])
    expect(await titles()).toContain('Adapters')
    await asking.ask('yes', moderator)
    expect(await titles()).not.toContain('Adapters')
    await asking.ask('undo', moderator)
    expect(await titles()).toContain('Adapters')
  })

  test.each([
    'add a club rule: packs may charge overnight in the barn with nobody there',
    'put this on the board: members can leave a charge alone for an hour',
    'save an answer called break: a charge may go on alone while we eat',
    'pin this here: a pack that is a little puffed can be charged slowly',
  ])('that would allow a danger is refused: %s', async words => {
    const { verdict, followUps } = await asking.ask(words, moderator)
    expect(followUps).toEqual([])
    expect(verdict).toMatch(/^(?:do not charge|go with care)$/)
    await asking.ask('yes', moderator)
    expect(await titles()).toHaveLength(3)
  })

  test('that forbids one is kept', async () => {
    await asking.ask('keep this as a rule: nobody charges overnight in the barn', moderator)
    expect(await titles()).toContain('Nobody charges overnight in the barn')
  })

  test('a yes to nothing, of another or after something else changes nothing', async () => {
    await asking.ask('yes', moderator)
    await asking.ask('delete the answer on adapters', moderator)
    await asking.ask('yes', otherMember)
    await asking.ask('what current for a 3S 720 LiHV', moderator)
    await asking.ask('yes', moderator)
    expect(await titles()).toEqual(['Adapters', 'Cold packs', 'Puffed packs'])
  })

  test('its title tells of no pack', async () => {
    const { verdict, problem } = await asking.ask('delete the answer on puffed packs', moderator)
    expect(verdict).toBeUndefined()
    expect(problem?.what).toContain('Puffed packs')
  })

  test('a danger of a pack beside it is answered first, and a yes to that removes nothing', async () => {
    for (const words of [
      'My pack is leaking, and delete the answer on puffed packs',
      'delete the answer on puffed packs. My own pack is leaking',
    ]) {
      const { verdict, problem } = await asking.ask(words, moderator)
      expect(problem).toBeUndefined()
      expect(['go with care', 'do not charge']).toContain(verdict)
      await asking.ask('yes', moderator)
      expect(await titles()).toContain('Puffed packs')
    }
  })

  test('a title that is missing is asked back with those that are stored', async () => {
    const { problem, followUps } = await asking.ask('delete the pinned answer', moderator)
    expect(problem).toBeDefined()
    expect(followUps.map(({ label }) => label)).toEqual(expect.arrayContaining(['Adapters', 'Cold packs']))
  })

  test('a member is told that it takes a moderator, and nothing is asked', async () => {
    const { problem } = await asking.ask('delete the answer on adapters')
    expect(problem?.what).toContain('Only moderators')
    expect((await asking.ask('delete the pinned answer')).problem?.what).toContain('Only moderators')
    await asking.ask('yes')
    expect(await titles()).toContain('Adapters')
  })
})

describe('a change taken back in plain words', () => {
  test('is done at once behind it, and asked about once something else was spoken of', async () => {
    await asking.ask('set our max to 1C', moderator)
    await asking.ask('undo that please', moderator)
    expect(await rules()).toEqual({})
    await asking.ask('set our max to 1C', moderator)
    await asking.ask('what current for a 3S 720 LiHV', moderator)
    expect((await asking.ask('take that back', moderator)).problem?.what).toContain('highest charge rate 1C')
    await asking.ask('no', moderator)
    expect(await rules()).toMatchObject({ maxRate_C: { LiPo: 1 } })
  })

  test('is the last one of what is named', async () => {
    await asking.ask('house set rate: 1C', moderator)
    await asking.ask('answer save title: Bench text: By the door.', moderator)
    await asking.ask('undo about: rules', moderator)
    expect(await rules()).toEqual({})
    expect(await titles()).toEqual(['Bench'])
  })
})

describe('rules of the club', () => {
  test('a limit without a type is for every type', async () => {
    await asking.ask('set our max to 1C', moderator)
    expect(await rules()).toEqual({ maxRate_C: { LiPo: 1, LiHV: 1, 'Li-ion': 1, LiFe: 1 } })
  })

  test('one that is lifted in any words is never set, and goes after a yes', async () => {
    await asking.ask('set our max to 1C', moderator)
    const { problem } = await asking.ask('we have decided to suspend the 1C limit', moderator)
    expect(problem?.what).toContain('Then: every type: highest charge rate not set')
    await asking.ask('yes', moderator)
    expect(await rules()).toEqual({})
  })

  test('one that is set already can be lifted by what is offered', async () => {
    await asking.ask('house set rate: 1C', moderator)
    const { followUps } = await asking.ask('house set rate: 1C', moderator)
    await asking.ask(followUps[0]?.question ?? '', moderator)
    expect(await rules()).toEqual({})
  })

  test('one that stands is changed after a yes', async () => {
    await asking.ask('set our max to 1.5C for LiPo', moderator)
    expect((await asking.ask('set our max to 1C for LiPo', moderator)).problem?.what).toContain('1.5C')
    expect(await rules()).toEqual({ maxRate_C: { LiPo: 1.5 } })
    await asking.ask('yes please', moderator)
    expect(await rules()).toEqual({ maxRate_C: { LiPo: 1 } })
  })
})

describe('a name', () => {
  test('is saved after another, whatever it is written in', async () => {
    for (const said of [
      'save magpie 3S 720 LiHV',
      'save "big one" = 6S 5000 LiPo',
      'save \u201cold blue\u201d 2S 450 LiPo',
    ])
      expect((await asking.ask(said)).problem).toBeUndefined()
    expect(await kit()).toEqual([
      ['big one', '6S 5000mAh LiPo'],
      ['magpie', '3S 720mAh LiHV'],
      ['old blue', '2S 450mAh LiPo'],
    ])
    const { question, understood } = await asking.ask('how long for \u201cbig one\u201d at 5A')
    expect(question).toBe('time pack: 6S 5000mAh LiPo current: 5A')
    expect(understood?.notUnderstood).toEqual([])
  })

  test('that is missing is asked for with new ones to choose from', async () => {
    const { followUps } = await asking.ask('save my 3S 2200 LiPo')
    expect(followUps.map(({ label }) => label)).toEqual(['my-2200', 'red-2200', 'spare-2200'])
    expect((await asking.ask('2')).question).toBe('kit save name: red-2200 pack: 3S 2200mAh LiPo')
  })
})

test('new words with a comma give an answer no other title', async () => {
  await asking.ask('save a standard answer titled Small packs: charge at the bench', moderator)
  await asking.ask('edit the answer Small packs: never in the car, never in a bag', moderator)
  await asking.ask('yes', moderator)
  const answers = await asking.memory.answers.list(moderator.community.id)
  expect(answers.map(({ title, content }) => [title, content])).toEqual([
    ['Small packs', 'never in the car, never in a bag'],
  ])
})

describe('what a pack took', () => {
  test.each([
    ['wren took 610 mAh in 62 min at 0.7 A from 3.75 V', { charge_Ah: 0.61, duration_s: 3720, current_A: 0.7 }],
    ['wren took back 640 mAh at 0.8 A, 55 minutes, from 3.7 V', { charge_Ah: 0.64, duration_s: 3300, current_A: 0.8 }],
  ])('is noted after a yes: %s', async (words, charge) => {
    await asking.ask('kit save name: wren pack: 3S 720 LiHV')
    const { problem } = await asking.ask(words)
    expect(problem?.what).toContain(
      'Shall I do this? Notes a charge of a saved pack, to follow its capacity and resistance. Here: wren',
    )
    await asking.ask('yes')
    expect(await asking.memory.log.of({ scope: 'person', id: member.asker.id }, 'wren')).toMatchObject([charge])
  })

  test('but not where a question is asked of it', async () => {
    await asking.ask('kit save name: wren pack: 3S 720 LiHV')
    const asked = await asking.ask('wren took 610 mAh, how long at 0.7 A from 3.75 V?')
    expect(asked.command).toBe('time')
  })
})
