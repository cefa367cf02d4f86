// Simulated charges against charges measured on real cells of many laboratories: charges/datasets.ts says which.

import { describe, expect, test } from 'vitest'
import { familiesIn, figuresOf, isHeldOut, restedRuns, type Told, timesBy, timesByLog } from './charges/figures.ts'
import { chargeRuns } from './charges/runs.ts'

// What is fitted, and on which families: the classes of cell in chemistries.ts, how they age in resistance.ts,
// the curve of high-voltage pouches. The families held out took no part; a figure below is what the model is worth on them.

const heldOut = chargeRuns.filter(({ dataset }) => isHeldOut(dataset))

test('four families of other cells are held out of every fit, by name', () => {
  expect([...new Set(heldOut.map(({ dataset }) => dataset))].toSorted()).toEqual([
    'aircraftLot',
    'carPouch',
    'conditioned18650',
    'cycled18650',
  ])
  expect(heldOut.length).toBeGreaterThan(40)
})

describe('label, measured capacity and one reading of the resistance known', () => {
  const { total, cutoff } = timesBy(heldOut, 'inputs')

  test('held-out totals: median within 2 %, 95 of 100 within 8 %, the worst, aged as it is, within 15 %', () => {
    expect(figuresOf(total).median).toBeLessThan(0.02)
    expect(figuresOf(total).most).toBeLessThan(0.08)
    expect(figuresOf(total).worst).toBeLessThan(0.15)
  })

  test('held-out times to the cutoff: median within 2 %, 95 of 100 within 8 %', () => {
    expect(figuresOf(cutoff).median).toBeLessThan(0.02)
    expect(figuresOf(cutoff).most).toBeLessThan(0.08)
  })

  test('nine of ten lie in the band, which is far narrower than by the label', () => {
    const byLabel = timesBy(heldOut, 'label')
    expectHeld(total)
    expectHeld(cutoff)
    expect(figuresOf(total).halfWidth).toBeLessThan(0.7 * figuresOf(byLabel.total).halfWidth)
  })
})

describe('from the label alone', () => {
  const { total, cutoff } = timesBy(heldOut, 'label')

  test('93 of 100 held-out totals and 90 of 100 times to the cutoff lie in the band, of 18 % either way on average', () => {
    expect(figuresOf(total).inside).toBeGreaterThanOrEqual(0.93)
    expect(figuresOf(cutoff).inside).toBeGreaterThanOrEqual(0.9)
    expect(figuresOf(total).halfWidth).toBeLessThanOrEqual(0.18)
  })

  test.each([...familiesIn(total)])('of %s no fewer than four of five', (_, times) => {
    expect(figuresOf(times).inside).toBeGreaterThanOrEqual(0.8)
  })
})

test('from resting volts nine of ten lie in the band', () => {
  const { total, cutoff } = timesBy(restedRuns, 'rest')
  expect(total.length).toBeGreaterThan(60)
  expectHeld(total)
  expectHeld(cutoff)
})

describe('by the charges of the same held-out cell before it, and nothing else but the label', () => {
  test('from one on: median within 1 %, 95 of 100 within 3 %, nine of ten in the band', () => {
    const { total, cutoff } = timesByLog(heldOut, 1)
    expect(total.length).toBeGreaterThan(25)
    for (const times of [total, cutoff]) {
      expect(figuresOf(times).median).toBeLessThan(0.01)
      expect(figuresOf(times).most).toBeLessThan(0.03)
      expectHeld(times)
    }
    expect(figuresOf(total).halfWidth).toBeLessThan(0.025)
  })

  test('from three on: none is off by more than 2 %', () => {
    const { total, cutoff } = timesByLog(heldOut, 3)
    expect(total.length).toBeGreaterThan(6)
    for (const times of [total, cutoff]) expect(figuresOf(times).worst).toBeLessThan(0.02)
  })
})

function expectHeld(times: readonly Told[]): void {
  expect(figuresOf(times).inside).toBeGreaterThanOrEqual(0.88)
}
