// Numbers that tell nothing of a charge take no place of one that does.

import { describe, expect, it } from 'vitest'
import { bestCover, candidatesOf } from '../../../../src/language/candidates/index.ts'
import { covered, coveredTexts } from '../../../support/covered.ts'

const told = (text: string) =>
  bestCover(candidatesOf(text)).flatMap(({ kind, text: value }) => (value === '' ? [] : [`${kind} ${value}`]))

describe('what tells nothing of a charge', () => {
  it.each([
    ['paid 28 euros for a 4S 1800', ['pack 4S 1800mAh']],
    ['it cost 32.50, a 4S 1800', ['pack 4S 1800mAh']],
    ['bought on 7.11.2023, 3S 900', ['pack 3S 900mAh']],
    ['from March 2022, a 3S 900', ['pack 3S 900mAh']],
    ['I am 67 and fly a 3S 900', ['pack 3S 900mAh']],
    ['the strip is 12 km away, 3S 900', ['pack 3S 900mAh']],
    ['home is twenty minutes away, 3S 900', ['pack 3S 900mAh']],
    ['a 10 min drive, then a 3S 900', ['pack 3S 900mAh']],
    ['lane 7, 3S 900', ['pack 3S 900mAh']],
    ['prop 7x4.5, 2600 kv, 3S 900', ['pack 3S 900mAh']],
    ['a 9x6 prop and a 40 A ESC, 3S 900', ['pack 3S 900mAh']],
  ])('in %j', (text, expected) => expect(told(text)).toEqual(expected))

  it('but a price of electricity, a time and readings', () => {
    expect(coveredTexts('0.34 euros per kWh', 'price')).toEqual(['0.34 euros/kWh'])
    expect(coveredTexts('ready in 20 minutes', 'duration')).toEqual(['20min'])
    expect(coveredTexts('ten minutes from 3.8 V', 'duration')).toEqual(['10min'])
    expect(coveredTexts('charge it within 0.5 h', 'duration')).toEqual(['30min'])
  })
})

describe('how far volts lie apart is where nothing stands', () => {
  it.each([
    'all of them within 0.03 V',
    'all within a hundredth of a volt',
    'they differ by two hundredths of a volt',
    'they are 0.28 V apart',
    '0.06 volts between them',
    'is 0.07 V between packs too much',
    'they differ by 40 mV',
    'a spread of 0.05 V per cell',
    'the difference is 0.1 V each',
  ])('%j', text => expect(told(text)).toEqual([]))

  it.each(['one is at 3.7 V', 'the lowest 0.4 V', 'difference between 3.62 V and 3.91 V'])('but in %j', text =>
    expect(covered(text, 'state', 'voltage', 'cellVolts')).not.toEqual([]),
  )
})

describe('of several temperatures the one of the pack, now', () => {
  it.each([
    ['-7 outside, the pack lies indoors at 19 °C', '19°C'],
    ['outdoors it is minus 2, my lipos are at 16 degrees', '16°C'],
    ['it was 38 °C in the sun yesterday, the cells have 23 °C', '23°C'],
    ['-9 in the barn, the cells spent the night indoors at 15 °C', '15°C'],
    ['the pack is at 3 °C, the hall at 21 °C', '3°C'],
    ['-7 outside but the packs slept in the flat and are at 19 degrees. 5S 900 at 1C', '19°C'],
    ['on the terrace -4 °C outside, so I charge at the table by 22 °C', '22°C'],
    ['3S 1800 at 4 degrees, the air has 12 degrees', '4°C'],
  ])('of %j', (text, expected) => expect(coveredTexts(text, 'temperature')).toEqual([expected]))

  it('the sure one where another may be any number', () => {
    expect(coveredTexts('4 degrees outside, 3S 1800 lipos, 20 of them indoors', 'temperature')).toEqual(['4°C'])
  })

  it('the only one, whatever it is of', () => {
    expect(coveredTexts('it is -7 °C outside', 'temperature')).toEqual(['-7°C'])
  })
})
