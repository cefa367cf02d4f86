// What numbers of a sentence count, and what bears one.

import { expect, it } from 'vitest'
import { commands } from '../../../../commands/index.ts'
import { createRegistry } from '../../../../src/assistant/registry.ts'
import { bestCover, candidatesOf } from '../../../../src/language/candidates/index.ts'
import { fitTo } from '../../../../src/language/reading/fit.ts'

const { vocabulary } = createRegistry(commands)
const fitted = (name: string, text: string) => {
  const command = vocabulary.find(one => one.name === name)
  if (!command) throw new Error(`no command ${name}`)
  return fitTo(command, bestCover(candidatesOf(text)))
}

it('chargers are counted, whatever they are like', () => {
  expect(fitted('plan', 'nine 2S 900 lipo on three small old chargers').options.ports).toBe('3')
  expect(fitted('plan', 'nine 2S 900 lipo, three single chargers').options.ports).toBe('3')
  expect(fitted('plan', 'nine 2S 900 lipo, three chargers with two ports each').options.ports).toBe('6')
})

it('a twofold charger has two outlets, one port of six is one of as many', () => {
  expect(fitted('plan', 'nine 2S 900 lipo, charger dual 90W each side').options.chargers).toBe('2x 90W charger')
  expect(fitted('plan', 'nine 2S 900 lipo, 50W per channel, dual').options.chargers).toBe('2x 50W charger')
  expect(fitted('plan', 'nine 2S 900 lipo at 0.9A each on a 6 port charger').options.ports).toBe('6')
})

it('packs that bear a number are not counted by it', () => {
  const { options, left } = fitted('parallel', 'pack 1: 5S 950 at 18.9, pack 2: 5S 950 at 18.8')
  expect(options.packs).toBe('5S 950mAh LiPo at 18.9V pack; 5S 950mAh LiPo at 18.8V pack')
  expect(left).toEqual([])
  expect(fitted('plan', 'nine 2S 900, charger 2 ports 50W').options.chargers).toBe('2x 50W charger')
})

it('a resistance now is no count of what it was read on', () => {
  expect(fitted('health', 'ri was 3 mohm, now 9 on the 6S 1300').options).toMatchObject({
    resistance: '9mΩ',
    new: '3mΩ',
  })
})

it.each([
  ['six pilots, two packs each, 4S 1700 lipo, three outlets', /^12x 4S/],
  ['3 lipos each, 5 of us, all 3S 2300 lipo, two outlets', /^15x 3S/],
  ['four kids with 2 batteries per kid, 2S 1100 lipo, two outlets', /^8x 2S/],
  ['six pilots and two packs, 4S 1700 lipo, three outlets', /^2x 4S/],
  ['two packs, 4S 1700 lipo at 1 A each, three outlets', /^2x 4S/],
])('what each of several people brings comes together: "%s"', (text, packs) => {
  expect(fitted('plan', text).options.packs).toMatch(packs)
})
