// Rules of a club as moderators say them: which one is meant, and whether it is set or lifted.

import { expect, it } from 'vitest'
import { rulesTold } from '../../../src/assistant/naming/told-rules.ts'
import { bestCover, candidatesOf } from '../../../src/language/candidates/index.ts'

const told = (text: string) => rulesTold(text, bestCover(candidatesOf(text)))

it.each([
  ['the top for LiPo is 4.12 from today', { full: '4.12V' }],
  ['keep stores at 3.82 V per cell for LiHV', { storage: '3.82V' }],
  ['a source made of Li-ion stays above 3.3 V a cell', { floor: '3.3V' }],
  ['LiFe at 1.5C at most', { rate: '1.5C' }],
  ['no charging below 12 degrees', { coldest: '12°C' }],
  ['scrap the 12 degrees again', { coldest: 'none' }],
  ['the storage limit goes away, lift it', { storage: 'none' }],
  ['lift whatever we had for LiHV', { storage: 'none', floor: 'none', rate: 'none', full: 'none' }],
  ['numbers with a decimal comma please', { decimal: 'comma' }],
  ['private answers for mods only', { 'private-answers': 'moderators' }],
  ['good morning to all', {}],
])('%s', (text, rules) => {
  expect(told(text)).toEqual(rules)
})
