import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import * as kinds from '../../../../src/language/kinds/values.ts'
import { readChargeCurrent, readMass, writeMass } from '../../../../src/language/quantities/quantities.ts'
import { coveredTexts } from '../../../support/covered.ts'
import { inEnglish } from '../../../support/in-english.ts'

const readers = {
  current: kinds.currentKind,
  rate: kinds.rateKind,
  voltage: kinds.voltageKind,
  power: kinds.powerKind,
  energy: kinds.energyKind,
  capacity: kinds.capacityKind,
  temperature: kinds.temperatureKind,
  resistance: kinds.resistanceKind,
  length: kinds.lengthKind,
  mass: { read: (text: string) => ({ value: readMass(text), assumed: [] }), write: writeMass },
  gauge: kinds.gaugeKind,
  duration: kinds.durationKind,
  count: kinds.countKind,
} as const

describe('quantities', () => {
  it.each([
    ['current', '2a', '2A'],
    ['current', '2.2 amperes', '2.2A'],
    ['current', 'two point two amps', '2.2A'],
    ['current', 'half an amp', '0.5A'],
    ['current', 'one and a half amps', '1.5A'],
    ['current', '2 1/2', undefined],
    ['current', '２．２Ａ', '2.2A'],
    ['current', '500mA', '0.5A'],
    ['power', '70 wattts', '70W'],
    ['duration', '35 minuets', undefined],
    ['duration', '35 minuts', '35min'],
    ['power', 'three waits', undefined],
    ['current', 'charge it at 1.3', '1.3A'],
    ['current', 'twice a day', undefined],
    ['rate', '1C', '1C'],
    ['rate', 'half a C', '0.5C'],
    ['rate', '2c rate', '2C'],
    ['rate', 'C/10', 'C/10'],
    ['rate', '1/2c on a 5000', '0.5C'],
    ['rate', 'at 1/10 C', '0.1C'],
    ['rate', '4s 1500 at 10C', '10C'],
    ['rate', '50C in the sun', undefined],
    ['temperature', '50C in the sun', '50°C'],
    ['temperature', '-5°C', '-5°C'],
    ['temperature', 'minus five', '-5°C'],
    ['temperature', 'seven below freezing', '-7°C'],
    ['temperature', '3 degrees under zero', '-3°C'],
    ['temperature', 'it is – 6 outside', undefined],
    ['temperature', 'it is –6 outside', '-6°C'],
    ['temperature', 'temp=-15C', '-15°C'],
    ['temperature', 'air:-3°C', '-3°C'],
    ['temperature', 'amps @-15C', '-15°C'],
    ['temperature', '(-4°C in here)', '-4°C'],
    ['rate', 'amps @-15C', undefined],
    ['temperature', '5°-10°C', '10°C'],
    ['temperature', '28F', '28°F'],
    ['temperature', '21 degrees Celsius', '21°C'],
    ['temperature', 'the garage is 34 in there', '34°C'],
    ['temperature', 'charge at 1C', undefined],
    ['power', '80 watts', '80W'],
    ['energy', '74 watt-hours', '74Wh'],
    ['energy', '3 kWh', '3000Wh'],
    ['capacity', '1180 mah went back in', '1180mAh'],
    ['capacity', '0.3 Ah', '300mAh'],
    ['voltage', '24v', '24V'],
    ['resistance', '8mohm', '8mΩ'],
    ['resistance', '14 milliohms', '14mΩ'],
    ['resistance', 'its IR 3.4', '3.4mΩ'],
    ['length', '1.2 metres', '1.2m'],
    ['length', '40 cm', '0.4m'],
    ['mass', '45 g', '45g'],
    ['mass', '3.1 kilograms', '3100g'],
    ['gauge', 'awg16', 'AWG 16'],
    ['gauge', '16 gauge', 'AWG 16'],
    ['gauge', '2.5mm2', '2.5mm²'],
    ['gauge', '1,5 mm² cable', '1.5mm²'],
    ['duration', 'in 40 min', '40min'],
    ['temperature', 'temp is 4c', '4°C'],
    ['rate', 'charge at 4c', '4C'],
    ['current', 'charge 1.0 on 1000mah 2s', '1.0A'],
    ['duration', 'an hour and a half', '1h30min'],
    ['duration', '6:30 min', '6min30s'],
    ['duration', '1h20', '1h20min'],
    ['duration', 'half an hour', '30min'],
    ['duration', 'quarter of an hour', '15min'],
    ['duration', '2 hrs 15 min', '2h15min'],
    ['duration', 'the 6s', undefined],
    ['count', 'both', '2'],
    ['count', '6x', '6'],
    ['count', 'two 4S', '2'],
    ['count', 'a dozen packs', '12'],
    ['current', '1,200 mA', '1.2A'],
    ['count', '5S 950 x 4', '4'],
    ['count', '5S 950 mAh * 4', '4'],
    ['count', 'two single chargers', '2'],
  ] as const)('%s of %j: %s', (kind, text, expected) => {
    const found = coveredTexts(text, kind)
    if (expected === undefined) expect(found).toEqual([])
    else {
      expect(found).toContain(expected)
      expect(readers[kind].read(expected, {}).value).toBeGreaterThan(-50)
    }
  })

  it('converts Fahrenheit and cross-sections out loud, without noise', () => {
    expect(inEnglish(kinds.temperatureKind.read('28°F', {}))).toEqual({ value: -2.2, assumed: ['28°F is -2 °C'] })
    expect(inEnglish(kinds.gaugeKind.read('2.5mm²', {}))).toEqual({
      value: 14,
      assumed: ['2.5mm² is taken for AWG 14, the next thinner'],
    })
    expect(kinds.lengthKind.write(kinds.lengthKind.read('3ft', {}).value)).toBe('0.9144m')
    expect(readChargeCurrent('0.7C', 1.3)).toBe(0.91)
  })

  it.each([
    ['current', 0.01, 60],
    ['rate', 0.01, 20],
    ['voltage', 0, 100],
    ['power', 0.5, 3000],
    ['energy', 0.1, 5000],
    ['capacity', 0.02, 60],
    ['temperature', -50, 150],
    ['resistance', 0.00001, 10],
    ['length', 0.001, 100],
    ['mass', 0.0001, 50],
    ['duration', 1, 604_800],
  ] as const)('%s: reads what it wrote', (kind, min, max) => {
    const { read, write } = readers[kind]
    fc.assert(
      fc.property(fc.double({ min, max, noNaN: true }), value => {
        const steady = kind === 'duration' ? Math.round(value) : Number(value.toPrecision(9))
        if (steady < min || steady > max) return
        expect(read(write(steady), {})).toEqual({ value: steady, assumed: [] })
      }),
    )
  })

  it.each([
    ['gauge', 0, 40],
    ['count', 1, 100],
  ] as const)('%s: reads what it wrote', (kind, min, max) => {
    const { read, write } = readers[kind]
    for (let value = min; value <= max; value += 1) {
      expect(read(write(value), {})).toEqual({ value, assumed: [] })
    }
  })

  it('count no "one" that stands for what is told by its figure', () => {
    expect(coveredTexts('and one of 45W', 'count')).toEqual([])
    expect(coveredTexts('the 480 Wh one', 'count')).toEqual([])
    expect(coveredTexts('two boards', 'count')).toEqual(['2'])
  })

  it('count no packs where one is meant and other things are counted', () => {
    expect(coveredTexts('four launches on the 5S 900', 'count')).toEqual([])
    expect(coveredTexts('four flights with a 5S 900, two at once', 'count')).toContain('4')
    expect(coveredTexts('I own four, the 5S 900', 'count')).toEqual(['4'])
  })

  it('are no length of a lead where they are the size of a plug', () => {
    expect(coveredTexts('4 mm bullets on 1.5 m of wire', 'length')).toEqual(['1.5m'])
    expect(coveredTexts('1.5 mm speaker cable', 'gauge', 'length')).toEqual(['1.5mm²'])
    expect(coveredTexts('a wire 2.5mm', 'gauge', 'length')).toEqual(['2.5mm²'])
  })
})
