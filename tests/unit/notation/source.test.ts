import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { liIon } from '../../../src/charging/things/chemistries.ts'
import { pdOffers } from '../../../src/charging/things/usb-pd.ts'
import { readSource, writeSource } from '../../../src/language/things/source.ts'
import { someSource } from '../../support/arbitraries.ts'
import { cases } from '../../support/cases.ts'
import { inEnglish } from '../../support/in-english.ts'
import { problemOf } from './problem-of.ts'

const supply = (...offers: [number, number][]) => ({
  kind: 'supply',
  offers: offers.map(([voltage_V, current_A]) => ({ voltage_V, current_A })),
})

describe('sources', () => {
  it.each(['PD 65W', 'pd 65 w', '65W PD', 'USB-C PD 65W', 'usb power delivery 65W', 'PD 65W supply'])(
    'reads %j',
    text => {
      expect(readSource(text)).toEqual({ value: { kind: 'supply', offers: pdOffers(65), usbPd_W: 65 }, assumed: [] })
    },
  )

  it.each([
    ['20V 5A', supply([20, 5])],
    ['5A 20V', supply([20, 5])],
    ['20V/5A', supply([20, 5])],
    ['20V @ 5A', supply([20, 5])],
    ['12V 120W', supply([12, 10])],
    ['USB 5V 2A', supply([5, 2])],
    ['9V 2A, 5V 3A', supply([5, 3], [9, 2])],
    ['bench supply 13.8V 20A', supply([13.8, 20])],
    ['car 10A engine running', { kind: 'vehicle outlet', fuse_A: 10, engine: 'running' }],
    [
      'car 10A engine off 12.4V 60Ah',
      { kind: 'vehicle outlet', fuse_A: 10, engine: 'off', rest_V: 12.4, capacity_Ah: 60 },
    ],
    [
      'car 20A engine off deep-cycle 12.6V 100Ah',
      { kind: 'vehicle outlet', fuse_A: 20, engine: 'off', battery: 'deep-cycle', rest_V: 12.6, capacity_Ah: 100 },
    ],
    [
      'leisure battery 20A engine off 12.6V',
      { kind: 'vehicle outlet', fuse_A: 20, engine: 'off', battery: 'deep-cycle', rest_V: 12.6 },
    ],
    ['power bank 74Wh', { kind: 'power bank', label_Wh: 74 }],
    ['power bank 74Wh PD 45W', { kind: 'power bank', label_Wh: 74, usbPd_W: 45, offers: pdOffers(45) }],
    ['power bank 74Wh at 5V', { kind: 'power bank', label_Wh: 74 }],
    ['power bank 74Wh at 5V 2A', { kind: 'power bank', label_Wh: 74, offers: [{ voltage_V: 5, current_A: 2 }] }],
    ['74Wh power bank 5V 3A', { kind: 'power bank', label_Wh: 74, offers: [{ voltage_V: 5, current_A: 3 }] }],
    ['generator 1000W', { kind: 'watts', of: 'mains', power_W: 1000 }],
    ['mains socket 2kW', { kind: 'watts', of: 'mains', power_W: 2000 }],
    ['solar panel 100W', { kind: 'watts', of: 'panel', power_W: 100 }],
    ['60W supply', { kind: 'watts', of: 'supply', power_W: 60 }],
    ['mains adapter 12V 5A', supply([12, 5])],
    ['wall outlet 12V 5A', supply([12, 5])],
    ['12 V supply, 60 W', supply([12, 5])],
    ['twelve volt ten amp bench supply', supply([12, 10])],
    ['cig lighter 10A engine off', { kind: 'vehicle outlet', fuse_A: 10, engine: 'off' }],
    ['petrol generator 1kW', { kind: 'watts', of: 'mains', power_W: 1000 }],
    ['4S 5000mAh Li-ion', { kind: 'battery', pack: { chemistry: liIon, series: 4, parallel: 1, capacity_Ah: 5 } }],
  ])('reads %j and assumes nothing', (text, value) => {
    expect(readSource(text)).toEqual({ value, assumed: [] })
  })

  it.each([
    ['car 10A', { kind: 'vehicle outlet', fuse_A: 10, engine: 'off' }, ['engine']],
    ['car 12V 10A', { kind: 'vehicle outlet', fuse_A: 10, engine: 'off' }, ['engine', 'nominal']],
    [
      '60Ah car battery at 12.5V',
      { kind: 'vehicle outlet', fuse_A: 10, engine: 'off', rest_V: 12.5, capacity_Ah: 60 },
      ['10 A', 'engine'],
    ],
    [
      '12V 60Ah car battery at 12,5',
      { kind: 'vehicle outlet', fuse_A: 10, engine: 'off', rest_V: 12.5, capacity_Ah: 60 },
      ['10 A', 'engine', 'nominal'],
    ],
    [
      'leisure battery 100 A·h',
      { kind: 'vehicle outlet', fuse_A: 30, engine: 'off', battery: 'deep-cycle', capacity_Ah: 100 },
      ['30 A'],
    ],
    [
      'lead battery 9Ah',
      { kind: 'vehicle outlet', fuse_A: 30, engine: 'off', battery: 'deep-cycle', capacity_Ah: 9 },
      ['30 A', 'start no engine'],
    ],
    ['car battery', { kind: 'vehicle outlet', fuse_A: 10, engine: 'off' }, ['10 A', 'engine']],
    [
      'power station 500Wh',
      { kind: 'power bank', label_Wh: 500, offers: [{ voltage_V: 12, current_A: 10 }] },
      ["power station's car socket is taken, 12 V and 10 A"],
    ],
    ['car', { kind: 'vehicle outlet', fuse_A: 10, engine: 'off' }, ['10 A', 'engine']],
    ['power bank PD 45W', { kind: 'supply', offers: pdOffers(45), usbPd_W: 45 }, ['watt-hours were not told']],
    ['engine running', { kind: 'vehicle outlet', fuse_A: 10, engine: 'running' }, ['10 A']],
    ['car engine running', { kind: 'vehicle outlet', fuse_A: 10, engine: 'running' }, ['10 A']],
    ['power bank 20000mAh', { kind: 'power bank', label_Wh: 74 }, ['3.7 V']],
    // 12 Ah × 5 V = 60 Wh leave it, 85 % of what is inside; at 20 V a twentieth less.
    ['power bank 12000mAh at 5V', { kind: 'power bank', label_Wh: 70.59 }, ['told at 5 V']],
    [
      'power bank 12Ah at 5V 20V 3A',
      { kind: 'power bank', label_Wh: 67.06, offers: [{ voltage_V: 20, current_A: 3 }] },
      ['67.1 Wh'],
    ],
    [
      'power bank 12Ah at 5V PD 45W',
      { kind: 'power bank', label_Wh: 67.06, usbPd_W: 45, offers: pdOffers(45) },
      ['told at 5 V'],
    ],
    ['power bank 20000', { kind: 'power bank', label_Wh: 74 }, ['20000 is read as mAh', '3.7 V']],
    ['power bank 74Wh 20000mAh', { kind: 'power bank', label_Wh: 74 }, ['not used']],
    ['usb 2A', supply([5, 2]), ['5 V']],
    ['usb-c 65W', { kind: 'supply', offers: pdOffers(65), usbPd_W: 65 }, ['Power Delivery']],
    [
      '4S 5000 Li-ion',
      { kind: 'battery', pack: { chemistry: liIon, series: 4, parallel: 1, capacity_Ah: 5 } },
      ['mAh'],
    ],
  ])('reads %j and says what it assumes', (text, value, said) => {
    const read = inEnglish(readSource(text))
    expect(read.value).toEqual(value)
    expect(read.assumed).toEqual(said.map(word => expect.stringContaining(word)))
  })

  it.each([
    ['', undefined],
    ['12V', '12V'],
    ['65W', '65W'],
    ['car 10A 3V', '3V'],
    ['power bank', 'power bank'],
    ['PD', 'PD'],
    ['PD 900W', '900W'],
    ['usb', 'usb'],
    ['100V 5A', '100V 5A'],
    ['12V 3000W', '12V 3000W'],
    ['12V -5A', '-5A'],
    ['74Wh', '74Wh'],
    ['fish', 'fish'],
    ['4S Li-ion', '4S Li-ion'],
    ['20V 5A PD 65W', '20V 5A PD 65W'],
    ['PD 65W 5A', 'PD 65W 5A'],
    ['PD 65W 20V', 'PD 65W 20V'],
    ['USB 10W', 'USB 10W'],
    ['power bank 74Wh 45W', 'power bank 74Wh 45W'],
    ['power bank 74Wh engine off', 'power bank 74Wh engine off'],
    ['car 10A 120W', 'car 10A 120W'],
    ['car 12V 10A 15A', '15A'],
    ['bench', 'bench'],
    ['drill battery 4Ah', 'drill battery 4Ah'],
    ['engine off PD 65W', 'engine off PD 65W'],
    ['20V 5A rest 12V', '20V 5A rest 12V'],
    ['24V 20V 5A', '24V 20V 5A'],
    ['leisure battery 1,234A', '1,234'],
    ['wall socket 100V 5A', '100V 5A'],
    ['generator', 'generator'],
    ['solar panel', 'solar panel'],
    ['inverter 12V 300W', 'inverter 12V 300W'],
    ['generator 20kW', '20kW'],
  ])('refuses %j', (text, token) => {
    const problem = problemOf(() => readSource(text))
    expect(problem.token).toBe(token)
    expect(problem.expected).toBeTruthy()
  })

  it('writes a source so that it reads the same', () => {
    fc.assert(
      fc.property(someSource, source => {
        expect(readSource(writeSource(source))).toEqual({ value: source, assumed: [] })
      }),
      cases(2000),
    )
  })
})
