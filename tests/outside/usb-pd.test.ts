// USB Power Delivery: what a source of a given power offers.
// Source: USB Power Delivery Specification R3.x, power rules (table of fixed supplies by source power); IEC 62680-1-2:2022.
// The table up to 100 W is as quoted from the specification; the extended range (28, 36, 48 V at up to 5 A: 140, 180,
// 240 W) and the 5 A cable were read in it.

import { describe, expect, it } from 'vitest'
import { inputOf } from '../../src/charging/setting/input.ts'
import { noHouseLimits } from '../../src/charging/things/house-limits.ts'
import { pdOffers } from '../../src/charging/things/usb-pd.ts'

const standard: readonly (readonly [power_W: number, offers: Readonly<Record<number, number>>])[] = [
  [15, { 5: 3 }],
  [27, { 5: 3, 9: 3 }],
  [45, { 5: 3, 9: 3, 15: 3 }],
  [60, { 5: 3, 9: 3, 15: 3, 20: 3 }],
  [100, { 5: 3, 9: 3, 15: 3, 20: 5 }],
]

const extended: readonly (readonly [power_W: number, voltage_V: number])[] = [
  [140, 28],
  [180, 36],
  [240, 48],
]

describe('USB PD power rules', () => {
  it.each(standard)('a %i W source offers exactly the standard voltages and currents', (power_W, offers) => {
    const offered = Object.fromEntries(pdOffers(power_W).map(({ voltage_V, current_A }) => [voltage_V, current_A]))
    expect(offered).toEqual(offers)
  })

  it.each([
    [10, 5, 2],
    [18, 9, 2],
    [30, 15, 2],
    [65, 20, 3.25],
  ])('between the steps a %i W source gives at %i V what its power allows, %f A', (power_W, voltage_V, current_A) => {
    const highest = pdOffers(power_W).at(-1)
    expect(highest?.voltage_V).toBe(voltage_V)
    expect(highest?.current_A).toBeCloseTo(current_A, 9)
  })

  it.each(extended)('a %i W source reaches %i V at 5 A', (power_W, voltage_V) => {
    expect(pdOffers(power_W).at(-1)).toEqual({ voltage_V, current_A: 5 })
  })

  it('the offer that carries most inside the input window is the one a charger gets', () => {
    const source = { kind: 'supply', offers: pdOffers(65), usbPd_W: 65 } as const
    const offerFor = (minInput_V: number, maxInput_V: number) => {
      const charger = { currents: { kind: 'list', steps_A: [0.5, 1] }, minInput_V, maxInput_V } as const
      return inputOf({ source, charger, house: noHouseLimits }).feed?.offer
    }
    expect(offerFor(9, 20)).toEqual({ voltage_V: 20, current_A: 3.25 })
    expect(offerFor(9, 18)).toEqual({ voltage_V: 15, current_A: 3 })
    expect(offerFor(9, 12)).toEqual({ voltage_V: 9, current_A: 3 })
    expect(offerFor(10, 14)).toBeUndefined()
  })
})
