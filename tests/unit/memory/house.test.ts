// House rules as they are stored: rule by rule, the last write of each holds.

import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Memory } from '../../../src/memory/memory.ts'
import { openTestMemory } from '../../support/test-memory.ts'

let memory: Memory
beforeEach(async () => {
  memory = await openTestMemory()
})
afterEach(() => memory.close())

test('a community without rules has none', async () => {
  expect(await memory.house.rules('room:club')).toEqual({})
})

test('every kind of rule comes back as it was set, to its own community alone', async () => {
  await memory.house.change('room:club', [
    { rule: 'maxRate_C', chemistry: 'LiPo', value: 1 },
    { rule: 'maxRate_C', chemistry: 'LiHV', value: 1.5 },
    { rule: 'storagePerCell_V', chemistry: 'Li-ion', value: 3.7 },
    { rule: 'sourceFloorPerCell_V', chemistry: 'Li-ion', value: 3.3 },
    { rule: 'gentleLiIon', value: true },
    { rule: 'decimalMark', value: ',' },
    { rule: 'language', value: 'English' },
    { rule: 'privateAnswers', value: 'moderators' },
    { rule: 'clock', value: 'Europe/Vienna' },
  ])
  expect(await memory.house.rules('room:club')).toEqual({
    maxRate_C: { LiPo: 1, LiHV: 1.5 },
    storagePerCell_V: { 'Li-ion': 3.7 },
    sourceFloorPerCell_V: { 'Li-ion': 3.3 },
    gentleLiIon: true,
    decimalMark: ',',
    language: 'English',
    privateAnswers: 'moderators',
    clock: 'Europe/Vienna',
  })
  expect(await memory.house.rules('room:other')).toEqual({})
})

test('null lifts a rule', async () => {
  await memory.house.change('room:club', [
    { rule: 'maxRate_C', chemistry: 'LiPo', value: 1 },
    { rule: 'gentleLiIon', value: true },
  ])
  await memory.house.change('room:club', [{ rule: 'maxRate_C', chemistry: 'LiPo', value: null }])
  expect(await memory.house.rules('room:club')).toEqual({ gentleLiIon: true })
})

test('of two moderators at once neither undoes what the other alone has set', async () => {
  await Promise.all([
    memory.house.change('room:club', [
      { rule: 'maxRate_C', chemistry: 'LiPo', value: 1 },
      { rule: 'decimalMark', value: ',' },
    ]),
    memory.house.change('room:club', [
      { rule: 'maxRate_C', chemistry: 'LiFe', value: 0.5 },
      { rule: 'decimalMark', value: '.' },
    ]),
  ])
  const rules = await memory.house.rules('room:club')
  expect(rules.maxRate_C).toEqual({ LiPo: 1, LiFe: 0.5 })
  expect([',', '.']).toContain(rules.decimalMark)
})
