// Values of the trade, each common practice: what a seasoned pilot would say to the same question.

import { describe, expect, it } from 'vitest'
import { settingFor } from '../../src/charging/setting/setting.ts'
import type { Told } from '../../src/charging/situation/situation.ts'
import { liFe, lihv, liIon, lipo } from '../../src/charging/things/chemistries.ts'
import type { Chemistry } from '../../src/charging/things/chemistry.ts'
import { socAt } from '../../src/charging/things/curve.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { permitFor, refusedBy } from '../support/judged.ts'

const steps = { currents: { kind: 'list', steps_A: [1, 2, 3, 5] } } as const
const pack = (chemistry: Chemistry, series: number, capacity_mAh: number): Pack => ({
  chemistry,
  series,
  parallel: 1,
  capacity_Ah: capacity_mAh / 1000,
})

const advised = (asked: Omit<Told, 'act'>) => settingFor(permitFor({ act: 'charge', ...asked }))

describe('common practice', () => {
  it.each<[Chemistry, number, number]>([
    [lipo, 1, 2],
    [lihv, 1, 2],
  ])('$0.name is charged at $1 C, at most $2 C', (chemistry, recommended_C, highest_C) => {
    expect(chemistry.recommendedRate_C.value).toBe(recommended_C)
    expect(chemistry.highestRate_C.value).toBe(highest_C)
  })

  it('Li-ion is charged at 0.5C', () => {
    expect(liIon.recommendedRate_C.value).toBe(0.5)
  })

  it.each<[Chemistry, number]>([
    [lipo, 4.2],
    [lihv, 4.35],
    [liIon, 4.2],
    [liFe, 3.6],
  ])('$0.name is full at $1 V per cell', (chemistry, full_V) => {
    expect(advised({ pack: pack(chemistry, 3, 1000) })).toMatchObject({ cutoff: { perCell_V: full_V } })
  })

  it('LiPo and LiHV are stored at 3.85 V per cell', () => {
    expect(lipo.storage_V.value).toBe(3.85)
    expect(lihv.storage_V.value).toBe(3.85)
  })

  it('Li-ion stopped at 4.10 V holds about 90 %', () => {
    expect(liIon.gentleFull_V?.value).toBe(4.1)
    expect(Math.abs(socAt(liIon, 4.1) - 0.9)).toBeLessThan(0.03)
  })

  it('a charger whose smallest step is 1 A suits nothing under 500 mAh', () => {
    expect(refusedBy({ act: 'charge', pack: pack(lipo, 2, 499), charger: steps })).toEqual(['stepTooLarge'])
    expect(advised({ pack: pack(lipo, 2, 500), charger: steps })).toMatchObject({ current_A: 1 })
  })

  it('650 mAh LiHV on steps of 1, 2, 3, 5 A is charged at 1 A', () => {
    expect(advised({ pack: pack(lihv, 3, 650), charger: steps })).toMatchObject({
      wanted_A: 0.65,
      current_A: 1,
      cutoff: { perCell_V: 4.35 },
    })
  })

  it('2600 mAh Li-ion on the same steps: 1.3 A wanted, 1 A set', () => {
    expect(advised({ pack: pack(liIon, 1, 2600), charger: steps })).toMatchObject({ wanted_A: 1.3, current_A: 1 })
  })
})
