import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lihv } from '../../../src/charging/things/chemistries.ts'
import { goalOf, startOf } from '../../../src/charging/things/level.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'
import { type Level, readAnyState, readState, readTarget, writeLevel } from '../../../src/language/things/state.ts'
import { inEnglish } from '../../support/in-english.ts'
import { problemOf } from './problem-of.ts'

const pack = (series: number): Pack => ({ chemistry: lihv, series, parallel: 1, capacity_Ah: 0.72 })
const rest = (perCell_V: number) => ({ kind: 'rest', perCell_V })

describe('states and targets', () => {
  it.each([
    ['20%', { kind: 'soc', soc: 0.2 }],
    ['1%', { kind: 'soc', soc: 0.01 }],
    ['half full', { kind: 'soc', soc: 0.5 }],
    ['3.7 volts in each cell', rest(3.7)],
    ['11.1V in total', { ...rest(3.7), pack_V: 11.1 }],
    ['full', { kind: 'named', name: 'full' }],
    ['Storage', { kind: 'named', name: 'storage' }],
    ['3.7V per cell', rest(3.7)],
    ['3,70 V/cell', rest(3.7)],
    ['11.1V', { ...rest(3.7), pack_V: 11.1 }],
    ['11.1V pack', { ...rest(3.7), pack_V: 11.1 }],
    ['4.2V pack', { ...rest(1.4), pack_V: 4.2 }],
    ['12,4 V of the pack', { ...rest(4.13333333333), pack_V: 12.4 }],
  ])('reads %j of a 3S pack', (text, value) => {
    expect(readState(text, pack(3))).toEqual({ value, assumed: [] })
    expect(readTarget(text, pack(3))).toEqual({ value, assumed: [] })
  })

  it('reads volts that can only be one cell as such, out loud', () => {
    expect(inEnglish(readState('3.7V', pack(3)))).toEqual({
      value: rest(3.7),
      assumed: ['3.7 V is read as volts per cell'],
    })
    expect(readState('3.7V', pack(1))).toEqual({ value: rest(3.7), assumed: [] })
    expect(readState('3.7V')).toEqual({ value: rest(3.7), assumed: [] })
    expect(inEnglish(readState('3.6', pack(6)))).toEqual({
      value: rest(3.6),
      assumed: ['3.6 is read as 3.6 V per cell'],
    })
  })

  it.each(['empty', 'flat', 'Empty'])('takes %j for landed, out loud', text => {
    const { value, assumed } = inEnglish(readState(text, pack(3)))
    expect(readState('landed', pack(3))).toEqual({ value: { kind: 'named', name: 'empty' }, assumed: [] })
    expect(value).toEqual({ kind: 'named', name: 'empty' })
    expect(assumed).toEqual([`${text} is read as landed: at the volts at rest where flying ends`])
  })

  it.each(['0%', '0 %', '0 percent', '0.4%', 'dead', 'dead flat', 'zero', 'nothing left', 'completely dead'])(
    'asks for volts where %j is all that is told',
    text => {
      const problem = problemOf(() => readState(text, pack(3)))
      expect(problem).toMatchObject({ token: text, what: expect.stringContaining('volts') })
      expect(problemOf(() => readState(text)).expected).toContain('volts per cell')
      expect(readState(problem.example, pack(3)).value.kind).toBe('rest')
    },
  )

  it('looks at a pack with nothing left, and lets no charge start or end there', () => {
    expect(readAnyState('0%', pack(3)).value).toEqual({ kind: 'soc', soc: 0 })
    expect(readTarget('0%', pack(3)).value).toEqual({ kind: 'soc', soc: 0 })
  })

  it.each([
    ['12.4V', '12.4V pack'],
    ['12,40 V', '12.4V pack'],
    ['11.55V pack', '11.55V pack'],
    ['3.85', '3.85V per cell'],
    ['3,7 V/cell', '3.7V per cell'],
    ['empty', 'landed'],
  ])('writes %j of a 3S pack as it was typed: %j', (typed, written) => {
    const level = readState(typed, pack(3)).value
    expect(writeLevel(level)).toBe(written)
    expect(readState(written, pack(3))).toEqual({ value: level, assumed: [] })
  })

  it('asks where volts could be a full cell or a flat pack', () => {
    const problem = problemOf(() => readState('4.2V', pack(2)))
    expect(problem.token).toBe('4.2V')
    expect(readState(problem.example, pack(2)).value).toEqual(rest(4.2))
    expect(readState('4.2V pack', pack(2)).value).toEqual({ ...rest(2.1), pack_V: 4.2 })
  })

  it('takes the end of a charge for volts of a cell where no charge of the pack could end', () => {
    expect(inEnglish(readTarget('4.2V', pack(2)))).toEqual({
      value: rest(4.2),
      assumed: ['4.2 V is read as volts per cell'],
    })
    expect(readTarget('8.2V', pack(2)).value).toEqual({ ...rest(4.1), pack_V: 8.2 })
  })

  it.each(['20', '4', '-3V', 'NaN', '1e3V', '120%', '3,700V', '99V', 'half past', '3.7V 5A', '', '5V per cell'])(
    'refuses %j',
    text => {
      expect(problemOf(() => readState(text, pack(3))).example).toBeTruthy()
    },
  )

  it('needs the pack for pack volts, and does not end a charge at empty', () => {
    expect(problemOf(() => readState('11.1V')).what).toContain('pack')
    expect(problemOf(() => readTarget('empty', pack(3))).token).toBe('empty')
  })

  it('resolves the names by the levels that hold', () => {
    const named = (name: 'full' | 'storage' | 'empty'): Level => ({ kind: 'named', name })
    expect(startOf(named('empty'), lihv, {})).toEqual(rest(lihv.restFloor_V.value))
    expect(startOf(named('full'), lihv, {})).toEqual({ kind: 'soc', soc: 1 })
    expect(startOf(named('storage'), lihv, {})).toEqual(rest(3.85))
    expect(goalOf(named('full'), lihv, {})).toEqual({ kind: 'voltage', perCell_V: 4.35 })
    expect(goalOf(named('storage'), lihv, {})).toEqual({ kind: 'voltage', perCell_V: 3.85 })
    expect(goalOf({ kind: 'rest', perCell_V: 4.1 }, lihv, {})).toEqual({ kind: 'voltage', perCell_V: 4.1 })
    expect(goalOf({ kind: 'soc', soc: 0.8 }, lihv, {})).toEqual({ kind: 'soc', soc: 0.8, cutoffPerCell_V: 4.35 })
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
