import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { leadOf, thinnestLead } from '../../../src/charging/leads/lead.ts'
import { mostCurrent_A, wireResistance_ohm, wireRise_K } from '../../../src/charging/leads/wire.ts'
import { cases } from '../../support/cases.ts'

const load = fc.record({
  length_m: fc.double({ min: 0.05, max: 20, noNaN: true }),
  current_A: fc.double({ min: 0.01, max: 60, noNaN: true }),
  air_C: fc.double({ min: -20, max: 50, noNaN: true }),
})

describe('a lead', () => {
  it('counts the way out and back', () => {
    const lead = leadOf(16, { length_m: 1, current_A: 10, air_C: 20 })
    expect(lead.resistance_ohm).toBeCloseTo(2 * 0.013174, 5)
    expect(lead.drop_V).toBeCloseTo(0.26348, 4)
    expect(lead.heat_W).toBeCloseTo(2.6348, 3)
  })

  it('drops more once it has warmed', () => {
    const { drop_V, warmDrop_V, rise_K } = leadOf(16, { length_m: 1, current_A: 10, air_C: 20 })
    expect(rise_K).toBeGreaterThan(5)
    expect(warmDrop_V / drop_V).toBeCloseTo(1 + 0.00393 * rise_K, 9)
  })

  it('gives off through its surface what it makes', () => {
    const rise_K = wireRise_K(18, 8, 20)
    const made_W = 8 ** 2 * wireResistance_ohm(18, 1, 20 + rise_K)
    const surface_m2 = Math.PI * (1.0237 + 1.6) * 1e-3
    // Thin leads in still air: some 15 by convection, 6 by radiation.
    expect(made_W / surface_m2 / rise_K).toBeGreaterThan(17)
    expect(made_W / surface_m2 / rise_K).toBeLessThan(22)
  })

  it('is as warm as it may be at the most that it bears', () => {
    for (const [gauge, air_C] of [
      [16, 20],
      [28, -10],
      [0, 40],
    ] as const)
      expect(wireRise_K(gauge, mostCurrent_A(gauge, air_C), air_C)).toBeCloseTo(30, 6)
  })

  it('has no end of warming where its resistance outruns the cooling', () => {
    expect(wireRise_K(30, 60, 20)).toBe(Number.POSITIVE_INFINITY)
  })
})

describe('the thinnest lead', () => {
  it('keeps within the drop and the warmth, and the next thinner does not', () => {
    fc.assert(
      fc.property(load, fc.double({ min: 0.01, max: 5, noNaN: true }), (at, most_V) => {
        const gauge = thinnestLead(at, most_V)
        const fits = (one: number) => {
          const { warmDrop_V, rise_K } = leadOf(one, at)
          return warmDrop_V <= most_V && rise_K <= 30
        }
        if (gauge === undefined) expect(fits(0)).toBe(false)
        else {
          expect(fits(gauge)).toBe(true)
          if (gauge < 40) expect(fits(gauge + 1)).toBe(false)
        }
      }),
      cases(10_000),
    )
  })

  it('is chosen by warmth alone where the drop is free', () => {
    const at = { length_m: 0.1, current_A: 30, air_C: 20 }
    const gauge = thinnestLead(at) as number
    expect(leadOf(gauge, at).rise_K).toBeLessThanOrEqual(30)
    expect(gauge).toBeLessThan(13)
  })
})
