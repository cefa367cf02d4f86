// A charge at a current that was asked for: when the verdict turns.

import { describe, expect, it } from 'vitest'
import { type Judgement, judge } from '../../../src/charging/envelope/judge.ts'
import { type TimedCharge, timedCharge } from '../../../src/charging/setting/timed-charge.ts'
import type { Told } from '../../../src/charging/situation/situation.ts'
import { lipo } from '../../../src/charging/things/chemistries.ts'
import type { HouseLimits } from '../../../src/charging/things/house-limits.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'
import { judged } from '../../support/judged.ts'

const usual: Pack = { chemistry: lipo, series: 3, parallel: 1, capacity_Ah: 1.5 }
const from = { kind: 'rest', perCell_V: 3.6 } as const

type Asked = Partial<Told> & { readonly current_A: number }

/** As asked, and where that is permitted judged again with what was computed. */
function timed(asked: Asked, house?: HouseLimits): Judgement & { readonly timed: TimedCharge | undefined } {
  const first = judged({ act: 'charge', pack: usual, from, ...asked }, house)
  if (!first.permit) return { ...first, timed: undefined }
  const charge = timedCharge(first.permit, { current_A: asked.current_A })
  const { input_A, carried, current_A: set_A } = charge
  return { ...judge(first.permit.situation, { set_A, input_A, carried }), timed: charge }
}

const keysOf = ({ found }: Judgement) => found.map(({ key }) => key)

describe('timedCharge', () => {
  it.each([
    [1.5, 'go'],
    [2.5, 'go with care'],
    [3, 'go with care'],
    [3.1, 'do not charge'],
  ])('at %f A on 1.5 Ah of LiPo says %s', (current_A, verdict) => {
    const charge = timed({ current_A })
    expect(charge.verdict).toBe(verdict)
    if (verdict === 'do not charge') expect(keysOf(charge)).toContain('currentTooHigh')
    else expect(charge.timed?.charge.duration_s).toBeGreaterThan(0)
  })

  it('believes a label that allows more than the chemistry alone, with care', () => {
    const pack = { ...usual, labelRate_C: 5 }
    expect(timed({ pack, current_A: 4.5 }).verdict).toBe('go with care')
    expect(timed({ pack, current_A: 7.6 }).verdict).toBe('do not charge')
  })

  it('lets no label overrule the club or the cold', () => {
    const pack = { ...usual, labelRate_C: 5 }
    expect(timed({ pack, current_A: 4.5 }, { maxRate_C: { LiPo: 2 } }).verdict).toBe('do not charge')
    expect(timed({ pack, current_A: 4.5, temperature_C: 5 }).verdict).toBe('do not charge')
  })

  it("bends the charge to the charger's power", () => {
    const charger = { currents: { kind: 'list', steps_A: [1, 3] }, power_W: 20 } as const
    const { timed: charge, verdict } = timed({ charger, current_A: 3 })
    expect(charge?.charge.stages.map(({ kind }) => kind)).toContain('constant power')
    expect(charge?.charge.peakPower_W).toBeLessThanOrEqual(20.001)
    expect(verdict).toBe('go with care')
  })

  it('takes care where more is set than the source gives', () => {
    const source = { kind: 'supply', offers: [{ voltage_V: 12, current_A: 1 }] } as const
    expect(keysOf(timed({ source, current_A: 1.5 }))).toContain('aboveSource')
    expect(timed({ source, current_A: 0.5 }).verdict).toBe('go')
  })

  it('sees a source that would run out', () => {
    const small = { ...usual, capacity_Ah: 0.5 }
    const short = timed({ source: { kind: 'battery', pack: small }, current_A: 0.5 })
    expect(short.verdict).toBe('do not charge')
    expect(keysOf(short)).toContain('sourceRunsOut')
    const large = { ...usual, series: 4, capacity_Ah: 5 }
    expect(keysOf(timed({ source: { kind: 'battery', pack: large }, current_A: 0.5 }))).not.toContain('sourceRunsOut')
  })
})
