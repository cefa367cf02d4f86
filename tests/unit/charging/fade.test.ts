// When a pack will hold too little: the pace of its log carried on, and nothing where the log tells no pace.

import { describe, expect, it } from 'vitest'
import { fadeTo } from '../../../src/charging/upkeep/fade.ts'

const day_ms = 86_400_000
const start_ms = Date.UTC(2031, 0, 1)
/** What it holds on each of these days, in mAh. */
const log = (held: readonly (readonly [number, number])[]) =>
  held.map(([day, held_mAh]) => ({ at: new Date(start_ms + day * day_ms), capacity_Ah: held_mAh / 1000 }))
const dayOf = (date: Date | undefined) => date && Math.round((date.getTime() - start_ms) / day_ms)

describe('a pack that loses 1 mAh a day', () => {
  const steady = log([0, 20, 40, 60, 80].map(day => [day, 700 - day]))

  it('comes to its floor as a straight line does, from the middle of the last three readings', () => {
    const fade = fadeTo(steady, 0.576)
    expect(dayOf(fade?.at)).toBe(80 + (640 - 576))
    expect(dayOf(fade?.earliest)).toBe(dayOf(fade?.at))
    expect(dayOf(fade?.latest)).toBe(dayOf(fade?.at))
  })

  it('is not told otherwise by one wild reading', () => {
    const wild = [...steady, ...log([[90, 450]]), ...log([[100, 600]])]
    expect(Math.abs((dayOf(fadeTo(wild, 0.5)?.at) ?? 0) - 200)).toBeLessThan(25)
  })
})

it('has a band where the readings scatter, open to years later', () => {
  const scattered = log([
    [0, 700],
    [30, 690],
    [60, 697],
    [90, 680],
    [120, 688],
  ])
  const fade = fadeTo(scattered, 0.576)
  expect(dayOf(fade?.earliest)).toBeLessThan(dayOf(fade?.at) ?? 0)
  expect(dayOf(fade?.at)).toBeLessThan(dayOf(fade?.latest) ?? Number.POSITIVE_INFINITY)
})

it.each([
  [
    'too few readings',
    [
      [0, 700],
      [40, 680],
      [80, 660],
    ],
    0.5,
  ],
  [
    'too short a time',
    [
      [0, 700],
      [5, 690],
      [10, 680],
      [20, 670],
    ],
    0.5,
  ],
  [
    'no loss',
    [
      [0, 700],
      [20, 700],
      [40, 705],
      [60, 702],
    ],
    0.5,
  ],
  [
    'a pack that is there already',
    [
      [0, 700],
      [20, 600],
      [40, 560],
      [60, 550],
    ],
    0.576,
  ],
] as const)('is not told by %s', (_, held, floor_Ah) => {
  expect(fadeTo(log(held), floor_Ah)).toBeUndefined()
})
