// The project's model beside an electrochemical one on published cells: tests/physics computes it, docs/physics.md shows it.

import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { compared, isUsual, tableOf } from '../physics/compare.ts'
import { storedRows } from '../physics/rows.ts'
import { figuresOf } from './charges/figures.ts'

const usual = storedRows.filter(isUsual)

describe('up to 1C, on a grid of rates and starts of five parameter sets', () => {
  it('totals with capacity and a reading known agree within 3 % in the middle, nine of ten in the band', () => {
    const { total, cutoff } = compared(usual, 'inputs', storedRows)
    expect(total.length).toBeGreaterThan(40)
    expect(figuresOf(total).median).toBeLessThan(0.03)
    expect(figuresOf(total).inside).toBeGreaterThan(0.88)
    expect(figuresOf(cutoff).inside).toBeGreaterThan(0.85)
  })

  it('from resting volts, top-offs among them, 92 of 100 totals or more lie in the band', () => {
    const { total, cutoff } = compared(usual, 'resting volts', storedRows)
    expect(figuresOf(total).inside).toBeGreaterThanOrEqual(0.92)
    expect(figuresOf(cutoff).inside).toBeGreaterThan(0.8)
  })

  it('by a log at another rate totals agree within 1.1 % in the middle, 95 of 100 within 7 %, 88 or more in the band', () => {
    const { total } = compared(usual, 'its log', storedRows)
    expect(total.length).toBeGreaterThan(25)
    expect(figuresOf(total).median).toBeLessThan(0.011)
    expect(figuresOf(total).most).toBeLessThan(0.07)
    expect(figuresOf(total).inside).toBeGreaterThan(0.88)
  })
})

it('the page in the documents says what comes out today', () => {
  const page = readFileSync(new URL('../../docs/physics.md', import.meta.url), 'utf8')
  expect(page, 'run npm run check:physics -- --write').toContain(tableOf(storedRows))
})
