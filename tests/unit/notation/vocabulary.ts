// A small vocabulary for tests of the question reader.

import type { Vocabulary } from '../../../src/language/sentence/vocabulary.ts'

const options = (...names: string[]) => names.map(name => ({ name, kind: name === 'until' ? 'current' : name }))

export const vocabulary: Vocabulary = [
  {
    name: 'current',
    options: options('pack', 'charger', 'source', 'from', 'to', 'temperature'),
    plainWords: ['what current', 'should i set', 'how many amps'],
  },
  {
    name: 'time',
    options: options('pack', 'current', 'charger', 'source', 'from', 'to', 'until', 'resistance', 'temperature'),
    plainWords: ['how long', 'when will'],
  },
  {
    name: 'source',
    options: options('source', 'pack', 'charger', 'from', 'to', 'count'),
    plainWords: ['how many', 'can my', 'can i charge'],
  },
  {
    name: 'percent',
    options: [
      { name: 'chemistry', kind: 'chemistry' },
      { name: 'at', kind: 'from' },
    ],
    plainWords: ['how full'],
  },
  { name: 'kit', options: [], plainWords: [] },
  { name: 'kit save', options: [{ name: 'name', kind: 'kit name' }, ...options('pack')], plainWords: [] },
]
