// What is answered to questions in other tongues: refusals in theirs, figures where certain, never a plain go.

import fc from 'fast-check'
import { afterEach, beforeEach, describe, expect, it, test } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { dangers } from '../../../src/charging/situation/dangers.ts'
import { familyOf, textIn } from '../../../src/handbook/tongues.ts'
import { glossaryOf, type Tongue, wordsOfTongues } from '../../../src/language/tongues/glossaries.ts'
import { type Asking, askingOf } from '../../support/ask.ts'
import { cases } from '../../support/cases.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking

beforeEach(async () => {
  asking = await askingOf(commands)
})
afterEach(() => endFaultless(asking))

const asked: readonly (readonly [Tongue, string, string])[] = [
  ['de', 'Wieviel Ampere für 4S 1500 Lipo?', 'darf der 3S 2200 über Nacht laden'],
  ['fr', 'Quel courant pour charger une lipo 4S 1500 mAh ?', 'je charge ma 3S 2200 toute la nuit à 1 A'],
  ['es', '¿Cuántos amperios para una lipo 4S 1500?', 'la 3S 2200 la dejo cargando toda la noche a 1 A'],
  ['nl', 'Hoeveel ampère voor een 4S 1500 lipo?', 'mag de 3S 2200 de hele nacht laden op 1 A'],
  ['it', 'Quanti ampere per una lipo 4S 1500?', 'carico la 3S 2200 a 1 A mentre dormo'],
]

test.each([
  'kann ich einen 3S und einen 4S Akku zusammen ans Parallelboard hängen',
  'on peut charger une 2S et une 3S ensemble sur la planche parallèle',
  'se pueden cargar una 3S y una 2S juntas en la placa paralela',
  'kunnen een 2S en een 4S samen op het parallelbord',
  'metto una 2S e una 3S insieme sulla scheda parallela',
])('packs that differ on one board are refused: %s', async question => {
  expect((await asking.ask(question)).verdict).toBe('do not charge')
})

test.each([
  ['Mit wieviel Ampere lade ich einen LiFe 2S 2100?', 'gut', 'und wo hört er auf?', '7.2 V'],
  ['Quel courant pour charger une lipo 4S 1500 mAh ?', 'merci', "et où s'arrête-t-elle", '16.8 V'],
  ['¿Cuántos amperios para una lipo 4S 1500?', 'vale', '¿y dónde se detiene?', '16.8 V'],
])('a word of thanks between loses nothing: %s %s %s', async (question, thanks, then, volts) => {
  await asking.ask(question)
  await asking.ask(thanks)
  expect((await asking.ask(then)).headline).toContain(volts)
})

test.each([
  ['was heißt 45C auf dem Aufkleber vom Akku?', 'What 30C on a label means'],
  ['wat is de opslagspanning', 'Which volts are storage volts'],
  ['cosa significa 1C', 'What 1C means'],
])('what the handbook surely has is said, and that only a part was read: %s', async (question, title) => {
  const reply = await asking.ask(question)
  expect(reply.readAs).toContain(title)
  expect([reply.verdict, reply.lines.length]).toEqual(['go with care', 3])
})

describe('a question in another tongue', () => {
  test.each(asked)('is answered with figures and care where it is certain: %s', async (tongue, question) => {
    const reply = await asking.ask(question)
    expect(reply.verdict).toBe('go with care')
    expect(reply.figures.find(({ key }) => key === 'setCurrent')?.value).toBeCloseTo(1.5, 9)
    expect(reply.lines.at(-1)).toContain(textIn(tongue, 'partly'))
    expect(reply.lines.at(-1)).toContain('4S 1500mAh LiPo')
    expect(reply.question).toContain('foreignTongue')
    expect((await asking.ask(reply.question ?? '')).verdict).toBe('go with care')
  })

  test.each(asked)('is refused in it where it tells a danger: %s', async (tongue, _, question) => {
    const reply = await asking.ask(question)
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline.startsWith(textIn(tongue, 'watch'))).toBe(true)
  })

  it('that is not understood says so in it, with the pack that was read', async () => {
    const reply = await asking.ask('was bedeutet die zweite Zahl hinten auf dem 4S 1500')
    expect(reply.verdict).toBeUndefined()
    expect(reply.headline).toContain(textIn('de', 'english'))
    expect(reply.headline).toContain('4S 1500')
  })

  it.each([
    ['Hallo zusammen, der Bus hat Verspätung und mir ist langweilig. Wie viel Ampere für einen 3S 1400 LiPo?', '1.4 A'],
    ['Welchen Ladestrom stelle ich bei einem 3S LiPo mit 2100 mAh ein, und wie lange dauert das ungefähr?', '2.1 A'],
  ])('is answered where one of its sentences is certain: %s', async (text, current) => {
    const { headline, verdict } = await asking.ask(text)
    expect([verdict, headline]).toEqual(['go with care', expect.stringContaining(current)])
  })

  it('that is not read at all is told so in English', async () => {
    const reply = await asking.ask('jakim prądem ładować 4S 1500 LiPo?')
    expect(reply.verdict).not.toBe('go')
    expect(reply.headline).toMatch(/^I read English/)
  })

  it('tells an emergency in it before all else', async () => {
    const reply = await asking.ask('aus dem Akku kommt Rauch')
    expect(reply.headline.startsWith(textIn('de', 'fire'))).toBe(true)
  })

  it('has words for every danger in every tongue', () => {
    for (const tongue of Object.keys(glossaryOf) as Tongue[])
      for (const danger of Object.keys(dangers) as (keyof typeof dangers)[])
        expect(textIn(tongue, familyOf(danger)), `${tongue} ${danger}`).toMatch(/\p{L}{3}/u)
  })
})

const english = wordsOfTongues.get('en') ?? new Set()
const foreign = [...wordsOfTongues].flatMap(([tongue, words]) =>
  tongue === 'en' ? [] : [...words.difference(english)],
)
const foreignWord = fc.oneof(
  fc.constantFrom(...foreign.filter(({ length }) => length > 3)),
  fc.string({ unit: fc.constantFrom(...'bdfgklmnprstvzaeiouąčéøşžłßñ'), minLength: 4, maxLength: 9 }),
  fc.string({
    unit: fc.constantFrom(...'абвгдежзиклмнопрст充電池電流何アンペアتيارالشحن'),
    minLength: 2,
    maxLength: 8,
  }),
)
const values = fc.constantFrom('4S 1500 LiPo', '3S 2200mAh LiHV 1C', '2S 450 LiPo 0,5A', '6S 5000 LiPo 5 A 20%')

describe('sentences in any tongue with a pack in them', () => {
  it('never get a plain go', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(foreignWord, { minLength: 2, maxLength: 8 }),
        fc.array(fc.constantFrom('what current', 'how long', 'current', 'time', 'ok'), { maxLength: 1 }),
        values,
        fc.nat(8),
        async (words, asks, pack, at) => {
          const text = [...asks, ...words.toSpliced(at, 0, pack)].join(' ')
          expect([text, (await asking.ask(text)).verdict]).not.toEqual([text, 'go'])
        },
      ),
      cases(400),
    )
  })
})
