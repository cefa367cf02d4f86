import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readCharger, writeCharger } from '../../../../src/language/things/charger.ts'
import { readSource, writeSource } from '../../../../src/language/things/source.ts'
import { someCharger, someSource } from '../../../support/arbitraries.ts'
import { cases } from '../../../support/cases.ts'
import { covered, coveredTexts } from '../../../support/covered.ts'
import { problemOf } from '../../notation/problem-of.ts'

describe('chargers', () => {
  it.each([
    ['1/2/3/5A steps', '1/2/3/5A'],
    ['a charger with 0.5, 1, 2 and 4 A', '0.5/1/2/4A'],
    ['charger does 0.1 to 10 A, 200 W', '0.1-10A 200W'],
    ['50W charger', '50W charger'],
    ['a charger of 100 W', '100W charger'],
    ['my charger goes to 6 A', '0.1-6A'],
    ['charger 10A 250W', '0.1-10A 250W'],
    ['charger is 5 A / 50 W', '0.1-5A 50W'],
    ['my charger takes 11 to 18 V', '11-18V charger'],
    ['charger input 9-20 V, supply 24V 5A', '9-20V charger'],
    ['0.1-5A by 0.05 80W 1-4S', '0.1-5A by 0.05 80W 1-4S'],
  ])('of %j', (text, expected) => {
    expect(coveredTexts(text, 'charger')).toContain(expected)
    const charger = readCharger(expected).value
    expect(readCharger(writeCharger(charger))).toEqual({ value: charger, assumed: [] })
  })

  it.each(['the charger is hot', 'charger at 2A', 'is 1.3 or 2.6A better', 'charge at 3A', 'two amps, my charger'])(
    'none in %j',
    text => {
      expect(covered(text, 'charger')).toEqual([])
    },
  )

  it('read as they were written', () => {
    fc.assert(
      fc.property(someCharger, charger => {
        const { value } = readCharger(writeCharger(charger))
        expect(readCharger(writeCharger(value))).toEqual({ value, assumed: [] })
      }),
      cases(300),
    )
  })
})

describe('sources', () => {
  it.each([
    ['12v 60ah car battery at 12.5', 'car battery rest 12.5V 60Ah'],
    ['60 Ah starter battery, engine off', 'car battery engine off 60Ah'],
    ['65 Ah starter battery without the motor on', 'car battery engine off 65Ah'],
    ['no engine running, 65 Ah car battery', 'car battery engine off 65Ah'],
    ["car battery 65 Ah and the motor isn't running", 'car battery engine off 65Ah'],
    ['car battery 65 Ah with ignition on', 'car battery engine running 65Ah'],
    ["65 Ah car battery when the engine doesn't run", 'car battery engine off 65Ah'],
    ['pb battery 12 V 15 Ah', 'lead battery 15Ah'],
    ['a field box with an 8 Ah 12 V gel battery', 'lead battery 8Ah'],
    ['100ah leisure battery', 'leisure battery 100Ah'],
    ['car engine off', 'car engine off'],
    ['cig lighter 10A', 'car 10A'],
    ['65w usb-c', 'PD 65W'],
    ['pd 100', 'PD 100W'],
    ['laptop brick 20v 3.25a', '20V 3.25A'],
    ['usb brick 5V 3A, 9V 2A', 'USB 5V 3A, 9V 2A'],
    ['a mains adapter of 12V 5A', '12V 5A'],
    ['wall socket 12V 2A', '12V 2A'],
    ['power bank 20000mah 74wh', 'power bank 74Wh'],
    ['a power bank, 12000 mAh at 5V, 20V 3A', 'power bank 12000mAh at 5V 20V 3A'],
    ['power bank 12000mAh (5V 3A) PD 65W', 'power bank 12000mAh at 5V PD 65W'],
    ['powerbank 20000', 'power bank 20000mAh'],
    ['usb socket 5V 2A', 'USB 5V 2A'],
    ['bench supply 13.8V 30A', '13.8V 30A'],
    ['24 V and 15 A', '24V 15A'],
    ['charge my 3s 2200 from my 4s 5000 li-ion', '4S 5000mAh Li-ion'],
    ['off a 4s 5000 li-ion', '4S 5000mAh Li-ion'],
    ['using the 6s 10000 lipo', '6S 10000mAh LiPo'],
    ['100ah lifepo 12v', '4S 100000mAh LiFe'],
    ['my LiFePO4 box 12.8 V 30 Ah', '4S 30000mAh LiFe'],
    ['a LiFePO4 box on the hand cart, 12.8 V 20 Ah', '4S 20000mAh LiFe'],
    ['the outlet is 24 V DC behind a 10 A fuse', '24V 10A'],
    ['a solarpanel of 60W', 'solar panel 60W'],
    ['the van batt 12.6', 'car battery rest 12.6V'],
    ['a lifepo4 battery of 12.8V, 20Ah', '4S 20000mAh LiFe'],
    ['20 Ah LiFePO4 leisure battery', '4S 20000mAh LiFe'],
    ['the LiFe at 6.6 V and the car battery of 60 Ah', 'car battery 60Ah'],
    ['generator 1000w', 'generator 1000W'],
    ['a camp hookup of 230 V 10 A', 'generator 2300W'],
    ['110V 15A outlet', 'generator 1650W'],
    ['a solar panel of 20W', 'solar panel 20W'],
    ['the 430Wh power station', 'power station 430Wh'],
    ['12v 18ah gate battery', 'lead battery 18Ah'],
    ['an agm of 80 ah in the van', 'car battery 80Ah'],
    ['14.4V 3Ah drill battery', '4S 3000mAh Li-ion'],
    ['a 40v 2.5ah mower battery', '10S 2500mAh Li-ion'],
    ['16000 power bank', 'power bank 16000mAh'],
    ['cigarette socket fused at 7.5 amps', 'car 7.5A'],
    ['18W phone adapter', 'PD 18W'],
    ['a supply of 350 watt', 'supply 350W'],
    ['28 volt supply 6 amper', '28V 6A'],
  ])('of %j', (text, expected) => {
    expect(coveredTexts(text, 'source')).toContain(expected)
    const source = readSource(expected).value
    expect(readSource(writeSource(source))).toEqual({ value: source, assumed: [] })
  })

  it.each([
    ['12v supply', '12V', 'current or power'],
    ['the power bank', 'power bank', 'watt-hours'],
  ])('of %j, of which the reader says what it lacks', (text, expected, lack) => {
    expect(coveredTexts(text, 'source')).toContain(expected)
    expect(problemOf(() => readSource(expected)).what).toContain(lack)
  })

  it.each([
    'from 22.3 volts to 25.2 volts',
    '22.3v at 10a',
    'the balance lead is torn',
    'a 12V 40W soldering iron',
    'from 3s',
    'my aku 3S 2200',
    '3S 1000 @ 11.85V, 0.8A',
    'at 1.5A, when do I plug it in',
    'the car is nice',
    'at 2A from 3.7V',
  ])('none in %j', text => {
    expect(covered(text, 'source')).toEqual([])
  })

  it('read as they were written', () => {
    fc.assert(
      fc.property(someSource, source => {
        expect(readSource(writeSource(source))).toEqual({ value: source, assumed: [] })
      }),
      cases(300),
    )
  })
})
