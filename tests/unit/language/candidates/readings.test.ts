import { describe, expect, it } from 'vitest'
import { cellResistancesKind, cellVoltsKind } from '../../../../src/language/kinds/reading-kinds.ts'
import { covered, coveredTexts } from '../../../support/covered.ts'

describe('readings of cells', () => {
  it.each([
    ['3.82 3.83 3.79', [3.82, 3.83, 3.79]],
    ['3.81/3.84/3.80', [3.81, 3.84, 3.8]],
    ['4,19 4,20 4,11', [4.19, 4.2, 4.11]],
    ['3,81, 3,82, 3,74', [3.81, 3.82, 3.74]],
    ['4.18, 4.19, 4.11 and 4.18 volts', [4.18, 4.19, 4.11, 4.18]],
    ['3.71 3.70 2.1', [3.71, 3.7, 2.1]],
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
  ])('resistances of %j', (text, ohms) => {
    const [found] = covered(text, 'resistances')
    expect(cellResistancesKind.read(found?.text ?? '', {}).value).toEqual(ohms)
  })

  it.each(['5 6 5 7', 'packs 5, 6 and 7', '0.5 1 2 A'])('no resistances in %j', text => {
    expect(covered(text, 'resistances', 'resistance')).toEqual([])
  })
})
