import { describe, expect, it } from 'vitest'
import { lipo } from '../../../../src/charging/things/chemistries.ts'
import { candidatesOf } from '../../../../src/language/candidates/index.ts'
import { readState, writeLevel } from '../../../../src/language/things/state.ts'
import { covered, coveredTexts } from '../../../support/covered.ts'

const pack = { chemistry: lipo, series: 3, parallel: 1, capacity_Ah: 2.2 }

describe('states', () => {
  it.each([
    ['from 3.7', '3.7V'],
    ['3,7 V', '3.7V'],
    ['3.7 a cell', '3.7V per cell'],
    ['3.72 volts per cell', '3.72V per cell'],
    ['3,7V / cell', '3.7V per cell'],
    ['my 3s is at 12.6v', '12.6V pack'],
    ['3s 2200 at 11.4', '11.4V pack'],
    ['12.4 V of a 3S', '12.4V pack'],
    ['11.5 for the whole pack', '11.5V pack'],
    ['at 30 percent', '30%'],
    ['30%', '30%'],
    ['till 80%', '80%'],
    ['it is 40% down', '60%'],
    ['7v 2s 1000', '7V pack'],
    ['they are at 35/50/80 percent', '35%'],
    ['pack A 3.85 pack B is full', '3.85V'],
    ['half full', '50%'],
    ['it is 1/3 full', '33%'],
    ['two thirds full', '67%'],
    ['a quarter left', '25%'],
    ['just landed', 'empty'],
    ['nearly empty', 'empty'],
    ['it is flat', 'empty'],
    ['to storage', 'storage'],
    ['storage voltage', 'storage'],
    ['to full', 'full'],
    ['fully charged', 'full'],
  ])('of %j', (text, expected) => {
    const found = covered(text, 'state')
    expect(found.map(one => one.text)).toContain(expected)
    const level = readState(expected, pack).value
    expect(readState(writeLevel(level), pack)).toEqual({ value: level, assumed: [] })
  })

  it.each([
    'at full throttle',
    'the storage box',
    'a flat spot',
    'at 2A',
    'for 3 hours',
    'in half an hour',
    'half past two',
    '12V 10A supply',
  ])('hardly any in %j', text => {
    expect(covered(text, 'state').filter(({ score }) => score > 0.4)).toEqual([])
  })

  it.each(['it is dead', 'stone dead', 'dead flat', '0%', 'at 0 percent'])('none to start from in %j', text => {
    expect(covered(text, 'state')).toEqual([expect.objectContaining({ text: '', score: 0 })])
  })

  it('share one unit of percent', () => {
    expect(coveredTexts('I have 12, 34 and 60 percent', 'state')).toEqual(['12%', '34%', '60%'])
  })

  it('are readings where somebody holds a meter', () => {
    expect(coveredTexts('the charger says 16.71, my multimeter 16.52', 'voltage', 'state')).toEqual([
      '16.71V',
      '16.52V',
    ])
  })

  it('never come back with binary noise', () => {
    const level = readState(covered('12.4v on my 3s', 'state')[0]?.text ?? '', pack).value
    expect(level).toEqual({ kind: 'rest', perCell_V: 4.13333333333, pack_V: 12.4 })
    expect(writeLevel(level)).toBe('12.4V pack')
  })

  it('may be a current where the volts would be odd', () => {
    const kinds = candidatesOf('charge it at 2.2').map(({ kind }) => kind)
    expect(kinds).toEqual(expect.arrayContaining(['current', 'state']))
    expect(covered('charge it at 2.2', 'current')).toHaveLength(1)
  })
})
