import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dropKind } from '../../../../src/language/kinds/drop-kind.ts'
import {
  cellResistancesKind,
  cellVoltsKind,
  cutoffsKind,
  loadKind,
} from '../../../../src/language/kinds/reading-kinds.ts'
import { scaleKind } from '../../../../src/language/kinds/scale-kind.ts'
import type { ValueKind } from '../../../../src/language/kinds/value-kind.ts'
import { covered, coveredTexts } from '../../../support/covered.ts'

describe('readings of cells', () => {
  it.each([
    ['3.82 3.83 3.79', [3.82, 3.83, 3.79]],
    ['3.81/3.84/3.80', [3.81, 3.84, 3.8]],
    ['4,19 4,20 4,11', [4.19, 4.2, 4.11]],
    ['3,81, 3,82, 3,74', [3.81, 3.82, 3.74]],
    ['4.18, 4.19, 4.11 and 4.18 volts', [4.18, 4.19, 4.11, 4.18]],
    ['3.71 3.70 2.1', [3.71, 3.7, 2.1]],
    ['IR is fine, cells 2.1 2.2 2.0', [2.1, 2.2, 2]],
  ])('of %j', (text, volts) => {
    const [found] = covered(text, 'cellVolts')
    expect(cellVoltsKind.read(found?.text ?? '', {}).value).toEqual(volts)
  })

  it.each(['3.7 to 4.2', '0.5/1/2/4A', '2.2 or 3.3 A', 'two at 3.82 and 3.80', '12.4 12.6 12.5'])(
    'none in %j',
    text => {
      expect(covered(text, 'cellVolts')).toEqual([])
    },
  )

  it('of two cells where the pack has two', () => {
    expect(coveredTexts('my 2s reads 3.84 3.79', 'cellVolts')).toEqual(['3.84 3.79'])
  })

  it.each([
    ['5 6 5 7 mΩ', [0.005, 0.006, 0.005, 0.007]],
    ['6, 6, 7, 6 and 14 milliohms', [0.006, 0.006, 0.007, 0.006, 0.014]],
    ['ir 3.1 2.9 3.0 5.9', [0.0031, 0.0029, 0.003, 0.0059]],
    ['resistance 2.1 2.2 3.9 on the 3S', [0.0021, 0.0022, 0.0039]],
  ])('resistances of %j', (text, ohms) => {
    const [found] = covered(text, 'resistances')
    expect(cellResistancesKind.read(found?.text ?? '', {}).value).toEqual(ohms)
  })

  it.each(['5 6 5 7', 'packs 5, 6 and 7', '0.5 1 2 A'])('no resistances in %j', text => {
    expect(covered(text, 'resistances', 'resistance')).toEqual([])
  })
})

describe('kinds of readings', () => {
  const list = (min: number, max: number) =>
    fc.array(
      fc.double({ min, max, noNaN: true }).map(value => Number(value.toPrecision(9))),
      { minLength: 1, maxLength: 14 },
    )
  const drop = fc.oneof(
    fc.double({ min: 0.01, max: 20, noNaN: true }).map(drop_V => ({ kind: 'volts' as const, drop_V })),
    fc.double({ min: 0.001, max: 0.5, noNaN: true }).map(share => ({ kind: 'share' as const, share })),
  )
  const load = fc.record({
    current_A: fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: 60, noNaN: true })),
    pack_V: fc.double({ min: 0, max: 60, noNaN: true }),
  })

  it.each([
    ['cell volts', cellVoltsKind, list(0, 4.5)],
    ['cutoffs', cutoffsKind, list(2.5, 4.5)],
    ['resistances', cellResistancesKind, list(0.0001, 1)],
    ['load', loadKind, load],
    ['drop', dropKind, drop],
    ['scale', scaleKind, fc.double({ min: 0.01, max: 100_000, noNaN: true })],
  ] as readonly (readonly [string, ValueKind<unknown>, fc.Arbitrary<unknown>])[])(
    '%s: reads what it wrote',
    (_, kind, some) => {
      fc.assert(
        fc.property(some, value => {
          expect(kind.read(kind.write(value), {})).toEqual({ value, assumed: [] })
        }),
      )
    },
  )
})
