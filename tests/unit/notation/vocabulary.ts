// A small vocabulary for tests of the question reader.

import type { Vocabulary } from '../../../src/language/sentence/vocabulary.ts'

const options = (...names: string[]) =>
  names.map(name => ({ name, kind: name === 'until' ? 'current' : name, required: false }))

export const vocabulary: Vocabulary = [
  { name: 'current', options: options('pack', 'charger', 'source', 'from', 'to', 'temperature') },
  {
    name: 'time',
    options: options('pack', 'current', 'charger', 'source', 'from', 'to', 'until', 'resistance', 'temperature'),
  },
  { name: 'source', options: options('source', 'pack', 'charger', 'from', 'to', 'count') },
  {
    name: 'percent',
    options: [
      { name: 'chemistry', kind: 'chemistry', required: false },
      { name: 'at', kind: 'from', required: true },
    ],
  },
  { name: 'kit', options: [] },
  { name: 'kit save', options: [{ name: 'name', kind: 'kit name', required: true }, ...options('pack')] },
]
