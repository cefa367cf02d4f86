// The lead-acid battery of a vehicle.
// Resting voltage against charge: Battery Council International, flooded 12 V battery at 26.7 °C.
// Fuses of 10 to 20 A: summaries of SAE J563; ISO 4165.
// Common practice, the volts read off that table: a starter battery gives a fifth of its label at most and is stopped
// at 12.3 V rested and 12.2 V loaded; a deep-cycle one gives half and is stopped at 12.2 V rested. An engine that runs
// keeps 12 to 15 V. A fuse is loaded to 80 % for long.

import { describe, expect, it } from 'vitest'
import { inputOf } from '../../src/charging/setting/input.ts'
import { settingFor } from '../../src/charging/setting/setting.ts'
import { timedCharge } from '../../src/charging/setting/timed-charge.ts'
import { drain } from '../../src/charging/simulation/drain.ts'
import type { Told } from '../../src/charging/situation/situation.ts'
import { starterStore } from '../../src/charging/things/battery-store.ts'
import { lipo } from '../../src/charging/things/chemistries.ts'
import { noHouseLimits } from '../../src/charging/things/house-limits.ts'
import { leadAcidLimits } from '../../src/charging/things/lead-acid.ts'
import type { VehicleOutlet } from '../../src/charging/things/source.ts'
import { judged, permitFor, refusedBy } from '../support/judged.ts'

const rest: readonly (readonly [rest_V: number, percent: number])[] = [
  [12.65, 100],
  [12.45, 75],
  [12.24, 50],
  [12.06, 25],
  [11.89, 0],
]
const off: VehicleOutlet = { kind: 'vehicle outlet', fuse_A: 10, engine: 'off' }
const running: VehicleOutlet = { ...off, engine: 'running' }
const pack = { chemistry: lipo, series: 4, parallel: 1, capacity_Ah: 1.5 }
const from = (source: VehicleOutlet): Told => ({ act: 'charge', pack, source })
const input = (source: VehicleOutlet) => inputOf({ source, house: noHouseLimits })

describe('a starter battery', () => {
  it.each(rest)('that rests at %f V is charged to %i %%', (rest_V, percent) => {
    const store = starterStore({ ...off, rest_V })
    expect(store.soc * 100).toBeCloseTo(percent, 6)
    expect(store.rest_V(percent / 100)).toBeCloseTo(rest_V, 9)
  })

  it('is stopped at 12.3 V at rest, above half charge, and at 12.2 V loaded', () => {
    expect(leadAcidLimits.starter).toMatchObject({
      share: { value: 0.2 },
      restFloor_V: { value: 12.3 },
      loadFloor_V: { value: 12.2 },
    })
    expect(starterStore({ ...off, rest_V: 12.3 }).soc).toBeGreaterThan(0.5)
    expect(starterStore(off)).toMatchObject({ restFloor_V: 12.3, loadFloor_V: 12.2 })
    const two = starterStore({ ...off, nominal_V: 24 })
    expect([two.restFloor_V, two.loadFloor_V]).toEqual([24.6, 24.4])
    expect(refusedBy(from({ ...off, rest_V: 12.3 }))).toContain('sourceAtFloor')
    expect(refusedBy(from({ ...off, rest_V: 12.32 }))).not.toContain('sourceAtFloor')
  })

  it('gives a fifth of its label at most, however full it is', () => {
    const store = starterStore({ ...off, rest_V: 12.65, capacity_Ah: 60 })
    const { soc, completed } = drain(store, store.soc, [{ power_W: 20, duration_s: 36 * 3600 }])
    expect(completed).toBe(false)
    expect((1 - soc) * 60).toBeLessThanOrEqual(12 + 1e-9)
    expect((1 - soc) * 60).toBeGreaterThan(11.5)
  })

  it('keeps 12.2 V at its poles under load', () => {
    const store = starterStore({ ...off, rest_V: 12.5 })
    const { lowest_V } = drain(store, store.soc, [{ power_W: 300, duration_s: 36 * 3600 }])
    expect(lowest_V).toBeGreaterThanOrEqual(12.2)
    const tired = from({ ...off, rest_V: 12.31, fuse_A: 60 })
    const { feed } = settingFor(permitFor(tired))
    expect(12.31 - (feed?.current_A ?? 0) * 0.01).toBeGreaterThanOrEqual(12.2 - 1e-9)
  })

  it('that nobody measured is never a plain go', () => {
    const { verdict, found } = judged(from(off))
    expect(verdict).toBe('go with care')
    expect(found.map(({ key }) => key)).toContain('starterUnmeasured')
    expect(judged(from({ ...off, rest_V: 12.6 })).found.map(({ key }) => key)).not.toContain('starterUnmeasured')
  })

  it('behind a 10 A fuse gives 8 A', () => {
    expect(input(off).feed).toMatchObject({ current_A: 8, highest_V: 12.45 })
  })
})

describe('a deep-cycle battery', () => {
  const leisure: VehicleOutlet = { ...off, battery: 'deep-cycle', capacity_Ah: 100 }

  it('is stopped at 12.2 V at rest', () => {
    expect(leadAcidLimits['deep-cycle']).toMatchObject({ share: { value: 0.5 }, restFloor_V: { value: 12.2 } })
    expect(starterStore({ ...leisure, rest_V: 12.4 }).restFloor_V).toBeCloseTo(12.2, 9)
    expect(refusedBy(from({ ...leisure, rest_V: 12.2 }))).toContain('sourceAtFloor')
    expect(refusedBy(from({ ...leisure, rest_V: 12.25 }))).toEqual([])
  })

  it('gives half of its label at most', () => {
    const store = starterStore({ ...leisure, rest_V: 12.65 })
    const { soc } = drain(store, store.soc, [{ power_W: 20, duration_s: 100 * 3600 }])
    expect(soc).toBeGreaterThanOrEqual(0.5 - 1e-9)
    expect(soc).toBeLessThan(0.51)
  })
})

describe('an engine that runs', () => {
  it('keeps 12 to 15 V: behind a 10 A fuse 96 W for sure', () => {
    expect(input(running).feed).toEqual({ lowest_V: 12, highest_V: 15, current_A: 8, power_W: 96 })
  })

  it.each([
    [11, 14],
    [12.5, 30],
  ])('does not suit a charger for %f to %f V', (minInput_V, maxInput_V) => {
    const charger = { currents: { kind: 'list', steps_A: [1] }, minInput_V, maxInput_V } as const
    expect(refusedBy({ ...from(running), charger })).toContain('inputOutside')
  })
})

describe('a battery that rests at 9 V', () => {
  const dead = from({ ...off, rest_V: 9 })

  it('feeds no charger that wants 12.24 V', () => {
    const charger = { currents: { kind: 'list', steps_A: [1] }, minInput_V: 12.24, maxInput_V: 30 } as const
    expect(refusedBy({ ...dead, charger })).toContain('inputOutside')
  })

  it('feeds no other one either', () => {
    expect(refusedBy(dead)).toContain('sourceAtFloor')
  })
})

it('a charge that would take more than the fifth is not carried', () => {
  const large = { ...pack, series: 6, capacity_Ah: 10 }
  expect(timedCharge(permitFor({ ...from(off), pack: large })).carried).toBe(0)
})
