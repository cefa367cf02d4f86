// What to set: which limit binds, what lowers the cutoff, what is refused and why.

import { describe, expect, it } from 'vitest'
import {
  adviseSetting,
  type Setting,
  type SettingRequest,
} from '../../../src/charging/setting/old-setting.ts'
import type { Refusal } from '../../../src/charging/setting/refusal.ts'
import type { Charger } from '../../../src/charging/things/charger.ts'
import { liFe, lihv, liIon, lipo } from '../../../src/charging/things/chemistries.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'

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

function advised(request: SettingRequest): Setting {
  const setting = adviseSetting(request)
  if ('refusal' in setting) throw new Error(`refused: ${setting.refusal.kind}`)
  return setting
}

function refusal(request: SettingRequest): Refusal | undefined {
  const setting = adviseSetting(request)
  return 'refusal' in setting ? setting.refusal : undefined
}

describe('the advised current', () => {
  it('is the step nearest to the recommended rate', () => {
    expect(advised({ pack: wren, charger: charger() })).toMatchObject({ current_A: 0.5, bound: 'steps' })
  })

  it('without a charger is the recommended rate, rounded down', () => {
    expect(advised({ pack: pack(lipo, 3, 1.2345) })).toMatchObject({ current_A: 1.23, verdict: 'go' })
    expect(advised({ pack: pack(lipo, 3, 12.3456) })).toMatchObject({ current_A: 12.3 })
  })

  it('follows the label where it gives a rate, but not above what the chemistry takes', () => {
    expect(advised({ pack: { ...wren, labelRate_C: 0.5 } }).current_A).toBe(0.36)
    expect(advised({ pack: { ...wren, labelRate_C: 1.5 } }).current_A).toBe(1.08)
    expect(advised({ pack: { ...wren, labelRate_C: 5 } }).current_A).toBe(1.44)
  })

  it('is held down by the house, and says so', () => {
    const setting = advised({ pack: wren, limits: { maxRate_C: { LiHV: 0.5 } } })
    expect(setting).toMatchObject({ current_A: 0.36, bound: { kind: 'house', value_A: 0.36 } })
  })

  it('is not raised by a house that allows more than the chemistry', () => {
    expect(advised({ pack: { ...wren, labelRate_C: 5 }, limits: { maxRate_C: { LiHV: 9 } } }).current_A).toBe(
      1.44,
    )
  })

  it("is held down by the charger's power at the cutoff", () => {
    const large = pack(lipo, 6, 5)
    // 50 W / 25.2 V = 1.98 A, so the step below is 1 A.
    expect(advised({ pack: large, charger: charger({ power_W: 50 }) })).toMatchObject({
      current_A: 1,
      bound: { kind: 'charger power' },
    })
  })

  it('is less in the cold', () => {
    expect(advised({ pack: pack(lipo, 3, 1), temperature_C: 8 })).toMatchObject({
      current_A: 0.25,
      verdict: 'go with care',
      cares: ['reduced by temperature'],
    })
    expect(advised({ pack: pack(lipo, 3, 1), temperature_C: 20 }).current_A).toBe(1)
  })

  it('takes care where the nearest step is faster than recommended', () => {
    expect(advised({ pack: pack(lihv, 3, 0.3), charger: charger() })).toMatchObject({
      current_A: 0.5,
      cares: ['above the wanted current'],
    })
  })

  it('lists every limit, smallest first', () => {
    const { limits } = advised({
      pack: { ...wren, labelRate_C: 1.5 },
      charger: charger({ power_W: 80 }),
      source: { kind: 'supply', offers: [{ voltage_V: 12, current_A: 2 }] },
      limits: { maxRate_C: { LiHV: 1.2 } },
    })
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
  it('is gentle for Li-ion in a house that wants it, whatever is asked', () => {
    const limits = { gentleLiIon: true }
    const cell = pack(liIon, 2, 2.6)
    expect(advised({ pack: cell, limits }).cutoff).toMatchObject({ perCell_V: 4.1 })
    const target = { kind: 'voltage', perCell_V: 4.2 } as const
    expect(advised({ pack: cell, limits, target }).cutoff).toMatchObject({
      perCell_V: 4.1,
      loweredBy: 'house',
    })
    expect(advised({ pack: pack(lipo, 2, 2.6), limits }).cutoff).toMatchObject({ perCell_V: 4.2 })
  })

  it('is the next lower that the charger has', () => {
    expect(advised({ pack: wren, charger: charger({ cutoffs_V: [4.1, 4.2] }) })).toMatchObject({
      cutoff: { perCell_V: 4.2, asked_V: 4.35, loweredBy: 'charger' },
      verdict: 'go with care',
    })
  })

  it('is refused where the next lower one would hardly charge, or none is lower', () => {
    const only = charger({ cutoffs_V: [4.2, 4.35] })
    expect(refusal({ pack: pack(liFe, 3, 1), charger: only })).toMatchObject({ kind: 'no fitting cutoff' })
    expect(refusal({ pack: pack(lipo, 3, 1), charger: charger({ cutoffs_V: [3.6] }) })).toMatchObject({
      kind: 'no fitting cutoff',
    })
  })
})

describe('a refusal', () => {
  it.each<[Refusal['kind'], SettingRequest]>([
    ['damaged cell', { pack: wren, restPerCell_V: 2.1 }],
    ['overcharged cell', { pack: pack(lipo, 3, 1), restPerCell_V: 4.3 }],
    ['temperature', { pack: wren, temperature_C: 70 }],
    ['temperature', { pack: wren, temperature_C: -1 }],
    ['cutoff above full', { pack: pack(liFe, 3, 1), target: { kind: 'voltage', perCell_V: 4.2 } }],
    ['cutoff too low', { pack: wren, target: { kind: 'voltage', perCell_V: 3 } }],
    ['cell count', { pack: pack(lipo, 6, 1), charger: charger({ maxSeries: 4 }) }],
    ['no balance lead', { pack: pack(lipo, 1, 1), charger: charger({ needsBalanceLead: true }) }],
    ['steps too large', { pack: pack(lipo, 1, 0.2), charger: charger() }],
    [
      'input window',
      {
        pack: wren,
        charger: charger({ minInput_V: 9 }),
        source: { kind: 'supply', offers: [{ voltage_V: 5, current_A: 3 }] },
      },
    ],
    [
      'source at its floor',
      { pack: wren, source: { kind: 'battery', pack: pack(liIon, 4, 5) }, sourceSoc: 0 },
    ],
  ])('says %s', (kind, request) => {
    expect(refusal(request)?.kind).toBe(kind)
  })

  it('lets a single cell with a balance lead on a charger that wants one', () => {
    const strict = charger({ needsBalanceLead: true })
    expect(advised({ pack: pack(lipo, 1, 1), charger: strict, balanceLead: true }).current_A).toBe(1)
  })

  it('names the smallest capacity that suits, counting label, house and temperature', () => {
    const small = pack(lipo, 1, 0.2)
    expect(refusal({ pack: small, charger: charger() })).toMatchObject({ smallestCapacity_Ah: 0.25 })
    expect(refusal({ pack: { ...small, labelRate_C: 1 }, charger: charger() })).toMatchObject({
      smallestCapacity_Ah: 0.5,
    })
    expect(refusal({ pack: small, charger: charger(), temperature_C: 8 })).toMatchObject({
      smallestCapacity_Ah: 1,
    })
  })

  it('names none where a larger pack would not help', () => {
    const weak = { kind: 'supply', offers: [{ voltage_V: 5, current_A: 0.5 }] } as const
    const refused = refusal({ pack: pack(lipo, 6, 5), charger: charger(), source: weak })
    expect(refused).toMatchObject({ kind: 'steps too large', limit: { kind: 'source' } })
    expect(refused).not.toHaveProperty('smallestCapacity_Ah')
  })

  it('holds at the temperature borders: 0 and 45 °C are inside', () => {
    expect(refusal({ pack: wren, temperature_C: 0 })).toBeUndefined()
    expect(refusal({ pack: wren, temperature_C: 45 })).toBeUndefined()
    expect(refusal({ pack: wren, temperature_C: 45.1 })).toMatchObject({ from_C: 0, to_C: 45 })
  })
})
