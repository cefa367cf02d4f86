import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { attempt } from '../../../../src/ground/problem.ts'
import { readPack, writePack } from '../../../../src/language/things/pack.ts'
import { somePack } from '../../../support/arbitraries.ts'
import { cases } from '../../../support/cases.ts'
import { covered, coveredTexts } from '../../../support/covered.ts'
import { problemOf } from '../../notation/problem-of.ts'

describe('packs', () => {
  it.each([
    ['4s1500', '4S 1500mAh'],
    ['3s2200 lipo', '3S 2200mAh LiPo'],
    ['6s 5000 65c lipo', '6S 5000mAh LiPo 65C discharge'],
    ['a 4S 3000 high-drain li-ion', '4S 3000mAh Li-ion high drain'],
    ['6s 5000 lipo 75c burst', '6S 5000mAh LiPo 75C discharge'],
    ['850 4s label 3C charge', '4S 850mAh 3C charge'],
    ['a 3300, 4 cell, 60C', '4S 3300mAh 60C discharge'],
    ['a 35 Wh pack, 3 cells', '3S 3153mAh'],
    ['my 40C 2200 3s', '3S 2200mAh 40C discharge'],
    ['a 1s 3.7v 350mah', '1S 350mAh'],
    ['packs of 1300, 4s, six of them', '4S 1300mAh'],
    ['save 6s 1300 lipo 5c max charge', '6S 1300mAh LiPo 5C charge'],
    ['4s2p 21700 4000 per cell', '4S2P 8000mAh'],
    ['2s3p 18650 3400', '2S3P 10200mAh'],
    ['2s3p 18650 9000mah', '2S3P 9000mAh'],
    ['5s2p, cells of 3 Ah', '5S2P 6000mAh'],
    ['4s3p made of 2500mah 18650 cells', '4S3P 7500mAh'],
    ['6s2p with 4200 mAh li-ion cells', '6S2P 8400mAh Li-ion'],
    ['4s2p 7000 mAh, all cells balanced', '4S2P 7000mAh'],
    ['2s2p li-ion 5.2Ah', '2S2P 5200mAh Li-ion'],
    ['1s 450 hv', '1S 450mAh LiHV'],
    ['2200mah 3 cell', '3S 2200mAh'],
    ['3 cell 2200', '3S 2200mAh'],
    ['three-cell 2200 lipo', '3S 2200mAh LiPo'],
    ['pack="3S 5000" please', '3S 5000mAh'],
    ['the label says "4s 1500"', '4S 1500mAh'],
    ['four s fifteen hundred', '4S 1500mAh'],
    ['a 1300', '1300mAh'],
    ['my 2200s', '2200mAh'],
    ['lipos 4s 1500', '4S 1500mAh LiPo'],
    ['the 3s', '3S'],
    ['7.4V 450mAh lipo', '2S 450mAh LiPo'],
    ['3S 11.1V 2200 LiPo', '3S 2200mAh LiPo'],
    ['L I P O 2 S 450mAh', '2S 450mAh LiPo'],
    ['3S 1.500 mAh LiPo', '3S 1500mAh LiPo'],
    ['4s 5 000 mAh', '4S 5000mAh'],
    ['３Ｓ　２２００ｍＡｈ', '3S 2200mAh'],
    ['3S 2.2 A·h', '3S 2200mAh'],
    ['a lithium polymer pack of 3 cells and 2200 milliampere-hours', '3S 2200mAh LiPo'],
    ['lithium iron phosphate, two cells, 2100 mAh', '2S 2100mAh LiFe'],
    ['8 cell nimh 2000', '8S 2000mAh NiMH'],
    ['18.5V 24.1Wh lipo', '5S 1303mAh LiPo'],
    ['7.4V, 4.8 Wh', '2S 648.6mAh'],
    ['5s950x3', '5S 950mAh'],
    ['4s 2200 wh?', '4S 2200mAh'],
    ['IR 14 15 38 mohm, 3s 1550 lipo', '3S 1550mAh LiPo'],
  ])('of %j', (text, expected) => {
    expect(coveredTexts(text, 'pack', 'capacity')).toContain(expected)
  })

  it.each([
    'how long at 2A',
    'it took 30s',
    'in 2023 we flew more',
    'the battery life is bad',
    'at 14:30',
    'the charger says 12.6',
    'the last 5 of them',
    'gate4 and A1',
    '-900 mAh',
  ])('none in %j', text => {
    expect(covered(text, 'pack', 'capacity')).toEqual([])
  })

  it('part where another begins', () => {
    expect(coveredTexts('two 4S 3300, three 3S 1300 and one 6S 5000', 'pack')).toEqual([
      '4S 3300mAh',
      '3S 1300mAh',
      '6S 5000mAh',
    ])
    expect(coveredTexts('2200 3s and 1300 4s', 'pack')).toEqual(['3S 2200mAh', '4S 1300mAh'])
    expect(coveredTexts('a 1300, 4s 1500', 'pack')).toEqual(['1300mAh', '4S 1500mAh'])
    expect(coveredTexts('0 to 100 3s 2200', 'pack')).toEqual(['3S 2200mAh'])
    expect(coveredTexts('1300 4s 1500 3s', 'pack')).toEqual(['4S 1300mAh', '3S 1500mAh'])
  })

  it('tell how many they are', () => {
    const [pack] = covered('four 3S 2200 LiPo with 185 g', 'pack')
    expect(pack?.pack).toMatchObject({ count: 4, series: 3, capacity_Ah: 2.2 })
    expect(covered('2 x 3S', 'pack')[0]?.pack?.count).toBe(2)
  })

  it('keep a rate that is asked about apart from one of the label', () => {
    expect(coveredTexts('4s 1500 2C', 'pack', 'rate')).toEqual(['4S 1500mAh', '2C'])
    expect(coveredTexts('4s 1500 50C', 'pack', 'rate')).toEqual(['4S 1500mAh 50C discharge'])
    expect(coveredTexts('charge at 30C 4s 1500', 'pack', 'rate')).toEqual(['30C', '4S 1500mAh'])
  })

  it('are less sure where a separator could mark thousands or decimals', () => {
    const score = (text: string) => covered(text, 'pack', 'capacity')[0]?.score ?? 0
    expect(score('1.500 mAh')).toBeLessThan(score('1500 mAh'))
  })

  it('say what they lack', () => {
    expect(problemOf(() => readPack('3S')).what).toContain('the capacity')
    expect(problemOf(() => readPack('2200mAh')).what).toContain('the cells in series')
  })

  it('read as they were written, by the notation and here', () => {
    fc.assert(
      fc.property(somePack, pack => {
        const written = writePack(pack)
        expect(readPack(written)).toEqual({ value: pack, assumed: [] })
        const again = attempt(() => readPack(covered(written, 'pack')[0]?.text ?? '').value)
        expect(again).toMatchObject({ series: pack.series, parallel: pack.parallel, chemistry: pack.chemistry })
        expect(again?.capacity_Ah).toBeCloseTo(pack.capacity_Ah, 9)
      }),
      cases(500),
    )
  })
})
