// Pairs whose last value is free: a question or a text takes all that follows, whatever it looks like.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { readPairs } from '../../../src/language/sentence/option-pairs.ts'
import { readTyped } from '../../../src/language/sentence/typed.ts'
import { problemOf } from './problem-of.ts'
import { vocabulary } from './vocabulary.ts'

const save = {
  name: 'answer save',
  options: [
    { name: 'title', kind: 'title', required: true },
    { name: 'question', kind: 'question', required: false },
    { name: 'text', kind: 'text', required: false },
  ],
}

it('a question keeps its own pairs', () => {
  expect(readPairs('title: Wren question: time pack: 3S 720 LiHV title: x', save)).toEqual({
    before: '',
    options: { title: 'Wren', question: 'time pack: 3S 720 LiHV title: x' },
  })
})

it('whatever a text holds, it comes back whole', () => {
  const words = fc.string({ minLength: 1 }).filter(text => text.trim() !== '' && !/[ ,;]$/.test(text))
  fc.assert(
    fc.property(words, text => {
      expect(readPairs(`title: Wren text: ${text.trimStart()}`, save).options.text).toBe(text.trimStart())
    }),
  )
})

it('before it, names are still checked', () => {
  expect(problemOf(() => readPairs(' titel: Wren text: current: 1A', save))).toMatchObject({
    token: 'titel:',
    example: 'answer save title: Wren text: current: 1A',
  })
  expect(problemOf(() => readPairs('title: a title: b text: c', save))).toMatchObject({
    token: 'title:',
    example: 'answer save title: a',
  })
})

it('a word with a colon that is no detail, nor a slip of one, begins a sentence', () => {
  expect(readTyped('time left: 60%, a 4S 5000', vocabulary)).toBeUndefined()
  expect(problemOf(() => readTyped('time pak: 4S 5000', vocabulary))).toMatchObject({ token: 'pak:' })
})
