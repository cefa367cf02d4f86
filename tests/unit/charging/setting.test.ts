// What to set: which limit binds, what lowers the cutoff, and which pack a step would suit.

import { describe, expect, it } from 'vitest'
import { boundsOf, smallestPack_Ah } from '../../../src/charging/setting/bounds.ts'
import { type Setting, settingFor } from '../../../src/charging/setting/setting.ts'
import { situationOf, type Told } from '../../../src/charging/situation/situation.ts'
import type { Charger } from '../../../src/charging/things/charger.ts'
import { lihv, liIon, lipo } from '../../../src/charging/things/chemistries.ts'
import { type HouseLimits, noHouseLimits } from '../../../src/charging/things/house-limits.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'
import { judged, permitFor } from '../../support/judged.ts'

const pack = (chemistry: Pack['chemistry'], series: number, capacity_Ah: number, more = {}): Pack => ({
  chemistry,
  series,
  parallel: 1,
  capacity_Ah,
  ...more,
})
const charger = (more: Partial<Charger> = {}): Charger => ({
  currents: { kind: 'list', steps_A: [0.5, 1, 2, 4] },
  ...more,
})
const wren = pack(lihv, 3, 0.72)

type Asked = Omit<Told, 'act' | 'pack'> & { readonly pack: Pack }
const advised = (asked: Asked, house?: HouseLimits): Setting =>
  settingFor(permitFor({ act: 'charge', ...asked }, house))
const verdictOn = (asked: Asked) => judged({ act: 'charge', ...asked }).verdict
const found = (asked: Asked) => judged({ act: 'charge', ...asked }).found.map(({ key }) => key)

describe('the advised current', () => {
  it('is the step nearest to the recommended rate', () => {
    expect(advised({ pack: wren, charger: charger() })).toMatchObject({ current_A: 0.5, bound: 'steps' })
  })

  it('without a charger is the recommended rate, rounded down', () => {
    expect(advised({ pack: pack(lipo, 3, 1.2345) }).current_A).toBe(1.23)
    expect(verdictOn({ pack: pack(lipo, 3, 1.2345) })).toBe('go')
    expect(advised({ pack: pack(lipo, 3, 12.3456) }).current_A).toBe(12.3)
  })

  it('follows the label where it gives a rate, but not above what the chemistry takes', () => {
    expect(advised({ pack: { ...wren, labelRate_C: 0.5 } }).current_A).toBe(0.36)
    expect(advised({ pack: { ...wren, labelRate_C: 1.5 } }).current_A).toBe(1.08)
    expect(advised({ pack: { ...wren, labelRate_C: 5 } }).current_A).toBe(1.44)
  })

  it('is held down by the club, and says so', () => {
    const setting = advised({ pack: wren }, { maxRate_C: { LiHV: 0.5 } })
    expect(setting).toMatchObject({ current_A: 0.36, bound: { kind: 'house', value_A: 0.36 } })
  })

  it('is not raised by a club that allows more than the chemistry', () => {
    const generous = { maxRate_C: { LiHV: 9 } }
    expect(advised({ pack: { ...wren, labelRate_C: 5 } }, generous).current_A).toBe(1.44)
  })

  it("is held down by the charger's power at the cutoff", () => {
    // 50 W / 25.2 V = 1.98 A, so the step below is 1 A.
    expect(advised({ pack: pack(lipo, 6, 5), charger: charger({ power_W: 50 }) })).toMatchObject({
      current_A: 1,
      bound: { kind: 'charger power' },
    })
  })

  it('is less in the cold', () => {
    const cold = { pack: pack(lipo, 3, 1), temperature_C: 8 }
    expect(advised(cold).current_A).toBe(0.5)
    expect(verdictOn(cold)).toBe('go with care')
    expect(found(cold)).toContain('cold')
    expect(advised({ pack: pack(lipo, 3, 1), temperature_C: 3 }).current_A).toBe(0.2)
    expect(advised({ pack: pack(lipo, 3, 1), temperature_C: 20 }).current_A).toBe(1)
  })

  it('takes the step within the limits where it is faster than recommended, and says that it is', () => {
    const small = { pack: pack(lihv, 3, 0.3), charger: charger() }
    expect(advised(small).current_A).toBe(0.5)
    expect(found({ ...small, current_A: 0.5 })).toContain('aboveUsual')
  })

  it('lists every limit, smallest first', () => {
    const { limits } = advised(
      {
        pack: { ...wren, labelRate_C: 1.5 },
        charger: charger({ power_W: 80 }),
        source: { kind: 'supply', offers: [{ voltage_V: 12, current_A: 2 }] },
      },
      { maxRate_C: { LiHV: 1.2 } },
    )
    expect(limits.map(({ kind }) => kind)).toEqual([
      'house',
      'label',
      'chemistry',
      'source',
      'charger',
      'charger power',
    ])
  })
})

describe('the advised cutoff', () => {
  it('is gentle for Li-ion in a club that wants it, whatever is asked', () => {
    const gentle = { gentleLiIon: true }
    const cell = pack(liIon, 2, 2.6)
    expect(advised({ pack: cell }, gentle).cutoff).toMatchObject({ perCell_V: 4.1 })
    const to = { kind: 'rest', perCell_V: 4.2 } as const
    expect(advised({ pack: cell, to }, gentle).cutoff).toMatchObject({ perCell_V: 4.1, loweredBy: 'house' })
    expect(advised({ pack: pack(lipo, 2, 2.6) }, gentle).cutoff).toMatchObject({ perCell_V: 4.2 })
  })

  it('is the next lower that the charger has', () => {
    expect(advised({ pack: wren, charger: charger({ cutoffs_V: [4.1, 4.2] }) }).cutoff).toMatchObject({
      perCell_V: 4.2,
      asked_V: 4.35,
      loweredBy: 'charger',
    })
  })
})

describe('the smallest pack that a step suits', () => {
  const smallest_Ah = (asked: Asked) =>
    smallestPack_Ah(
      boundsOf({
        ...situationOf({ act: 'charge', ...asked }, { house: noHouseLimits, dangers: [], doubts: [] }),
        pack: asked.pack,
      }),
      0.5,
    )
  const small = pack(lipo, 1, 0.2)

  it('counts label, chemistry and temperature', () => {
    expect(smallest_Ah({ pack: small, charger: charger() })).toBe(0.25)
    expect(smallest_Ah({ pack: { ...small, labelRate_C: 1 }, charger: charger() })).toBe(0.5)
    expect(smallest_Ah({ pack: small, charger: charger(), temperature_C: 8 })).toBe(1)
  })

  it('is none where a larger pack would not help', () => {
    const weak = { kind: 'supply', offers: [{ voltage_V: 5, current_A: 0.5 }] } as const
    const asked = { pack: pack(lipo, 6, 5), charger: charger(), source: weak }
    expect(judged({ act: 'charge', ...asked }).found[0]?.key).toBe('stepTooLarge')
    expect(smallest_Ah(asked)).toBeUndefined()
  })
})
