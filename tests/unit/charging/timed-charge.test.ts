// A charge at a current that was asked for: when the verdict turns.

import { describe, expect, it } from 'vitest'
import { adviseSetting } from '../../../src/charging/setting/old-setting.ts'
import {
  type TimedCharge,
  type TimedChargeRequest,
  timedCharge,
} from '../../../src/charging/setting/old-timed-charge.ts'
import { lipo } from '../../../src/charging/things/chemistries.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'

const usual: Pack = { chemistry: lipo, series: 3, parallel: 1, capacity_Ah: 1.5 }
const from = { kind: 'rest', perCell_V: 3.6 } as const

function timed(request: Partial<TimedChargeRequest> & { current_A: number }): TimedCharge {
  const whole = { pack: usual, from, ...request }
  const setting = adviseSetting(whole)
  if ('refusal' in setting) throw new Error(`refused: ${setting.refusal.kind}`)
  return timedCharge(whole, setting)
}

describe('timedCharge', () => {
  it.each([
    [1.5, 'go', undefined],
    [2.5, 'go with care', undefined],
    [3, 'go with care', undefined],
    [3.1, 'do not charge', 'chemistry'],
  ])('at %f A on 1.5 Ah of LiPo says %s', (current_A, verdict, above) => {
    const charge = timed({ current_A })
    expect(charge.verdict).toBe(verdict)
    expect(charge.above?.kind).toBe(above)
    expect(charge.charge.duration_s).toBeGreaterThan(0)
  })

  it('believes a label that allows more than the chemistry alone, with care', () => {
    const pack = { ...usual, labelRate_C: 5 }
    expect(timed({ pack, current_A: 4.5 }).verdict).toBe('go with care')
    expect(timed({ pack, current_A: 7.6 }).verdict).toBe('do not charge')
  })

  it('lets no label overrule the house or the cold', () => {
    const pack = { ...usual, labelRate_C: 5 }
    expect(timed({ pack, current_A: 4.5, limits: { maxRate_C: { LiPo: 2 } } }).verdict).toBe('do not charge')
    expect(timed({ pack, current_A: 4.5, temperature_C: 5 }).verdict).toBe('do not charge')
  })

  it("bends the charge to the charger's power", () => {
    const charger = { currents: { kind: 'list', steps_A: [1, 3] }, power_W: 20 } as const
    const { charge, verdict } = timed({ charger, current_A: 3 })
    expect(charge.stages.map(({ kind }) => kind)).toContain('constant power')
    expect(charge.peakPower_W).toBeLessThanOrEqual(20.001)
    expect(verdict).toBe('go with care')
  })

  it('takes care where more is set than the source gives', () => {
    const source = { kind: 'supply', offers: [{ voltage_V: 12, current_A: 1 }] } as const
    expect(timed({ source, current_A: 1.5 }).cares).toContain('more than the source gives')
    expect(timed({ source, current_A: 0.5 }).cares).toEqual([])
  })

  it('sees a source that would run out', () => {
    const small = { ...usual, capacity_Ah: 0.5 }
    const short = timed({ source: { kind: 'battery', pack: small }, current_A: 0.5 })
    expect(short).toMatchObject({ verdict: 'do not charge', sourceRunsOut: true })
    const large = { ...usual, series: 4, capacity_Ah: 5 }
    expect(timed({ source: { kind: 'battery', pack: large }, current_A: 0.5 }).sourceRunsOut).toBe(false)
  })
})
