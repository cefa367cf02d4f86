// The starter battery of a vehicle.
// Resting voltage against charge: Battery Council International, flooded 12 V battery at 26.7 °C.
// Engine running 13.5 to 15 V, fuses of 10 to 20 A: summaries of SAE J563; ISO 4165.
// Fuse loaded to 80 % for long, half charge kept for starting: common practice.

import { describe, expect, it } from 'vitest'
import { feedOf } from '../../src/charging/setting/old-feed.ts'
import { starterStore } from '../../src/charging/things/battery-store.ts'
import { starterFloor_V } from '../../src/charging/things/lead-acid.ts'

const rest: readonly (readonly [rest_V: number, percent: number])[] = [
  [12.65, 100],
  [12.45, 75],
  [12.24, 50],
  [12.06, 25],
  [11.89, 0],
]
const outlet = { kind: 'vehicle outlet', fuse_A: 10 } as const

describe('a starter battery', () => {
  it.each(rest)('that rests at %f V is charged to %i %%', (rest_V, percent) => {
    const store = starterStore({ ...outlet, engine: 'off', rest_V })
    expect(store.soc * 100).toBeCloseTo(percent, 6)
    expect(store.rest_V(percent / 100)).toBeCloseTo(rest_V, 9)
  })

  it('is not drained below half charge', () => {
    expect(starterStore({ ...outlet, engine: 'off', rest_V: starterFloor_V.value }).soc).toBeCloseTo(0.5, 9)
    expect(feedOf({ source: { ...outlet, engine: 'off', rest_V: 12.24 } })).toMatchObject({
      refusal: { kind: 'source at its floor' },
    })
  })

  it('behind a 10 A fuse gives 8 A; with the engine running at 13.5 to 15 V', () => {
    expect(feedOf({ source: { ...outlet, engine: 'running' } })).toEqual({
      lowest_V: 13.5,
      highest_V: 15,
      current_A: 8,
      power_W: 108,
    })
  })

  it('with the engine running does not suit a charger for at most 14 V', () => {
    const charger = { currents: { kind: 'list', steps_A: [1] }, minInput_V: 11, maxInput_V: 14 } as const
    expect(feedOf({ source: { ...outlet, engine: 'running' }, charger })).toMatchObject({
      refusal: { kind: 'input window' },
    })
  })
})
