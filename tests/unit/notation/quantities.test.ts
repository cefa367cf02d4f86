import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { DimensionName } from '../../../src/language/quantities/dimensions.ts'
import { dimensions } from '../../../src/language/quantities/dimensions.ts'
import { readDuration, writeDuration } from '../../../src/language/quantities/duration.ts'
import * as quantities from '../../../src/language/quantities/quantities.ts'
import { readQuantity, writeQuantity } from '../../../src/language/quantities/quantity.ts'
import { cases } from '../../support/cases.ts'
import { problemOf } from './problem-of.ts'

const {
  readCapacity,
  readChargeCurrent,
  readCount,
  readCurrent,
  readGauge,
  readLength,
  readMass,
  readPercent,
  readPower,
  readRate,
  readResistance,
  readTemperature,
  readVoltage,
} = quantities

describe('quantities', () => {
  it.each([
    ['2A', 2],
    ['0,5 A', 0.5],
    ['.5A', 0.5],
    ['500mA', 0.5],
    ['2 amps', 2],
    ['+1 A', 1],
    ['2\u00a0A', 2],
    ['2\u2009A', 2],
    ['２Ａ', 2],
    ['2\u200bA', 2],
    ['two amps', 2],
    ['half an amp', 0.5],
    ['fifteen hundred milliamps', 1.5],
  ])('reads the current %j', (text, current_A) => {
    expect(readCurrent(text)).toBe(current_A)
  })

  it.each([
    ['6mΩ', 0.006],
    ['6 m\u2126', 0.006],
    ['6 mohm', 0.006],
    ['0.006ohm', 0.006],
    ['6000 µΩ', 0.006],
    ['6000 \u03bcΩ', 0.006],
    ['6 milliohms', 0.006],
  ])('reads the resistance %j', (text, resistance_ohm) => {
    expect(readResistance(text)).toBe(resistance_ohm)
  })

  it.each(['6MΩ', '6 Mohm'])('does not take the million ohms of %j for thousandths', text => {
    expect(problemOf(() => readResistance(text)).token).toBe(text)
  })

  it('reads the other dimensions, in the unit of their name', () => {
    expect(readVoltage('3,85V')).toBe(3.85)
    expect(readVoltage('3850 mV')).toBe(3.85)
    expect(readCapacity('720mAh')).toBe(0.72)
    expect(readCapacity('0.72 Ah')).toBe(0.72)
    expect(readCapacity('720 milliampere-hours')).toBe(0.72)
    expect(readCapacity('720.125mAh')).toBe(0.720125)
    expect(readPower('0.065kW')).toBe(65)
    expect(readPercent('20%')).toBe(0.2)
    expect(readPercent('20 percent')).toBe(0.2)
    expect(readRate('2C')).toBe(2)
    expect(readRate('C/10')).toBe(0.1)
    expect(readTemperature('-10 °C')).toBe(-10)
    expect(readTemperature('\u221210 ℃')).toBe(-10)
    expect(readTemperature('20 deg C')).toBe(20)
    expect(readTemperature('-4 degrees')).toBe(-4)
    expect(readTemperature('-4F')).toBe(-20)
    expect(readTemperature('68F')).toBe(20)
    expect(readTemperature('32 °F')).toBe(0)
    expect(readGauge('AWG 18')).toBe(18)
    expect(readGauge('18awg')).toBe(18)
  })

  // International yard and pound agreement of 1959: a yard is 0.9144 m and a pound 0.45359237 kg, both exactly.
  it('reads inches, feet, ounces and pounds as the agreement of 1959 defines them', () => {
    expect(readLength('36in')).toBeCloseTo(0.9144, 12)
    expect(readLength('3 ft')).toBeCloseTo(0.9144, 12)
    expect(readLength('30cm')).toBe(0.3)
    expect(readMass('16oz')).toBeCloseTo(0.45359237, 12)
    expect(readMass('1 lb')).toBe(0.45359237)
    expect(readMass('68g')).toBe(0.068)
  })

  it.each([
    ['6', 6],
    ['6x', 6],
    ['x6', 6],
    ['6 packs', 6],
    ['six', 6],
  ])('reads the count %j', (text, count) => {
    expect(readCount(text)).toBe(count)
  })

  it.each(['0', '1.5', '-3', '101', 'some', 'NaN', '1e3', ''])('refuses the count %j', text => {
    expect(problemOf(() => readCount(text)).expected).toContain('from 1 to 100')
  })

  it.each([
    '-5A',
    '0A',
    '501A',
    '0.001A',
    '1e308',
    '1e308A',
    'NaN',
    'NaN A',
    'Infinity',
    '-∞',
    '0x10A',
    '1,234',
    '1,234A',
    '1,234,567A',
    '1.2.3A',
    '2',
    '2V',
    '2Ah',
    '2 A 3',
    'A',
    '٣A',
    '２²A',
  ])('refuses the current %j and says the range that would do', text => {
    const { token, expected, example } = problemOf(() => readCurrent(text))
    expect(token).toBeTruthy()
    expect(expected).toContain('a current from 0.01 to 500 A')
    expect(readCurrent(example)).toBeGreaterThan(0)
  })

  it('has nothing to quote where there is nothing', () => {
    expect(problemOf(() => readCurrent(' '))).toEqual({
      what: 'There is nothing to read.',
      expected: 'a current from 0.01 to 500 A',
      example: '1.5A',
    })
  })

  it('takes a comma before three digits for decimals only behind a zero', () => {
    expect(readVoltage('0,720V')).toBe(0.72)
    expect(problemOf(() => readVoltage('3,850V')).what).toContain('thousands')
    expect(readVoltage('3.850V')).toBe(3.85)
  })

  it('reads a current as a multiple of a known capacity', () => {
    expect(readChargeCurrent('1C', 0.72)).toBe(0.72)
    expect(readChargeCurrent('0,5 C', 0.72)).toBe(0.36)
    expect(readChargeCurrent('C/2', 0.72)).toBe(0.36)
    expect(readChargeCurrent('1A', 0.72)).toBe(1)
    expect(problemOf(() => readChargeCurrent('1C')).token).toBe('1C')
    expect(problemOf(() => readChargeCurrent('20C', 60)).token).toBe('20C')
  })

  it.each(Object.keys(dimensions) as DimensionName[])('writes %s so that it reads the same', dimension => {
    const { min, max, example } = dimensions[dimension]
    expect(readQuantity(example, dimension)).toBeGreaterThan(0)
    fc.assert(
      fc.property(fc.double({ min, max, noNaN: true }), value => {
        expect(readQuantity(writeQuantity(value, dimension), dimension)).toBe(value === 0 ? 0 : value)
      }),
      cases(2000),
    )
  })
})

describe('durations', () => {
  it.each([
    ['1h20', 4800],
    ['1h20m', 4800],
    ['1 h 20 min', 4800],
    ['1 hour 20 minutes', 4800],
    ['45 min', 2700],
    ['90s', 90],
    ['1.5h', 5400],
    ['1,5 h', 5400],
  ])('reads %j', (text, duration_s) => {
    expect(readDuration(text)).toBe(duration_s)
  })

  it.each(['1:20', '20', '1h90', '0s', '8785h', '-5 min', 'soon', '', 'h', '1e3s', '20 1h'])('refuses %j', text => {
    expect(problemOf(() => readDuration(text)).expected).toContain('from 1 s to 366 days')
  })

  it('says why 1:20 is not read', () => {
    expect(problemOf(() => readDuration('1:20')).what).toContain('colon')
  })

  it('writes what it reads', () => {
    const some = fc.oneof(fc.integer({ min: 1, max: 604800 }), fc.double({ min: 1, max: 604800, noNaN: true }))
    fc.assert(
      fc.property(some, duration_s => {
        expect(readDuration(writeDuration(duration_s))).toBe(duration_s)
      }),
    )
  })
})
