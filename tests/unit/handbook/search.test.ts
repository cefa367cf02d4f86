// How well questions find their entries: the entries' own, left out of the index, and those of people held out.

import { describe, expect, it } from 'vitest'
import { askedOf, wordedBy } from '../../../src/handbook/asked.ts'
import { handbook } from '../../../src/handbook/entries.ts'
import { entriesFor, finderOf, leastScore } from '../../../src/handbook/search.ts'
import { heldOut, messagesOf } from '../../../training/corpus/read-corpus.ts'
import judged from '../../fixtures/handbook/held-out.json' with { type: 'json' }

const share = (right: readonly boolean[]): number => right.filter(Boolean).length / right.length

const isForHandbook = (intent: string): boolean => intent === 'handbook' || intent === 'trouble'
const isElsewhere = (intent: string): boolean => intent === 'smalltalk' || intent === 'notours'

describe('the search', () => {
  it('finds nothing where it knows no word', () => {
    expect(entriesFor('')).toEqual([])
    expect(entriesFor('why not?')).toEqual([])
    expect(entriesFor('🦆🦆🦆')).toEqual([])
  })

  it('bears mistyped words', () => {
    expect(entriesFor('what is intenal resistence')[0]?.entry.id).toBe('ir')
    expect(entriesFor('conection brake on teh charger, conection break')[0]?.entry.id).toBe('connection-break')
  })

  it('finds every entry by its title, and by the words in which it is asked again', () => {
    for (const entry of handbook) {
      const asked = askedOf(entry.title)
      expect(asked.entry?.id).toBe(entry.id)
      expect(askedOf(wordedBy(asked))).toMatchObject({ entry: { id: entry.id }, dangers: asked.dangers })
    }
  })

  it('finds entries by their questions, each left out of the index', () => {
    const most = Math.max(...handbook.map(({ questions }) => questions.length))
    const right = Array.from({ length: most }, (_, left) => {
      const find = finderOf(
        handbook.map(entry => ({ ...entry, questions: entry.questions.filter((_, index) => index !== left) })),
      )
      return handbook.flatMap(({ id, questions }) => {
        const question = questions[left]
        return question === undefined ? [] : [find(question)[0]?.entry.id === id]
      })
    }).flat()
    expect(right.length).toBeGreaterThan(1500)
    expect(share(right)).toBeGreaterThan(0.9)
  })

  it('finds an emergency in a few words', () => {
    for (const text of [
      'it hisses',
      'pack is smoking!!',
      'smells of nail varnish',
      'my eye burns, something splashed',
    ]) {
      expect(askedOf(text).dangers.length, text).toBeGreaterThan(0)
    }
  })
})

describe('people whom no entry was written for', () => {
  const messages = Object.keys(judged).flatMap(author => {
    const entries: readonly (readonly string[])[] = judged[author as keyof typeof judged]
    return messagesOf(Number(author))
      .filter(({ intent }) => isForHandbook(intent))
      .map(({ text }, index) => ({ found: entriesFor(text), right: entries[index] as readonly string[] }))
  })

  it('find the entry that is about the same thing', () => {
    expect(messages.length).toBe(133)
    expect(share(messages.map(({ found: [first], right }) => right.includes(first?.entry.id ?? '')))).toBeGreaterThan(
      0.68,
    )
    expect(
      share(messages.map(({ found, right }) => found.slice(0, 3).some(({ entry }) => right.includes(entry.id)))),
    ).toBeGreaterThan(0.83)
  })

  it('get an entry for most questions, and seldom for what is none', () => {
    const others = [...heldOut].flatMap(messagesOf).filter(({ intent }) => isElsewhere(intent))
    const isFound = (text: string) => (entriesFor(text)[0]?.score ?? 0) >= leastScore
    expect(share(messages.map(({ found: [first] }) => (first?.score ?? 0) >= leastScore))).toBeGreaterThan(0.75)
    expect(share(others.map(({ text }) => isFound(text)))).toBeLessThan(0.35)
  })
})
