// How well questions find their entries, of people for whom no entry was written and from whom nothing was learned.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { askedOf, wordedBy } from '../../../src/handbook/asked.ts'
import { handbook } from '../../../src/handbook/entries.ts'
import { withoutAsides } from '../../../src/handbook/search/asides.ts'
import index from '../../../src/handbook/search/index.json' with { type: 'json' }
import { storedIndex } from '../../../src/handbook/search/stored.ts'
import { entriesFor } from '../../../src/handbook/search.ts'
import { heldOut, messagesOf } from '../../../training/corpus/read-corpus.ts'
import judged from '../../fixtures/handbook/held-out.json' with { type: 'json' }

const share = (right: readonly boolean[]): number => right.filter(Boolean).length / right.length

const isForHandbook = (intent: string): boolean => intent === 'handbook' || intent === 'trouble'
const isElsewhere = (intent: string): boolean => intent === 'smalltalk' || intent === 'notours'

describe('the search', () => {
  it('has an index of what the handbook asks today', () => {
    expect(storedIndex(handbook), 'run npm run train').toEqual(index)
  })

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

describe('what is said to people and not of the thing', () => {
  it.each([
    ['what does 2S mean', 'what does the 2S mean pls nobody in my class knows'],
    ['what does 2S mean', 'Sorry guys, what does 2S mean, my dad has no idea either'],
    ['what is balancing', 'my neighbour wants to know what balancing is, in simple words'],
    ['why is the last bit so slow', 'why is the last bit so slow, not even the people in the shop could tell me'],
    ['is memory effect still a thing', 'stupid question: is memory effect still a thing, thanks in advance'],
  ])('does not count: %s', (plain, wordy) => {
    const { entry } = askedOf(plain)
    expect(entry).toBeDefined()
    expect(askedOf(wordy).entry?.id).toBe(entry?.id)
  })

  it.each([
    'does the charger know that it is full',
    'the charger does not know the cell count',
    'my son asked the seller and he knows the type',
    'nobody watches the charge',
    'I know what 1C is',
    'please',
  ])('is told from what is said of the thing: %s', text => {
    expect(withoutAsides(text).trim()).toBe(text)
  })
})

/** Questions of people whom no entry was written for and nothing was learned from, with the entries that answer them. */
const ofClubMates = Object.keys(judged).flatMap(author => {
  const entries: readonly (readonly string[])[] = judged[author as keyof typeof judged]
  return messagesOf(Number(author))
    .filter(({ intent }) => isForHandbook(intent))
    .map(({ text }, index) => ({ text, right: entries[index] as readonly string[] }))
})
/** Lines "entry, question"; "-" where none answers it. */
const linesOf = (file: string) =>
  readFileSync(join(import.meta.dirname, '../../fixtures/handbook', file), 'utf8')
    .trimEnd()
    .split('\n')
    .map(line => line.split('\t') as [string, string])
const withEntry = (lines: readonly (readonly [string, string])[]) =>
  lines.filter(([entry]) => entry !== '-').map(([entry, text]) => ({ text, right: [entry] }))
const asked = linesOf('asked.tsv')
const answered = withEntry(asked)
/** Written by somebody who had seen no entry, and only then matched with them. */
const ofAWeek = withEntry(linesOf('natural.tsv'))
const unanswered = asked.filter(([entry]) => entry === '-').map(([, text]) => text)

describe.each([
  {
    people: 'of club mates',
    questions: ofClubMates,
    count: 133,
    first: 0.74,
    ofThree: 0.9,
    answers: 0.72,
    wrong: 0.16,
  },
  { people: 'on every entry', questions: answered, count: 705, first: 0.86, ofThree: 0.94, answers: 0.8, wrong: 0.08 },
  { people: 'of one week', questions: ofAWeek, count: 219, first: 0.7, ofThree: 0.84, answers: 0.75, wrong: 0.17 },
])('questions $people', ({ questions, count, first, ofThree, answers, wrong }) => {
  const found = questions.map(({ text, right }) => ({ found: entriesFor(text), right, entry: askedOf(text).entry?.id }))

  it('find the entry that is about the same thing', () => {
    expect(found.length).toBe(count)
    const within = (most: number) =>
      share(found.map(({ found, right }) => found.slice(0, most).some(({ entry }) => right.includes(entry.id))))
    expect(within(1)).toBeGreaterThan(first)
    expect(within(3)).toBeGreaterThan(ofThree)
  })

  it('are mostly answered, and of the answers few are wrong', () => {
    const given = found.filter(({ entry }) => entry !== undefined)
    expect(given.length / found.length).toBeGreaterThan(answers)
    expect(share(given.map(({ entry, right }) => !right.includes(entry ?? '')))).toBeLessThan(wrong)
  })
})

describe('what the handbook has nothing on', () => {
  const others = [...heldOut].flatMap(messagesOf).filter(({ intent }) => isElsewhere(intent))
  it.each([
    ['small talk and other trades', others.map(({ text }) => text), 0.3],
    ['questions that none of its entries answers', unanswered, 0.35],
  ] as const)('is seldom answered: %s', (_, texts, most) => {
    expect(texts.length).toBeGreaterThan(20)
    expect(share(texts.map(text => askedOf(text).entry !== undefined))).toBeLessThan(most)
  })
})
