import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lihv, lipo } from '../../../src/charging/things/chemistries.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'
import { Problem } from '../../../src/ground/problem.ts'
import { readBag, writeBag } from '../../../src/language/things/weighed.ts'
import { anyCharacter } from '../../support/any-character.ts'
import { somePack } from '../../support/arbitraries.ts'
import { cases } from '../../support/cases.ts'

const wren: Pack = { chemistry: lihv, series: 3, parallel: 1, capacity_Ah: 0.72 }
const heron: Pack = { chemistry: lipo, series: 4, parallel: 1, capacity_Ah: 1.5 }

describe('a bag of packs', () => {
  it('reads each pack with how many there are and what one weighs', () => {
    expect(readBag('4x 3S 720 LiHV 45g; 4S 1500 LiPo 178 g').value).toEqual([
      { count: 4, item: { pack: wren, mass_kg: 0.045 } },
      { count: 1, item: { pack: heron, mass_kg: 0.178 } },
    ])
  })

  it.each([
    '3S 720 LiHV vs 3S 850 LiPo',
    '3S 720 LiHV and 3S 850 LiPo',
    '3S 720 LiHV | 3S 850 LiPo',
    '3S 720 LiHV + 3S 850 LiPo;',
  ])('parts packs as people write it: %s', text => {
    expect(readBag(text).value.map(({ item }) => item.pack.chemistry.name)).toEqual(['LiHV', 'LiPo'])
  })

  it('reads ounces', () => {
    expect(readBag('3S 720 LiHV 1.6oz').value[0]?.item.mass_kg).toBeCloseTo(0.04536, 5)
  })

  it('says what it assumed of each pack', () => {
    expect(readBag('3S 720 LiHV; 3S 850 LiPo').assumed).toHaveLength(2)
  })

  it('reads what it wrote', () => {
    const item = fc
      .tuple(somePack, fc.integer({ min: 1, max: 8 }), fc.option(fc.integer({ min: 1, max: 5000 }), { nil: undefined }))
      .map(([pack, count, grams]) => ({
        count,
        item: { pack, ...(grams === undefined ? {} : { mass_kg: grams / 1000 }) },
      }))
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 12 }), items => {
        const text = writeBag(items)
        fc.pre(text.length < 3000)
        expect(writeBag(readBag(text).value)).toBe(text)
      }),
    )
  })

  it.each(['', ';', 'wren', '3S 720 LiHV; wren', '0x 3S 720 LiHV', Array(13).fill('3S 720 LiHV').join('; ')])(
    'says what is wrong with "%s"',
    text => {
      expect(() => readBag(text)).toThrow(Problem)
    },
  )

  it('gives a bag or a problem for any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: anyCharacter, maxLength: 200 }), text => {
        try {
          expect(readBag(text).value.length).toBeGreaterThan(0)
        } catch (error) {
          expect(error).toBeInstanceOf(Problem)
        }
      }),
      cases(2000),
    )
  })
})
