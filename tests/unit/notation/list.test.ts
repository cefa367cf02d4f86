// Lists of packs, chargers and sources: counts, states, unsound packs; and what is refused with its token.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sessionChargersKind, sessionPacksKind, sessionSourcesKind } from '../../../src/language/kinds/session-kinds.ts'
import { readList, writeList } from '../../../src/language/quantities/list.ts'
import { readStandingPack, readStandingSource } from '../../../src/language/things/standing.ts'
import { anyCharacter } from '../../support/any-character.ts'
import { somePack } from '../../support/arbitraries.ts'
import { cases } from '../../support/cases.ts'
import { problemOf } from './problem-of.ts'

const rules = { listed: 'packs' as const, most: 9, example: '2x ape; bee' }
const words = (text: string) => readList(text, rules, item => ({ value: item, assumed: [] })).value
const packs = (text: string) => sessionPacksKind.read(text, {}).value

describe('a list', () => {
  it('reads counts and items, with or without spaces', () => {
    expect(words('2x ape; bee;3 X  cat')).toEqual([
      { count: 2, item: 'ape' },
      { count: 1, item: 'bee' },
      { count: 3, item: 'cat' },
    ])
  })

  it('writes what reads back the same', () => {
    const entry = fc.record({ count: fc.integer({ min: 1, max: 3 }), item: fc.constantFrom('ape', 'bee', 'cat') })
    fc.assert(
      fc.property(fc.array(entry, { minLength: 1, maxLength: 3 }), entries => {
        expect(words(writeList(entries, item => item))).toEqual(entries)
      }),
    )
  })

  it('refuses nothing, too many and no count at all', () => {
    expect(problemOf(() => words(' ; ')).expected).toContain('1 to 9 packs')
    expect(problemOf(() => words('5x ape; 5x bee')).what).toContain('more than 9 packs')
    expect(problemOf(() => words('0x ape')).expected).toContain('1 to 9')
  })
})

describe('packs of a session', () => {
  it('reads the state behind each pack', () => {
    const [first, second, third] = packs('4x 3S 720 LiHV at 3.7V; 2x 2S 450 LiPo at 20%; 1S 550 LiHV')
    expect(first).toMatchObject({ count: 4, item: { from: { kind: 'rest', perCell_V: 3.7 } } })
    expect(second).toMatchObject({ count: 2, item: { from: { kind: 'soc', soc: 0.2 } } })
    expect(third?.item.from).toBeUndefined()
  })

  it('reads pack volts by the cell count of that pack', () => {
    expect(readStandingPack('3S 720 LiHV at 11.1V').value.from).toEqual({ kind: 'rest', perCell_V: 3.7, pack_V: 11.1 })
  })

  it.each(['swollen', 'puffed', 'hot', 'Punctured', 'damaged'])('keeps "%s" apart, with or without a state', word => {
    expect(readStandingPack(`2S 450 LiPo at 3.7V ${word}`).value).toMatchObject({
      unsound: word.toLowerCase(),
      dangers: [expect.any(String)],
    })
    expect(readStandingPack(`2S 450 LiPo ${word}`).value.pack.capacity_Ah).toBe(0.45)
  })

  it('reads such a word before the state too', () => {
    expect(readStandingPack('2S 450 LiPo puffed at 3.7V').value).toMatchObject({
      from: { perCell_V: 3.7 },
      dangers: ['swollen'],
    })
  })

  it('ends the question for a pack that burns, wherever the word stands', () => {
    expect(problemOf(() => packs('2S 450 LiPo; 3S 720 LiHV smoking')).token).toBe('smoking')
    expect(problemOf(() => packs('burning 2S 450 LiPo')).token).toBe('burning')
  })

  it('points at the word that it cannot read', () => {
    expect(problemOf(() => packs('2x 3S 720 LiHV; 2S 450 banana')).token).toBe('banana')
    expect(problemOf(() => packs('3S 720 LiHV at dawn')).token).toBe('dawn')
    expect(problemOf(() => packs('61x 3S 720 LiHV')).expected).toContain('60')
  })

  it('writes what reads back the same, for any pack and state', () => {
    const level = fc.oneof(
      fc.integer({ min: 1, max: 100 }).map(percent => ({ kind: 'soc' as const, soc: percent / 100 })),
      fc.integer({ min: 2000, max: 4500 }).map(mV => ({ kind: 'rest' as const, perCell_V: mV / 1000 })),
    )
    const dangersOf = { swollen: ['swollen'], hot: ['hotPack'], crashed: ['keptApart', 'crashed'] } as const
    const unsound = fc.option(fc.constantFrom('swollen', 'hot', 'crashed'), { nil: undefined })
    const standing = fc
      .record({ pack: somePack, from: level, unsound }, { requiredKeys: ['pack'] })
      .map(one => ({ ...one, dangers: one.unsound && dangersOf[one.unsound] }))
    fc.assert(
      fc.property(
        fc.array(fc.record({ count: fc.integer({ min: 1, max: 9 }), item: standing }), { minLength: 1, maxLength: 5 }),
        entries => {
          expect(packs(sessionPacksKind.write(entries))).toEqual(entries)
        },
      ),
    )
  })
})

describe('sources and chargers of a session', () => {
  it('reads how full a battery or power bank is', () => {
    expect(readStandingSource('4S 5000 Li-ion at 80%').value.charged).toEqual({ kind: 'soc', soc: 0.8 })
    expect(readStandingSource('power bank 74Wh PD 45W at 50%').value.charged).toEqual({ kind: 'soc', soc: 0.5 })
    expect(problemOf(() => readStandingSource('power bank 74Wh at 3.7V')).expected).toBe('a percentage')
  })

  it('reads sources that cannot be drained, and several at once', () => {
    expect(sessionSourcesKind.read('PD 65W; 2x 12V 10A', {}).value.map(({ count }) => count)).toEqual([1, 2])
  })

  it('reads a charger with two outputs as two', () => {
    const [first, second] = sessionChargersKind.read('2x 0.1-5A by 0.1 80W; 0.5/1/2/4A', {}).value
    expect([first?.count, second?.count]).toEqual([2, 1])
    expect(sessionChargersKind.write([first, second] as never)).toBe('2x 0.1-5A by 0.1 80W; 0.5/1/2/4A')
  })

  it('gives a value or a problem for any text', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: anyCharacter }),
          fc.string({ unit: fc.constantFrom(...'23x;S 7.V%atLiPohot'.split('')) }),
        ),
        text => {
          for (const kind of [sessionPacksKind, sessionChargersKind, sessionSourcesKind]) {
            try {
              kind.read(text, {})
            } catch (error) {
              expect(error).toHaveProperty('details.expected')
            }
          }
        },
      ),
      cases(1000),
    )
  })
})
