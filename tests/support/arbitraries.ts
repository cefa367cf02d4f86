// Random packs, chargers, sources and rules, over the whole range that the notation reads.

import fc from 'fast-check'
import type { Charger, CurrentSteps } from '../../src/charging/things/charger.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Source } from '../../src/charging/things/source.ts'
import { pdOffers } from '../../src/charging/things/usb-pd.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** An object in which each optional key may be missing, as exact optional types want it. */
const sometimes = <T extends object>(model: { [K in keyof T]: fc.Arbitrary<T[K]> }) =>
  fc.record(model, { requiredKeys: [] }) as fc.Arbitrary<Partial<T>>

export const someChemistry = fc.constantFrom(...chemistries)

export const somePack: fc.Arbitrary<Pack> = fc
  .tuple(
    fc.record({
      chemistry: someChemistry,
      series: fc.integer({ min: 1, max: 14 }),
      parallel: fc.integer({ min: 1, max: 8 }),
      // As often a small pack as a large one.
      capacity_Ah: between(Math.log(0.02), Math.log(60)).map(Math.exp),
    }),
    sometimes({
      labelRate_C: between(0.1, 20),
      dischargeRate_C: between(1, 200),
      cellResistance_ohm: between(0.0005, 0.2),
    }),
  )
  .map(([pack, label]) => ({ ...pack, ...label }))

const steps: fc.Arbitrary<CurrentSteps> = fc.oneof(
  fc
    .uniqueArray(between(0.05, 20), { minLength: 1, maxLength: 6 })
    .map(steps_A => ({ kind: 'list' as const, steps_A: steps_A.sort((a, b) => a - b) })),
  fc
    .record({
      from_A: fc.constantFrom(0.01, 0.05, 0.1, 0.5),
      to_A: fc.constantFrom(1, 3, 10, 20),
      increment_A: fc.constantFrom(0.01, 0.05, 0.1, 0.5),
    })
    .map(range => ({ kind: 'range' as const, ...range })),
)

export const someCharger: fc.Arbitrary<Charger> = fc
  .tuple(
    fc.record({ currents: steps }),
    sometimes({
      power_W: between(5, 1000),
      minSeries: fc.integer({ min: 1, max: 3 }),
      maxSeries: fc.integer({ min: 3, max: 14 }),
      minInput_V: between(4, 12),
      maxInput_V: between(12, 60),
      efficiency: between(0.5, 1),
      needsBalanceLead: fc.boolean(),
      cutoffs_V: fc.uniqueArray(fc.constantFrom(3.6, 3.85, 4.1, 4.2, 4.35), { minLength: 1 }),
    }),
  )
  .map(([charger, rest]) => ({ ...charger, ...rest }))

const someSupply: fc.Arbitrary<Source> = fc.oneof(
  fc
    .record({ voltage_V: between(4, 48), current_A: between(0.3, 20) })
    .map(offer => ({ kind: 'supply' as const, offers: [offer] })),
  between(7, 240).map(usbPd_W => ({ kind: 'supply' as const, offers: pdOffers(usbPd_W), usbPd_W })),
)

export const someVehicle: fc.Arbitrary<Source> = fc
  .tuple(
    fc.record({ fuse_A: between(5, 30), engine: fc.constantFrom('running', 'off') }),
    sometimes({
      rest_V: between(11.5, 13),
      capacity_Ah: between(20, 100),
      battery: fc.constant('deep-cycle' as const),
    }),
  )
  .map(([outlet, battery]) => ({ kind: 'vehicle outlet' as const, ...outlet, ...battery }))

export const somePowerBank: fc.Arbitrary<Source> = fc
  .tuple(between(10, 300), fc.option(between(15, 140), { nil: undefined }))
  .map(([label_Wh, usbPd_W]) => ({
    kind: 'power bank' as const,
    label_Wh,
    ...(usbPd_W !== undefined && { usbPd_W, offers: pdOffers(usbPd_W) }),
  }))

export const someBattery: fc.Arbitrary<Source> = somePack.map(pack => ({ kind: 'battery' as const, pack }))

export const someWatts: fc.Arbitrary<Source> = fc.record({
  kind: fc.constant('watts' as const),
  of: fc.constantFrom('supply' as const, 'mains' as const, 'panel' as const),
  power_W: fc.integer({ min: 1, max: 10_000 }),
})

export const someSource = fc.oneof(someSupply, someVehicle, somePowerBank, someBattery, someWatts)

const perChemistry = (value: fc.Arbitrary<number>) =>
  sometimes({ LiPo: value, LiHV: value, 'Li-ion': value, LiFe: value })

export const someHouse: fc.Arbitrary<HouseLimits> = sometimes({
  maxRate_C: perChemistry(between(0.1, 5)),
  sourceFloorPerCell_V: perChemistry(between(2.5, 3.6)),
  gentleLiIon: fc.boolean(),
})

/** What a pilot may measure or forget to: mostly within reason, some far out. */
export const someTemperature_C = fc.oneof(between(0, 45), between(-50, 150))
export const someRest_V = fc.oneof(between(3, 4.2), between(0, 5))
