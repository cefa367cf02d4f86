import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lihv, liIon } from '../../../src/charging/things/chemistries.ts'
import { readChemistry } from '../../../src/language/parts/chemistry.ts'
import { readPack, writePack } from '../../../src/language/things/pack.ts'
import { somePack } from '../../support/arbitraries.ts'
import { cases } from '../../support/cases.ts'
import { inEnglish } from '../../support/in-english.ts'
import { problemOf } from './problem-of.ts'

describe('packs', () => {
  const wren = { chemistry: lihv, series: 3, parallel: 1, capacity_Ah: 0.72 }

  it.each([
    '3S 720mAh LiHV',
    '3s 720mah hv',
    'LiHV 720mAh 3S',
    '3S1P 0.72Ah lipo hv',
    '3 cells, 0,72 Ah, Li-HV',
    '3s720mAh lihv',
    'three-cell LiHV, 720 milliampere-hours',
    'L i H V 11.1V 720mAh 3S',
    '11.1V 720mAh LiHV',
    '3S 720.000mAh LiHV',
  ])('reads %j', text => {
    expect(readPack(text)).toEqual({ value: wren, assumed: [] })
  })

  it('reads a bare capacity as mAh and says so', () => {
    for (const text of ['3S 720 LiHV', '720 3s hv', 'hv 3S 720']) {
      const { value, assumed } = inEnglish(readPack(text))
      expect(value).toEqual(wren)
      expect(assumed).toEqual([expect.stringContaining('720 is read as mAh')])
    }
  })

  it.each(['3S 2.2 LiPo', '3S 2 LiPo', '3S 19 LiPo'])('asks which unit the small capacity of %j has', text => {
    expect(problemOf(() => readPack(text)).what).toContain('mAh or in Ah')
  })

  it('reads what a label adds', () => {
    expect(readPack('3S1P 720mAh lihv 2C 6mΩ').value).toEqual({ ...wren, labelRate_C: 2, cellResistance_ohm: 0.006 })
    expect(readPack('2S2P 5200mAh Li-ion').value).toEqual({
      chemistry: liIon,
      series: 2,
      parallel: 2,
      capacity_Ah: 5.2,
    })
  })

  it('takes what each cell holds as often as cells stand side by side', () => {
    expect(readPack('2S2P 18650 Li-ion 2600mAh').value).toMatchObject({ parallel: 2, capacity_Ah: 5.2 })
    expect(readPack('2S2P Li-ion, 2600mAh a cell').value).toMatchObject({ parallel: 2, capacity_Ah: 5.2 })
  })

  it('takes a point for decimals, whatever stands behind it', () => {
    expect(readPack('3S 100.500mAh LiHV').value.capacity_Ah).toBe(0.1005)
  })

  it('says which rate it takes for the charge limit', () => {
    expect(inEnglish(readPack('3S 720mAh LiHV 2C')).assumed).toEqual(['2C is read as the charge limit on the label'])
    expect(readPack('3S 720mAh LiHV 2C charge').assumed).toEqual([])
    expect(writePack({ ...wren, chemistry: lihv, labelRate_C: 2 })).toBe('3S 720mAh LiHV 2C charge')
  })

  it('never takes a discharge rating for a charge limit', () => {
    for (const [text, dischargeRate_C] of [
      ['3S 720mAh LiHV 45C', 45],
      ['3S 720mAh LiHV 5C', 5],
      ['3S 720mAh LiHV 75C/150C'.replace('/', ' '), 75],
    ] as const) {
      const { value, assumed } = inEnglish(readPack(text))
      expect(value).toEqual({ ...wren, dischargeRate_C })
      expect(assumed[0]).toContain('not used for charging')
    }
    expect(readPack('3S 720mAh LiHV 4C discharge')).toEqual({ value: { ...wren, dischargeRate_C: 4 }, assumed: [] })
    expect(readPack('3S 720mAh LiHV 95C 3C charge').value.labelRate_C).toBe(3)
    expect(readPack('3S 720mAh LiHV 8C charge').value.labelRate_C).toBe(8)
    expect(readPack('3S 720mAh LiHV 65C charge').value.labelRate_C).toBe(65)
  })

  it('takes the watt-hours of a label for what they are', () => {
    const { value, assumed } = inEnglish(readPack('3S-720mAh/8Wh LiHV'))
    expect(value).toEqual(wren)
    expect(assumed).toEqual([expect.stringContaining('8Wh on the label is not used')])
  })

  it.each([
    ['0S 720 LiPo', '0S', '1S to 14S'],
    ['99S 720 LiPo', '99S', '1S to 14S'],
    ['3S9P 720 LiPo', '9P', '1P to 8P'],
    ['3S 100Ah LiPo', '100Ah', '20 to 60000 mAh'],
    ['3S 1e308 LiPo', '1e308', 'a pack'],
    ['3S NaN LiPo', 'NaN', 'a pack'],
    ['3S -5 LiPo', '-5', '20 to 60000 mAh'],
    ['3S 1,234 LiPo', '1,234', 'nothing for thousands'],
    ['3S 720 LiPo 4S', '4S', 'a pack'],
    ['3S 720 LiPo LiHV', 'LiHV', 'a pack'],
    ['3S 720 LiPo 900mAh', '900mAh', 'a pack'],
    ['3S 720 LiPo swollen', 'swollen', 'a pack'],
    ['3S 720 LiPo 2C 3C', '3C', 'a pack'],
    ['3S 720 NiMH', 'NiMH', 'a pack'],
    ['11.1V 4S 720 LiPo', '4S', 'a pack'],
    ['6 3S 720 LiPo', '6', 'a pack'],
    ['3S 720 LiPo 6MΩ', '6MΩ', 'a pack'],
  ])('refuses %j, pointing at %j', (text, token, expected) => {
    const problem = problemOf(() => readPack(text))
    expect(problem.token).toBe(token)
    expect(problem.expected).toContain(expected)
    expect(readPack(problem.example).value.chemistry).toBeTruthy()
  })

  it.each([
    ['3S 720mAh', 'the chemistry'],
    ['720mAh LiPo', 'the cells in series'],
    ['3S LiPo', 'the capacity'],
    ['lipo', 'the cells in series (as 3S) and the capacity'],
  ])('says what %j lacks', (text, lack) => {
    expect(problemOf(() => readPack(text)).what).toContain(lack)
  })

  it('writes a pack so that it reads the same', () => {
    fc.assert(
      fc.property(somePack, pack => {
        expect(readPack(writePack(pack))).toEqual({ value: pack, assumed: [] })
      }),
      cases(2000),
    )
  })
})

describe('chemistry words', () => {
  it.each([
    ['lipo', 'LiPo'],
    ['Li-Po', 'LiPo'],
    ['LIHV', 'LiHV'],
    ['hv', 'LiHV'],
    ['LiPo HV', 'LiHV'],
    ['li-ion', 'Li-ion'],
    ['liion', 'Li-ion'],
    ['ion', 'Li-ion'],
    ['life', 'LiFe'],
    ['LiFePO4', 'LiFe'],
    ['lfp', 'LiFe'],
  ])('reads %j as %s', (text, name) => {
    expect(readChemistry(text).name).toBe(name)
  })

  it.each(['nimh', 'lip', 'lipox', '', 'LiPo LiHV'])('refuses %j and lists those there are', text => {
    expect(problemOf(() => readChemistry(text)).expected).toMatch(/^one of LiPo, LiHV, Li-ion, LiFe/)
  })
})
