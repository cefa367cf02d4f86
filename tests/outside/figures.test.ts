// Figures that are sums of what the question tells, worked on paper, asked of the whole assistant.

import { afterAll, beforeAll, expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { type Asking, askingOf, moderator } from '../support/ask.ts'
import { fakeBoard } from '../support/fake-noticeboard.ts'

let asking: Asking
beforeAll(async () => {
  const { noticeboard } = fakeBoard()
  asking = await askingOf(commands, { noticeboard, clock: () => new Date('2031-05-04T10:00:00Z') })
})
afterAll(async () => {
  expect(asking.faults).toEqual([])
  await asking.memory.close()
})

it.each<[string, Readonly<Record<string, number>>]>([
  // A sixth of an hour at 1.5 A; a tenth more than the label; 1.5 A × 16.8 V by a charger of 85 %.
  [
    'time pack: 4S 1500 LiPo current: 1.5A from: 20% within: 10min',
    { chargeWithin: 0.25, percentWithin: 36.6667, cRate: 1, stopCapacity: 1.65, peakInputPower: 29.6471 },
  ],
  // The label's 3 × 1 Ah is more than the 2C that cells of the kind take.
  ['current pack: 3S 1000 LiPo 3C', { labelCurrent: 3, highestCurrent: 2, wantedCurrent: 2, setCurrent: 2 }],
  // Two of 0.85 Ah side by side, 12.6 V at the end.
  [
    'parallel packs: 2x 3S 850 LiPo at 3.8V charger: 0.1-10A by 0.1 200W',
    { eachCurrent: 0.85, setCurrent: 1.7, boardPower: 21.42, boardCapacity: 1.7, apart: 0 },
  ],
  [
    'cells pack: 3S 2200 LiPo volts: 3.80 3.82 3.90',
    { spread: 0.1, lowestCell: 1, highestCell: 3, lowestPerCell: 3.8, highestPerCell: 3.9, packVoltage: 11.52 },
  ],
  // 85 W at 12.6 V and at 25.2 V, rounded down.
  [
    'supply source: PD 100W',
    { supplyPower: 100, supplyVoltage: 20, supplyCurrent: 5, current3S: 6.74, current6S: 3.37 },
  ],
  // 200 W ÷ 0.85, and a fifth more than that at 12 V and 15 V, rounded up.
  [
    'supply charger: 0.1-20A by 0.1 200W 6S 10-30V',
    { inputPower: 235.2941, supplyCurrent12V: 23.6, supplyCurrent15V: 18.9 },
  ],
  ['percent pack: 3S 720 LiHV back: 560mAh', { putBack: 0.56, usedShare: 77.7778, mostUsed: 0.576 }],
  ['percent pack: 6S 1300 LiPo at: 40%', { chargeLeft: 0.52 }],
  // 12.54 V ÷ 3; 0.06 V too high in all.
  ['trim pack: 3S 2200 LiPo shown: 12.6V measured: 12.54V', { error: -0.02, measuredPerCell: 4.18 }],
  // 9 mΩ × 1.5 Ah beside the 70 mΩ·Ah of its like.
  ['health pack: 3S 1500 LiPo resistance: 9mΩ temperature: 25°C', { resistanceFor1Ah: 0.0135, times: 0.1929 }],
  // 60 % of 14.8 V × 2.2 Ah, and a quarter lost on the way from the wall; 160 Wh/kg, and a tenth to a half beside the cells.
  [
    'energy pack: 4S 2200 LiPo from: 20% to: 80% price: 30 cents/kWh',
    { partCharge: 1.32, partEnergy: 19.536, wallEnergy: 26.048, mass: 264.55 },
  ],
  // 11.1 V × 2.2 Ah over 0.17 kg.
  ['energy pack: 3S 2200 LiPo mass: 170g', { energyPerMass: 143.647 }],
  ['compare packs: 3S 2200 LiPo 170g; 3S 2200 LiPo 190g', { energy1: 24.42, energyPerMass1: 143.647 }],
])('%s', async (question, expected) => {
  const { figures, problem } = await asking.ask(question)
  expect(problem).toBeUndefined()
  const found = Object.fromEntries(figures.map(({ key, value }) => [key, value]))
  for (const [key, value] of Object.entries(expected)) expect(found[key], key).toBeCloseTo(value, 3)
})

const alone = { ...moderator, place: { id: 'room:alone', direct: true } }

// Each asked after those above it.
it.each<[string, Readonly<Record<string, number>>]>([
  ['kit save name: wren pack: 3S 720 LiHV', {}],
  ['kit save name: plover pack: 4S 1500 LiPo', {}],
  ['kit list', { savedNames: 2 }],
  ['house set rate: 1C', {}],
  ['answer save title: Small question: current pack: 3S 720 LiHV', {}],
  ['answer list', { standardAnswers: 1 }],
  ['history', { changes: 2 }],
  // Whether somebody is with the charge is asked every quarter of an hour.
  ['remind me in: 45min', { remindIn: 2700, stayIn: 900 }],
  // That question and the end.
  ['remind list', { reminders: 2 }],
  // 360 mAh in half an hour, by 720 mAh.
  ['log charge name: wren put-back: 360mAh took: 30min', { chargeIn: 0.36, meanCurrent: 0.72, meanRate: 1 }],
  ['log charge name: wren put-back: 300mAh', {}],
  ['log show name: wren', { charges: 2 }],
])('of what is kept: %s', async (question, expected) => {
  const { figures, problem } = await asking.ask(question, alone)
  expect(problem).toBeUndefined()
  expect(Object.fromEntries(figures.map(({ key, value }) => [key, value]))).toMatchObject(expected)
})
