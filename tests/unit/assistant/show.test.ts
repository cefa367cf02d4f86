import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { showIn } from '../../../src/ground/show.ts'

const show = showIn('.')
const plain = (text: string) => text.replaceAll('\u00a0', ' ')

describe('numbers as a person reads them', () => {
  it.each([
    [show.current(0.72), '0.72 A'],
    [show.current(1), '1 A'],
    [show.current(16.354), '16.35 A'],
    [show.perCell(4.2), '4.20 V'],
    [show.voltage(13.05), '13.05 V'],
    [show.voltage(9), '9 V'],
    [show.capacity(0.72), '720 mAh'],
    [show.capacity(12), '12 Ah'],
    [show.charge(0.6806), '680 mAh'],
    [show.roughly(4.43 * 3600, Math.ceil), '4 h 30 min'],
    [show.energy(8.208), '8.21 Wh'],
    [show.resistance(0.0064), '6.4 mΩ'],
    [show.rate(1.5385), '1.54C'],
    [show.percent(0.912), '91 %'],
    [show.duration(52 * 60), '52 min'],
    [show.duration(80 * 60), '1 h 20 min'],
    [show.duration(7200), '2 h'],
    [show.duration(12), '12 s'],
    [showIn(',').perCell(3.85), '3,85 V'],
    [showIn(',').current(0.5), '0,5 A'],
  ])('%s', (text, expected) => {
    expect(plain(text)).toBe(expected)
  })

  it('never shows a duration shorter than it is', () => {
    const units: Record<string, number> = { days: 86_400, h: 3600, min: 60, s: 1 }
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 1e6, noNaN: true }), duration_s => {
        const shown_s = [...plain(show.duration(duration_s)).matchAll(/(\d+) (days|h|min|s)/g)].reduce(
          (sum, [, count, unit]) => sum + Number(count) * (units[unit ?? ''] ?? Number.NaN),
          0,
        )
        expect(shown_s).toBeGreaterThanOrEqual(duration_s - 1e-6)
        expect(shown_s).toBeLessThan(duration_s + (duration_s > 71 * 3600 ? 3600 : 60))
      }),
    )
  })
})
