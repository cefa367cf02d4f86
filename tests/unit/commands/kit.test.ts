// The kit in use: saved names in questions, in lists and on Tab; who may change what; which names are refused.

import fc from 'fast-check'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { mostEntries } from '../../../commands/kit/kit.ts'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import * as kinds from '../../../src/language/kinds/values.ts'
import { type Asking, askingOf, member, moderator, otherMember } from '../../support/ask.ts'
import { cases, partOf } from '../../support/cases.ts'
import { commandNamed } from '../../support/commands.ts'
import { endFaultless } from '../../support/end-faultless.ts'

const current = commandNamed('current')
const kitList = commandNamed('kit list')
const kitRemove = commandNamed('kit remove')
const kitRename = commandNamed('kit rename')
const kitSave = commandNamed('kit save')

let asking: Asking
beforeEach(async () => {
  asking = await askingOf([current, kitSave, kitList, kitRename, kitRemove])
})
afterEach(() => endFaultless(asking))

const wren = 'kit save name: wren pack: 3S 720 LiHV'
const bench = 'kit save name: bench charger: 0.5/1/2/4A for: club'

/** Asks and expects an answer, not a problem. */
async function done(question: string, by?: Occasion) {
  const reply = await asking.ask(question, by)
  expect(reply.problem).toBeUndefined()
  return reply
}

describe('a saved name', () => {
  test('stands for its notation, and the read-as line shows both', async () => {
    await done(wren)
    await done(bench, moderator)
    const reply = await done('current pack: wren charger: bench')
    expect(reply.readAs).toBe('wren (3S 720mAh LiHV), on a charger with bench (0.5/1/2/4A)')
    expect(reply.question).toBe('current pack: 3S 720mAh LiHV charger: 0.5/1/2/4A')
    const spelled = await done('current pack: 3S 720 LiHV charger: 0.5/1/2/4A')
    expect(reply.figures).toEqual(spelled.figures)
  })

  test('stands in plain words too, whatever its case and the punctuation behind it', async () => {
    await done(wren)
    await done(bench, moderator)
    const reply = await done('What current for my Wren on bench?')
    expect(reply.question).toBe('current pack: 3S 720mAh LiHV charger: 0.5/1/2/4A')
    expect(reply.readAs).toContain('wren (3S 720mAh LiHV)')
    expect(reply.assumed).toEqual([])
  })

  test('takes further details of the notation behind it', async () => {
    await done(wren)
    const reply = await done('current pack: wren 6mΩ')
    expect(reply.question).toBe('current pack: 3S 720mAh LiHV 6mΩ')
    expect(reply.readAs).toContain('wren')
  })

  test('of two words is found before one of one word', async () => {
    await done(wren)
    await done('kit save name: wren two pack: 2S 450 LiPo')
    expect((await done('what current for wren two')).question).toBe('current pack: 2S 450mAh LiPo')
    expect((await done('current pack: wren two')).question).toBe('current pack: 2S 450mAh LiPo')
  })

  test('of the asker hides one of the club; others see the club’s', async () => {
    await done('kit save name: wren pack: 2S 450 LiPo for: club', moderator)
    await done(wren)
    expect((await done('current pack: wren')).question).toContain('3S 720mAh LiHV')
    expect((await done('current pack: wren', otherMember)).question).toContain('2S 450mAh LiPo')
  })

  test('of a pack serves as a source, of a charger not as a pack', async () => {
    await done('kit save name: crate pack: 4S 5000 Li-ion')
    await done(bench, moderator)
    expect((await done('current pack: 3S 720 LiHV source: crate')).question).toContain('source: 4S 5000mAh Li-ion')
    const { problem } = await asking.ask('current pack: bench')
    expect(problem?.token).toBe('bench')
    expect(problem?.what).toBe('"bench" is saved as a charger: 0.5/1/2/4A.')
  })

  test('never changes a value that reads without it', async () => {
    await done(bench, moderator)
    expect((await done('current pack: 3S 720 LiHV source: bench 12V 5A')).question).toBe(
      'current pack: 3S 720mAh LiHV source: 12V 5A',
    )
  })

  test('even one that should have been refused changes no question that reads without it', async () => {
    const owner = { scope: 'person', id: member.asker.id } as const
    for (const name of ['lihv', 'set', 'pd', 'what', 'mah', 'amps', 'with']) {
      await asking.memory.kit.save({ owner, name, kind: 'pack', notation: '6S 5000mAh LiPo' }, 100)
    }
    const questions = [...current.examples, 'what amps should i set for a 3s 720 mah lihv with a 0.5/1/2A charger']
    for (const question of questions) {
      expect(await done(question)).toEqual(await done(question, otherMember))
    }
  })

  test('of another person means nothing', async () => {
    await done(wren)
    expect((await asking.ask('current pack: wren', otherMember)).problem).toBeDefined()
  })

  test('is not replaced where a name is wanted', async () => {
    await done(wren)
    await done('kit save wren pack: 2S 450 LiPo')
    expect((await done('current pack: wren')).question).toContain('2S 450mAh LiPo')
    await done('kit rename wren to: owl')
    expect((await done('current pack: owl')).question).toContain('2S 450mAh LiPo')
    await done('kit remove owl')
    expect((await asking.ask('current pack: owl')).problem).toBeDefined()
  })
})

describe('names', () => {
  test.each([
    ['a pack', '3s 720 lihv'],
    ['a chemistry', 'lipo'],
    ['a level', 'storage'],
    ['a level', 'full'],
    ['a source', 'usb pd'],
    ['a number', '720'],
    ['a current', '2a'],
    ['a unit', 'mah'],
    ['a unit among others', 'ah wren'],
    ['a command', 'current'],
    ['a word of a command', 'kit'],
    ['an option', 'charger'],
    ['words that questions are made of', 'what should'],
    ['a word of danger', 'swollen'],
    ['a word of danger among others', 'puffy wren'],
    ['a letter too many', 'w'.repeat(33)],
    ['words too many', 'one wren two three'],
    ['punctuation', 'wren:'],
    ['a pattern', '.*'],
    ['nothing', ''],
  ])('%s is no name: %s', async (_, name) => {
    const { problem } = await asking.assistant.answer(
      { command: 'kit save', options: { name, pack: '3S 720 LiHV' } },
      member,
    )
    expect(problem).toBeDefined()
    expect(await asking.memory.kit.count({ scope: 'person', id: member.asker.id })).toBe(0)
  })

  test('what any kind of value reads is no name', { timeout: 60_000 }, async () => {
    const examples = Object.values(kinds).flatMap(kind => [kind.example, ...kind.complete('')])
    for (const name of examples) {
      const { problem } = await asking.assistant.answer(
        { command: 'kit save', options: { name, pack: '3S 720 LiHV' } },
        member,
      )
      expect(problem, name).toBeDefined()
    }
  })

  test('any name that is taken stands for its pack in notation and in plain words', { timeout: 60_000 }, async () => {
    const word = fc.string({ unit: fc.constantFrom(...'abehklnoruäøñ1-'), minLength: 1, maxLength: 9 })
    const name = fc.array(word, { minLength: 1, maxLength: 3 }).map(words => words.join(' '))
    let taken = 0
    await fc.assert(
      fc.asyncProperty(name, async tried => {
        const saved = await asking.ask(`kit save name: ${tried} pack: 3S 720 LiHV`)
        if (saved.problem) return
        taken += 1
        expect((await done(`current pack: ${tried}`)).question).toBe('current pack: 3S 720mAh LiHV')
        expect((await done(`what current for ${tried}`)).question).toBe('current pack: 3S 720mAh LiHV')
        await done(`kit remove name: ${tried}`)
      }),
      cases(150),
    )
    expect(taken).toBeGreaterThan(partOf(30))
  })
})

describe('who may change what', () => {
  const changes = [
    bench,
    'kit save name: owl pack: 2S 450 LiPo for: club',
    'kit rename name: shed to: barn for: club',
    'kit remove name: shed for: club',
  ]
  test.each(changes)('a member does not change the club’s kit: %s', async change => {
    await done('kit save name: shed source: 12V 10A for: club', moderator)
    const { problem } = await asking.ask(change)
    expect(problem?.what).toBe("Only moderators change the club's kit.")
    const club = { scope: 'community', id: member.community.id } as const
    expect(await asking.memory.kit.find([club], ['shed', 'barn', 'bench', 'owl'])).toEqual([
      { owner: club, name: 'shed', kind: 'source', notation: '12V 10A' },
    ])
  })

  test('nobody changes the kit of another', async () => {
    await done(wren)
    await done('kit remove name: wren', otherMember)
    await done('kit rename name: wren to: owl', moderator)
    expect((await done('current pack: wren')).question).toContain('3S 720mAh LiHV')
  })
})

test('a name stands for one thing', async () => {
  expect((await asking.ask('kit save name: wren')).problem?.what).toContain('what the name stands for')
  const both = await asking.ask('kit save name: wren pack: 3S 720 LiHV charger: 1/2A')
  expect(both.problem?.what).toBe('A name stands for one thing.')
})

test('saved again, the reply says what the name stood for before', async () => {
  await done(wren)
  expect((await done('kit save name: wren pack: 3S 650 LiHV')).headline).toBe(
    'Saved: wren stands for 3S 650mAh LiHV in your kit. Before, it stood for 3S 720mAh LiHV.',
  )
})

test('a full kit takes no more, and says so', async () => {
  const owner = { scope: 'person', id: member.asker.id } as const
  for (let i = 0; i < mostEntries.person; i++) {
    await asking.memory.kit.save({ owner, name: `p-${i}`, kind: 'pack', notation: '3S 720mAh LiHV' }, 1000)
  }
  expect((await asking.ask(wren)).problem?.what).toBe('There are 200 entries in your kit; no more fit.')
})

test('a rename keeps to names that are free and fit', async () => {
  await done(wren)
  await done('kit save name: owl pack: 2S 450 LiPo')
  expect((await asking.ask('kit rename name: wren to: owl')).problem?.token).toBe('owl')
  expect((await asking.ask('kit rename name: wren to: storage')).problem?.token).toBe('storage')
  expect((await done('kit rename name: kite to: hawk')).headline).toContain('nothing was changed')
})

describe('kit list', () => {
  test('shows own and club, with what each stands for', async () => {
    await done(wren)
    await done(bench, moderator)
    const reply = await done('kit list')
    expect(reply.headline).toBe("Saved by name: yours 1, the club's 1.")
    expect(reply.working).toEqual(['Yours: wren, pack 3S 720mAh LiHV', "The club's: bench, charger 0.5/1/2/4A"])
    expect((await done('kit list for: club', otherMember)).headline).toBe("Saved by name: the club's 1.")
    expect((await done('kit list for: me', otherMember)).headline).toContain('Nothing is saved')
  })

  test('of many shows some and says how to find the rest', async () => {
    const owner = { scope: 'person', id: member.asker.id } as const
    for (let i = 10; i < 50; i++) {
      await asking.memory.kit.save({ owner, name: `owl-${i}`, kind: 'pack', notation: '3S 720mAh LiHV' }, 1000)
    }
    const { working } = await done('kit list')
    expect(working).toHaveLength(31)
    expect(working.at(-1)).toContain('there are more')
    expect((await done('kit list starts: owl-4')).working).toHaveLength(10)
  })
})

describe('completion', () => {
  const complete = (command: string, option: string, prefix: string) =>
    asking.assistant.complete(command, option, prefix, member)

  test('offers saved names of the kind first, then the notation', async () => {
    await done(wren)
    await done(bench, moderator)
    expect((await complete('current', 'pack', ''))[0]).toBe('wren')
    expect(await complete('current', 'pack', 'Wr')).toEqual(['wren'])
    expect((await complete('current', 'pack', '3S'))[0]).toBe('3S 720 LiHV')
    expect((await complete('current', 'charger', ''))[0]).toBe('bench')
    expect(await complete('current', 'source', 'wr')).toEqual(['wren'])
    expect(await complete('kit remove', 'name', '')).toEqual(['bench', 'wren'])
    expect(await complete('kit rename', 'to', '')).toEqual([])
  })

  test('offers 25 at most, and nothing for what it does not know', async () => {
    const owner = { scope: 'person', id: member.asker.id } as const
    for (let i = 10; i < 50; i++) {
      await asking.memory.kit.save({ owner, name: `owl-${i}`, kind: 'pack', notation: '3S 720mAh LiHV' }, 1000)
    }
    expect(await complete('current', 'pack', '')).toHaveLength(25)
    expect(await complete('current', 'colour', '')).toEqual([])
    expect(await complete('fly', 'pack', '')).toEqual([])
    expect(await complete('current', 'pack', 'w'.repeat(10_000))).toEqual([])
  })
})
