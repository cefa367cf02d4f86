// What is told as a danger, what is denied, past or somebody else's, and in which words it stands.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Danger } from '../../../src/charging/situation/dangers.ts'
import { dangersIn } from '../../../src/language/dangers/index.ts'

const toldIn = (text: string): readonly Danger[] => dangersIn(text).told.map(({ danger }) => danger)

const told: readonly (readonly [Danger, string])[] = [
  ['swollen', 'what amps for my 3s 2200, it is a bit puffy but ok'],
  ['swollen', 'I would not say the 4S 1500 is not swollen. What current?'],
  ['unattended', 'why must I not leave it charging overnight'],
  ['unattended', 'may I leave the charger running while I mow the lawn'],
  ['unattended', '3s 2200 at 1A, I go to bed at eleven, when is it full'],
  ['movingVehicle', 'can I charge the 3s 1300 while my wife drives, 90 minutes on the motorway'],
  ['softBed', 'how long for the 2s 450 at 0.5A, it lies on the sofa next to me'],
  ['wrongCount', 'I told the charger it is a 4S but the pack is a 3S 2200 LiPo, done when?'],
  ['wrongMode', 'my pack is a LiFe and the charger runs in LiPo mode, 1A, how long'],
  ['wrongMode', 'plain 4s 1500 lipo, the program stands on LiHV, how many minutes'],
  ['tooFast', 'the label says 75C so I put 30 A on the 3s 1300 lipo'],
  ['tooFast', 'it should be full in 5 minutes'],
  ['tooLow', 'cells are 2.1 2.0 2.2 on my 3s 1300 lipo, what do I start with'],
  ['tooLow', 'cell 2 reads 0.15 V on my 3s 1300'],
  ['tooLow', 'cell 2 reads 0 V on my 3s 1300'],
  ['tooLow', 'cell 2 reads 2.00 on my 3s 1300, what amps'],
  ['tooLow', 'cells are 3.80 2.00 3.80 on my 3s 1300, what amps'],
  ['overfull', 'my 2s 800 shows 9.00, what now'],
  ['tooLow', 'the 3S 1300 does not, cell dead, what amps'],
  ['wrongCount', 'I do not. Set to 4S, my pack is a 3S 1300'],
  ['wrongCount', 'charger set to 4S, 3S 1300 lipo, how long at 1 A'],
  ['wrongMode', '1300 lipo 3S, on life, how long at 1 A'],
  ['fire', 'no error\nsmoke comes out of the pack'],
  ['overfull', 'my 3s 2200 lipo has taken 2610 and it still goes on, when does it stop'],
  ['boardMixed', 'board with three 3s 1300 lipo, two at 3.7 and one at 4.15, what amps'],
  ['noBalance', 'the balance plug is torn off, 2S 800 at 0.8 A over the thick wires?'],
  ['exhaust', 'generator 1 kW runs in the tent with us, enough for two chargers?'],
  ['drainsSource', 'how many packs from the starter battery of my car, engine off'],
  ['fire', 'there is white smoke coming out of the pack what now'],
  ['injury', 'electrolyte got in my eye'],
]

const harmless: readonly string[] = [
  'what amps for the 3s 850, not puffy at all',
  'is it swollen? no, flat as new. what amps for the 3s 1300',
  'the 3S 1300 isn´t swollen, what amps',
  'the old one caught fire years ago, what do I set for the new 3s 1300 lipo',
  'how long for the 2s 450, it stands on the tiles and I am on the sofa',
  'I never leave it overnight, how long does a 3s 2200 take at 2.2 A',
  'charger asked for the cells, I told it 4S and the pack is a 4S 1500 LiPo, how long',
  'label says 75C but that is for flying, 1C for the 3s 1300',
  'board: three 3s 1300 lipo, all at 3.80, what amps together',
  'how long for a 4S 2200 LiPo at 2.2 A from 3.7 V per cell?',
  'how many percent is 3.84',
  'good morning all',
]

describe('dangers in words', () => {
  test.each(told)('tells %s: %s', (danger, text) => expect(toldIn(text)).toContain(danger))

  test.each(harmless)('tells none: %s', text => expect(toldIn(text)).toEqual([]))

  test('gives the words it stands in', () => {
    const text = 'what amps, the pack is swollen'
    const [first] = dangersIn(text).told
    expect(first?.typed).toContain('swollen')
    expect(text.slice(first?.start, first?.end)).toBe(first?.typed)
  })

  test('tells each danger once, in the order of the text', () => {
    const all = dangersIn('it is puffy, swollen and bloated, and it smokes on the sofa while I am at work').told
    expect(new Set(all.map(({ danger }) => danger)).size).toBe(all.length)
    expect(all.map(({ start }) => start)).toEqual(all.map(({ start }) => start).toSorted((a, b) => a - b))
  })

  test('an emergency stands beside talk of answers and rules', () => {
    expect(toldIn('pin the answer about fires later, my pack is on fire')).toContain('fire')
    expect(toldIn('pin the standard answer about swollen packs')).toEqual([])
  })
})

describe('a smoke stopper', () => {
  test('is no smoke, and hides none', () => {
    expect(toldIn('do I need a smoke stopper every time')).toEqual([])
    expect(toldIn('the smoke stopper is in and the pack smokes')).toContain('fire')
  })
})

describe('the steps of a charger', () => {
  test.each([
    '650 mAh LiHV on steps of 1, 2, 3, 5 A, what current',
    'amps for a 2S 900 lipo on steps of 0.3, 0.8, 1.5 and 3 A',
  ])('are no stairs: %s', text => {
    expect(dangersIn(text)).toMatchObject({ told: [], suspected: [] })
  })
})

describe('a fuse', () => {
  test.each([
    'the rear outlet is on a 12 amp fuse, may the charger pull 100 W',
    'is a 25A fused lead from the field battery enough for 6S 1300 at 2.6A',
    'fuse lid says 7.5 for the lighter socket, 2S 2200 at 2A',
    'a socket behind a 15 amp fuse, how many watts for my charger',
  ])('named with its amps is no danger: %s', text => expect(dangersIn(text)).toMatchObject({ told: [], suspected: [] }))

  test.each([
    'a 35 amp fuse sits where the 12 was, 300 W charger ok',
    'wrapped the dead fuse in foil, 4S 1500 at 3A',
    'replaced the fuse in the outlet with a 40, what amps now',
  ])('made larger or bridged never gets a plain go: %s', text => {
    const { told, suspected } = dangersIn(text)
    expect([...told.map(({ danger }) => danger), ...suspected]).toContain('bypass')
  })
})

describe('dangers in other tongues', () => {
  test.each<readonly [Danger, string]>([
    ['swollen', 'welcher Strom für den 3S 1300, der Akku ist etwas aufgebläht'],
    ['unattended', 'darf der 3S 2200 über Nacht laden'],
    ['movingVehicle', 'wir laden während der Fahrt, 3S 1300 mit 1 A'],
    ['fire', 'der Akku raucht'],
    ['swollen', 'la 3S 2200 est gonflée, quel courant'],
    ['unattended', 'je charge toute la nuit, 3S 1300 à 0,5 A'],
    ['noBalance', 'je charge sans équilibrage, combien de temps'],
    ['swollen', 'qué corriente para la 3S hinchada'],
    ['wet', 'cayó al agua pero ya está seca, 3s 1300'],
    ['unattended', 'la dejo cargando toda la noche'],
    ['swollen', 'de accu is opgezwollen, hoeveel ampere'],
    ['unattended', 'mag de lipo de hele nacht laden'],
    ['swollen', 'la batteria è gonfia, quanti ampere'],
    ['unattended', 'la carico mentre dormo'],
  ])('tells %s: %s', (danger, text) => expect(toldIn(text)).toContain(danger))

  test.each([
    'der Akku ist nicht aufgebläht, welcher Strom',
    'la batterie n’est pas gonflée, quel courant',
    'la batería nada hinchada, ¿qué corriente?',
  ])('tells none: %s', text => expect(toldIn(text)).toEqual([]))
})

describe('any text', () => {
  test('never throws, and spans lie within the text', () => {
    const words = fc.constantFrom(
      'not',
      'swollen',
      '4S',
      '3S',
      '2.1',
      'on',
      'bed',
      'charger',
      '-6',
      '?',
      '“',
      'é',
      '💥',
      '\n',
      'while',
      'I',
    )
    const texts = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 300 }),
      fc.array(words).map(list => list.join(' ')),
    )
    fc.assert(
      fc.property(texts, text => {
        for (const { start, end, typed } of dangersIn(text).told) {
          expect(text.slice(start, end)).toBe(typed)
          expect(typed).not.toBe('')
        }
      }),
    )
  })
})

test.each([
  'the label says 2C for charging',
  'sticker: 1.5C charge',
  'charged at 1C as always',
  '3.9 A on a 4S 1300 whose label says 5C charge',
])('a usual rate is not too fast: "%s"', text => {
  const { told, suspected } = dangersIn(text)
  expect([...told.map(({ danger }) => danger), ...suspected]).not.toContain('tooFast')
})
