// One charger for several packs: which of its limits holds, and for how many it is enough.

import { expect, it } from 'vitest'
import type { Limit } from '../../../src/charging/setting/limit.ts'
import { heldBelow, roomFor } from '../../../src/charging/setting/shared-charger.ts'

const from = { source: 'the label' }
const ofPack: Limit = { kind: 'chemistry', rate_C: 2, value_A: 0.5, from }
const charger: Limit = { kind: 'charger', value_A: 3, from }
const source: Limit = { kind: 'source', power_W: 60, value_A: 4.8, from }
const limits = [ofPack, charger, source] as const

it('a current is held down by what gives less, never by what the pack itself may take', () => {
  expect(heldBelow({ limits }, 3)).toBeUndefined()
  expect(heldBelow({ limits }, 3 + 5e-10)).toBeUndefined()
  expect(heldBelow({ limits }, 3.001)).toBe(charger)
  expect(heldBelow({ limits: [ofPack, source] }, 4.9)).toBe(source)
  expect(heldBelow({ limits: [ofPack] }, 9)).toBeUndefined()
})

it('the smallest of what is given says for how many it is enough, rounded down', () => {
  expect(roomFor({ limits }, 1)).toEqual({ count: 3, each_A: 1, limit: charger })
  expect(roomFor({ limits }, 0.3)?.count).toBe(10)
  expect(roomFor({ limits }, 1.1)?.count).toBe(2)
  expect(roomFor({ limits }, 3.1)?.count).toBe(0)
  expect(roomFor({ limits: [ofPack] }, 1)).toBeUndefined()
})
