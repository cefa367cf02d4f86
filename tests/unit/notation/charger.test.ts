import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readCharger, writeCharger } from '../../../src/language/things/charger.ts'
import { someCharger } from '../../support/arbitraries.ts'
import { cases } from '../../support/cases.ts'
import { inEnglish } from '../../support/in-english.ts'
import { problemOf } from './problem-of.ts'

const list = (...steps_A: number[]) => ({ kind: 'list', steps_A })

describe('chargers', () => {
  it('reads the steps and the limits around them', () => {
    expect(readCharger('0.5/1/2/4A 80W 1-4S 9-20V')).toEqual({
      value: { currents: list(0.5, 1, 2, 4), power_W: 80, minSeries: 1, maxSeries: 4, minInput_V: 9, maxInput_V: 20 },
      assumed: [],
    })
    expect(readCharger('0.1-10A by 0.1 200W 6S 10-30V').value).toEqual({
      currents: { kind: 'range', from_A: 0.1, to_A: 10, increment_A: 0.1 },
      power_W: 200,
      maxSeries: 6,
      minInput_V: 10,
      maxInput_V: 30,
    })
  })

  it.each([
    ['1 2 3 5 A steps', [1, 2, 3, 5]],
    ['0,5/1/2/4 A', [0.5, 1, 2, 4]],
    ['0.5, 1, 2, 4 A charger', [0.5, 1, 2, 4]],
    ['0.5 or 1 A', [0.5, 1]],
    ['300/500mA', [0.3, 0.5]],
    ['500mA/1A', [0.5, 1]],
    ['4/1/2/2A', [1, 2, 4]],
    ['2A', [2]],
  ])('reads the steps of %j, rising', (text, steps_A) => {
    expect(readCharger(text).value.currents).toEqual({ kind: 'list', steps_A })
  })

  it('reads efficiency, balancing and cutoffs', () => {
    expect(readCharger('2A 85% balance 0.3A needs balance lead 4.20/4.35V').value).toEqual({
      currents: list(2),
      efficiency: 0.85,
      balance_A: 0.3,
      needsBalanceLead: true,
      cutoffs_V: [4.2, 4.35],
    })
    expect(readCharger('0.3A balance 1/2A').value).toEqual({ currents: list(1, 2), balance_A: 0.3 })
  })

  it('assumes the usual increment out loud', () => {
    const { value, assumed } = inEnglish(readCharger('0.1-10A'))
    expect(value.currents).toMatchObject({ increment_A: 0.1 })
    expect(assumed).toEqual([expect.stringContaining('0.1 A')])
  })

  it('takes the usual currents of a charger that is told by its watts, out loud', () => {
    const { value, assumed } = inEnglish(readCharger('80W charger'))
    expect(value).toEqual({ currents: { kind: 'range', from_A: 0.1, to_A: 8, increment_A: 0.1 }, power_W: 80 })
    expect(assumed).toEqual(['a charger of 80 W is taken to offer 0.1 A to 8 A in steps of 0.1 A'])
    expect(problemOf(() => readCharger('3S charger')).what).toContain('lacks its currents')
  })

  it.each([
    ['80W', undefined, '80W'],
    ['-5A', undefined, '-5A'],
    ['0.5,1,2,4A', undefined, '0.5,1,2,4'],
    ['1/2A 100V', 'an input voltage', '100V'],
    ['1/2A 12V', 'cutoffs', '12V'],
    ['1/2A 4.9V', 'cutoffs', '4.9V'],
    ['1/2A 20-9V', 'smaller value first', '20-9V'],
    ['10-1A', 'smaller value first', '10-1A'],
    ['1-2A by 5', 'increment', '1-2A by 5'],
    ['1/2A 4-1S', '1S to 14S', '4-1S'],
    ['1/2A 40S', '1S to 14S', '40S'],
    ['1/2A 30%', 'an efficiency', '30%'],
    ['1/2A wifi', 'a charger', 'wifi'],
    ['0.5/1,234A', 'nothing for thousands', '1,234'],
    ['1/900A', '0.01 to 500 A', '900A'],
    ['0.1-900A', '0.01 to 500 A', '0.1-900A'],
    ['balance 20A 1/2A', 'a balance current', '20A'],
  ])('refuses %j', (text, expected = '', token) => {
    const problem = problemOf(() => readCharger(text))
    expect(problem.token).toBe(token)
    expect(problem.expected).toContain(expected)
  })

  it('reads what people say of one, and both of what they say of its range', () => {
    expect(readCharger('eighty watt charger').value.power_W).toBe(80)
    expect(readCharger('0.1-10A in steps of 0.1').value).toEqual(readCharger('0.1-10A by 0.1').value)
    expect(readCharger('100mA to 10A, by 50mA, dc 9-20V').value).toMatchObject({
      currents: { kind: 'range', from_A: 0.1, to_A: 10, increment_A: 0.05 },
      maxInput_V: 20,
    })
  })

  it('writes a charger so that it reads the same', () => {
    fc.assert(
      fc.property(someCharger, charger => {
        const { needsBalanceLead, cutoffs_V, ...rest } = charger
        const same = {
          ...rest,
          ...(needsBalanceLead && { needsBalanceLead }),
          ...(cutoffs_V && { cutoffs_V: [...cutoffs_V].sort((a, b) => a - b) }),
        }
        expect(readCharger(writeCharger(charger))).toEqual({ value: same, assumed: [] })
      }),
      cases(2000),
    )
  })
})
