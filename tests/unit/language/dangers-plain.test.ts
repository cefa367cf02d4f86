// The plainest sentence of each danger is told by rules over concepts, whatever the weights were last trained from.

import { describe, expect, test } from 'vitest'
import { dangersIn } from '../../../src/language/dangers/index.ts'
import { askedInGeneral, countsApart, countsRight, plainDangers } from './plain-dangers.ts'

const listed = (text: string): readonly string[] => text.split(/\s\/\s+/).map(one => one.trim())
const toldIn = (text: string) => dangersIn(text).told.map(({ danger }) => danger)

describe('plain sentences', () => {
  test.each(Object.entries(plainDangers))('of %s are heard, most of them for certain', (danger, sentences) => {
    const all = listed(sentences)
    expect(all).toHaveLength(4)
    const told = all.filter(text => toldIn(text).some(one => one === danger))
    const heard = all.filter(text => told.includes(text) || dangersIn(text).suspected.some(one => one === danger))
    expect(heard).toEqual(all)
    expect(told.length).toBeGreaterThanOrEqual(3)
  })

  test('that ask about dangers in general tell none', () => {
    expect(listed(askedInGeneral).filter(text => dangersIn(text).suspected.length + toldIn(text).length > 0)).toEqual(
      [],
    )
  })
})

describe('smoke and fire', () => {
  const said = [
    'the price of a 5s 900 is on fire this year. amps for one?',
    'that film about exploding batteries was dull. storage volts of a 5s?',
  ]
  test('in another sense send nobody out, but are spoken of', () => {
    const found = said.map(text => dangersIn(text))
    expect(found.map(({ told }) => told.some(({ danger }) => danger === 'fire'))).toEqual([false, false])
    expect(found.map(({ suspected }) => suspected.includes('fire'))).toEqual([true, true])
  })
})

describe('a cell count set on the charger', () => {
  test('that is not the one of the pack is told, in any verb', () => {
    expect(listed(countsApart).filter(text => !toldIn(text).includes('wrongCount'))).toEqual([])
  })

  test('that is right, or of another pack, is not', () => {
    expect(listed(countsRight).filter(text => toldIn(text).includes('wrongCount'))).toEqual([])
  })
})
