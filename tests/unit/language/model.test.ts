// The model reads people whom nothing was learned from.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bestCover, candidatesOf } from '../../../src/language/candidates/index.ts'
import { intents } from '../../../src/language/corpus/intents.ts'
import { clausesOf } from '../../../src/language/model/clauses.ts'
import { conceptsOf } from '../../../src/language/model/concepts.ts'
import { intentsOf, isKnownWord, knownShare } from '../../../src/language/model/index.ts'
import { heldOut, messagesOf } from '../../../training/corpus/read-corpus.ts'
import { anyCharacter } from '../../support/any-character.ts'
import { cases } from '../../support/cases.ts'

describe('intents', () => {
  const guesses = [...heldOut].flatMap(author =>
    messagesOf(author).map(message => ({ message, ranked: intentsOf(message.text, candidatesOf(message.text)) })),
  )
  const fitting = (within: number) =>
    guesses.filter(({ message, ranked }) =>
      ranked.slice(0, within).some(({ intent }) => intent === message.intent || intent === message.also),
    ).length / guesses.length

  it('of people held out are the likeliest in 85 of 100 messages, or one of two in 93', () => {
    expect(fitting(1)).toBeGreaterThan(0.85)
    expect(fitting(2)).toBeGreaterThan(0.93)
  })

  it('that are real are hardly ever taken for idle talk', () => {
    const idle = ['smalltalk', 'notours']
    const lost = guesses.filter(
      ({ message, ranked }) => !idle.includes(message.intent) && idle.includes(ranked[0]?.intent ?? ''),
    )
    expect(lost.length).toBeLessThanOrEqual(guesses.length / 100)
  })

  it('are right about as often as their shares say', () => {
    for (const [from, to] of [
      [0.4, 0.7],
      [0.7, 0.9],
      [0.9, 1.01],
    ] as const) {
      const within = guesses.filter(({ ranked: [first] }) => first && first.share >= from && first.share < to)
      const right = within.filter(
        ({ message, ranked: [first] }) => first?.intent === message.intent || first?.intent === message.also,
      )
      expect(right.length / within.length, `${from} to ${to}`).toBeGreaterThan(from - 0.05)
    }
  })

  it.each([
    ['how many minutes does a 3s 1300 take at one amp', 'time'],
    ['amps for my 4s 2200 lipo?', 'current'],
    ['which wire for 20 A over two metres', 'lead'],
    ['may I charge it on the ironing board', 'handbook'],
    ['lowest volts for a 5s in the air', 'handbook'],
    ['how many volts has a full 5s', 'percent'],
    ['no, I meant the 4s', 'amend'],
    ['quiz me please', 'lesson ask'],
    ['many thanks', 'smalltalk'],
  ])('of "%s" is %s', (text, intent) => {
    expect(intentsOf(text)[0]?.intent).toBe(intent)
  })

  it('of any text are all there, likeliest first, and share one whole', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: anyCharacter, maxLength: 5000 }), fc.string({ maxLength: 80 })), text => {
        const ranked = intentsOf(text)
        expect(ranked.map(({ intent }) => intent).toSorted()).toEqual([...intents].toSorted())
        expect(ranked.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9)
        expect(ranked.every(({ share }, at) => share <= (ranked[at - 1]?.share ?? 1))).toBe(true)
        expect(knownShare(text)).toBeGreaterThanOrEqual(0)
        expect(knownShare(text)).toBeLessThanOrEqual(1)
      }),
      cases(100),
    )
  })
})

describe('known words', () => {
  it.each(['charger', 'Lipo', 'yesterday', "don't", 'chargre', 'Akku'])('"%s" is one', word => {
    expect(isKnownWord(word)).toBe(true)
  })

  it.each(['xqzzt', 'asdfgh', 'зарядка'])('"%s" is none', word => {
    expect(isKnownWord(word)).toBe(false)
  })

  it('are counted without the numbers', () => {
    expect(knownShare('how long for 3s 1300 at 1A')).toBe(1)
    expect(knownShare('how qqxz charger xxyyz')).toBe(0.5)
    expect(knownShare('3.85?')).toBe(1)
  })
})

describe('what a word is about', () => {
  it.each([
    ['puffed', 'swollen'],
    ['discharging', 'down'],
    ['lugagge', 'plane'],
    ['multimetre', 'meter'],
    ['chrager', 'charge'],
  ])('%s: %s', (word, concept) => {
    expect(conceptsOf(word)).toContain(concept)
  })

  it('is not guessed for short or strange words', () => {
    expect(conceptsOf('tap')).toEqual([])
    expect(conceptsOf('zzzzzzzz')).toEqual([])
  })
})

describe('clauses', () => {
  it('hold a sign for each value, and say which of them ask', () => {
    const text = 'just landed, what amps for the 3s 1300 lipo? it stands at 3.7V.'
    expect(bestCover(candidatesOf(text)).length).toBeGreaterThan(1)
    const clauses = clausesOf(text, candidatesOf(text))
    expect(clauses.find(({ words }) => words.includes('#pack'))).toMatchObject({ asks: true })
    expect(clauses.at(-1)).toEqual({ words: ['it', 'stands', 'at', '#state'], asks: false })
  })
})
