// Rules of a club as moderators say them: which one is meant, and whether it is set or lifted.

import { expect, it } from 'vitest'
import { isOrder, rulesTold } from '../../../src/assistant/naming/told-rules.ts'
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
  ['we can live without the 1C cap', { rate: 'none' }],
  ['suspend the rate limit until autumn', { rate: 'none' }],
  ['could you take the 4.12 for LiHV off again', { full: 'none' }],
  ['loosen the 1C rule', { rate: 'none' }],
  ['ease it from 1C to 1.5C', { rate: '1.5C' }],
  ['drop the top for LiPo to 4.1', { full: '4.1V' }],
  ['the frost rule of 12 degrees has served its purpose', { coldest: 'none' }],
  ['set it to 0.8C, the old one is gone', { rate: '0.8C' }],
  ['back to no rate limit at all', { rate: 'none' }],
  ["don't lift the 1C limit", { rate: '1C' }],
  ['nobody above 1C any more', { rate: '1C' }],
  ['no more than 1.5C here', { rate: '1.5C' }],
  ['our LiPo can go to 4.1', { full: '4.1V' }],
  ['a cut-off of 4.1 V', { full: '4.1V' }],
  ['numbers with a decimal comma please', { decimal: 'comma' }],
  ['private answers for mods only', { 'private-answers': 'moderators' }],
  ['good morning to all', {}],
])('%s', (text, rules) => {
  expect(told(text)).toEqual(rules)
})

it.each([
  ['change our storage volts to 3.82', true],
  ['make storage 3.82 for the club', true],
  ['the club storage is 3.82 V from tomorrow', true],
  ['ok, from today no charging below 8 degrees', true],
  ['It was agreed: LiHV is charged at 1C at most.', true],
  ['is our storage 3.82 from now on?', false],
  ['my club storage charger is 3.82 V off', false],
  ['no charging below 8 degrees, is that right', false],
  ['what happens to our packs below 8 degrees', false],
])('%s: an order %s', (text, is) => {
  expect(isOrder(text, bestCover(candidatesOf(text)))).toBe(is)
})
