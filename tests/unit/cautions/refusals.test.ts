// The words of refusals.

import { describe, expect, it } from 'vitest'
import { refusalWords } from '../../../src/cautions/refusals.ts'
import { showIn } from '../../../src/ground/show.ts'

const show = showIn('.')
const words = (refusal: Parameters<typeof refusalWords>[0]) => {
  const { headline, instead } = refusalWords(refusal, show)
  return `${headline} ${instead}`.replaceAll('\u00a0', ' ')
}

describe('refusalWords', () => {
  it('names the smallest capacity that a charger suits, rounded up', () => {
    const limit = { kind: 'chemistry', value_A: 0.9, rate_C: 2, from: { source: 'x' } } as const
    const said = words({ kind: 'steps too large', smallest_A: 1, limit, smallestCapacity_Ah: 0.50000001 })
    expect(said).toContain('its smallest step, 1 A, is more than the 0.9 A that the cells take')
    expect(said).toContain('from 501 mAh up')
  })

  it('says which way the temperature is wrong', () => {
    const window = { from_C: 0, to_C: 45 }
    expect(words({ kind: 'temperature', temperature_C: 70, ...window })).toMatch(/70 °C.*cool in the shade/)
    expect(words({ kind: 'temperature', temperature_C: -3, ...window })).toMatch(/-3 °C.*Warm the pack/)
  })

  it('writes open windows and single voltages as a person would', () => {
    const open = {
      kind: 'input window',
      gives_V: [5, 5],
      minInput_V: 9,
      maxInput_V: Number.POSITIVE_INFINITY,
    } as const
    expect(words(open)).toContain('it gives 5 V, and the charger wants 9 V and up')
    expect(words({ kind: 'cell count', series: 6, minSeries: 1, maxSeries: 4 })).toContain(
      'made for 1S to 4S',
    )
  })

  it('tells the full voltage when more was asked for', () => {
    expect(words({ kind: 'cutoff above full', cutoffPerCell_V: 4.2, full_V: 3.6 })).toMatch(
      /4\.20 V.*3\.60 V/,
    )
  })
})
