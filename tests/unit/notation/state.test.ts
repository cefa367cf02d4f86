import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lihv } from '../../../src/charging/things/chemistries.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'
import {
  type Level,
  readAnyState,
  readState,
  readTarget,
  stateOf,
  targetOf,
  writeLevel,
} from '../../../src/language/things/state.ts'
import { problemOf } from './problem-of.ts'

const pack = (series: number): Pack => ({ chemistry: lihv, series, parallel: 1, capacity_Ah: 0.72 })
const rest = (perCell_V: number) => ({ kind: 'rest', perCell_V })

describe('states and targets', () => {
  it.each([
    ['20%', { kind: 'soc', soc: 0.2 }],
    ['1%', { kind: 'soc', soc: 0.01 }],
    ['full', { kind: 'named', name: 'full' }],
    ['Storage', { kind: 'named', name: 'storage' }],
    ['3.7V per cell', rest(3.7)],
    ['3,70 V/cell', rest(3.7)],
    ['11.1V', rest(3.7)],
    ['11.1V pack', rest(3.7)],
    ['4.2V pack', rest(1.4)],
  ])('reads %j of a 3S pack', (text, value) => {
    expect(readState(text, pack(3))).toEqual({ value, assumed: [] })
    expect(readTarget(text, pack(3))).toEqual({ value, assumed: [] })
  })

  it('reads volts that can only be one cell as such, out loud', () => {
    expect(readState('3.7V', pack(3))).toEqual({
      value: rest(3.7),
      assumed: ['3.7 V is read as volts per cell'],
    })
    expect(readState('3.7V', pack(1))).toEqual({ value: rest(3.7), assumed: [] })
    expect(readState('3.7V')).toEqual({ value: rest(3.7), assumed: [] })
    expect(readState('3.6', pack(6))).toEqual({
      value: rest(3.6),
      assumed: ['3.6 is read as 3.6 V per cell'],
    })
  })

  it('asks where volts could be a full cell or a flat pack', () => {
    const problem = problemOf(() => readState('4.2V', pack(2)))
    expect(problem.token).toBe('4.2V')
    expect(readState(problem.example, pack(2)).value).toEqual(rest(4.2))
    expect(readState('4.2V pack', pack(2)).value).toEqual(rest(2.1))
  })

  it('takes the end of a charge for volts of a cell where no charge of the pack could end', () => {
    expect(readTarget('4.2V', pack(2))).toEqual({
      value: rest(4.2),
      assumed: ['4.2 V is read as volts per cell'],
    })
    expect(readTarget('8.2V', pack(2)).value).toEqual(rest(4.1))
  })

  it.each(['20', '4', '-3V', 'NaN', '1e3V', '120%', '3,700V', '99V', 'half', '', '5V per cell'])(
    'refuses %j',
    text => {
      expect(problemOf(() => readState(text, pack(3))).example).toBeTruthy()
    },
  )

  it.each(['0%', '0 %', '0.4%', 'dead', 'completely dead'])(
    'asks for volts where %j is all that is told',
    text => {
      expect(problemOf(() => readState(text, pack(3))).what).toContain('volts')
      expect(problemOf(() => readState(text)).expected).toContain('volts per cell')
    },
  )

  it('tells the volts of an empty cell to those who only ask', () => {
    expect(readAnyState('0%').value).toEqual({ kind: 'soc', soc: 0 })
    expect(readTarget('0%').value).toEqual({ kind: 'soc', soc: 0 })
  })

  it('needs the pack for pack volts, and does not end a charge at empty', () => {
    expect(problemOf(() => readState('11.1V')).what).toContain('pack')
    expect(problemOf(() => readTarget('empty', pack(3))).token).toBe('empty')
  })

  it('resolves the names by the levels that hold', () => {
    const levels = { full_V: 4.35, storage_V: 3.85 }
    const named = (name: 'full' | 'storage' | 'empty'): Level => ({ kind: 'named', name })
    expect(stateOf(named('empty'), levels)).toEqual({ kind: 'soc', soc: 0 })
    expect(stateOf(named('full'), levels)).toEqual({ kind: 'soc', soc: 1 })
    expect(stateOf(named('storage'), levels)).toEqual(rest(3.85))
    expect(targetOf(named('full'), levels)).toEqual({ kind: 'voltage', perCell_V: 4.35 })
    expect(targetOf(named('storage'), levels)).toEqual({ kind: 'voltage', perCell_V: 3.85 })
    expect(targetOf({ kind: 'rest', perCell_V: 4.1 }, levels)).toEqual({ kind: 'voltage', perCell_V: 4.1 })
    expect(targetOf({ kind: 'soc', soc: 0.8 }, levels)).toEqual({
      kind: 'soc',
      soc: 0.8,
      cutoffPerCell_V: 4.35,
    })
  })

  it('writes a level so that it reads the same', () => {
    const some: fc.Arbitrary<Level> = fc.oneof(
      fc.constantFrom('full', 'storage', 'empty').map(name => ({ kind: 'named' as const, name })),
      fc.double({ min: 0.005, max: 1, noNaN: true }).map(soc => ({ kind: 'soc' as const, soc })),
      fc.double({ min: 0, max: 4.5, noNaN: true }).map(perCell_V => ({ kind: 'rest' as const, perCell_V })),
    )
    fc.assert(
      fc.property(some, fc.integer({ min: 1, max: 14 }), (level, series) => {
        expect(readState(writeLevel(level), pack(series))).toEqual({ value: level, assumed: [] })
      }),
    )
  })
})
