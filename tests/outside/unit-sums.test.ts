// Sums between electrical quantities, against published examples.

import { afterAll, beforeAll, expect, it } from 'vitest'
import { type Asking, askingOf } from '../support/ask.ts'
import { commandNamed } from '../support/commands.ts'

let asking: Asking
beforeAll(async () => {
  asking = await askingOf([commandNamed('energy')])
})
afterAll(async () => {
  expect(asking.faults).toEqual([])
  await asking.memory.close()
})

it.each([
  // 20 V at 5 A is 100 W: USB Power Delivery's largest offer of the standard power range; common practice too.
  ['energy voltage: 20V current: 5A', 'power', 100],
  // IATA lithium battery guidance: Wh = V × Ah; its own example, 11.1 V and 4400 mAh, is 48.84 Wh.
  ['energy capacity: 4400mAh voltage: 11.1V', 'energy', 48.84],
  ['energy energy: 48.84Wh voltage: 11.1V', 'capacity', 4.4],
  ['energy power: 60W voltage: 12V', 'current', 5],
  // Definitions of the ampere-hour, of Ohm's law and of the watt-hour.
  ['energy current: 6A duration: 15min', 'capacity', 1.5],
  ['energy current: 45A resistance: 8mΩ', 'voltage', 0.36],
  ['energy energy: 100Wh power: 50W', 'duration', 7200],
  // 5 Ah at 30 A until a fifth is left.
  ['energy pack: 6S 5000 LiPo current: 30A', 'duration', 480],
  // 980 mAh in 4 min are 245 mAh a minute: four fifths of 1300 mAh last 1040 ÷ 245 min.
  ['energy pack: 4S 1300 LiPo capacity: 980mAh duration: 4min to: 80%', 'duration', (1040 / 245) * 60],
  // 1.2 Ah in a twelfth of an hour.
  ['energy pack: 4S 1500 LiPo duration: 5min to: 20%', 'current', 14.4],
  ['energy pack: 4S 1500 LiPo duration: 5min current: 6A', 'capacity', 0.5],
  // Told as used: 60 % of 2.2 Ah in 8 min.
  ['energy pack: 3S 2200 LiPo duration: 8min from: 60% to: 80%', 'capacity', 1.32],
  // 22.2 V nominal × 5 Ah.
  ['energy pack: 6S 5000 LiPo', 'energy', 111],
  ['energy pack: 6S 5000 LiPo count: 2', 'energy', 222],
])('%s', async (question, key, value) => {
  const { figures } = await asking.ask(question)
  expect(figures.find(figure => figure.key === key)?.value).toBeCloseTo(value, 6)
})

it('tells a capacity in both units where no volts are told', async () => {
  expect((await asking.ask('energy capacity: 0.85Ah')).headline).toContain('850 mAh are 0.85 Ah')
})

it('says what is missing', async () => {
  expect((await asking.ask('energy voltage: 14.8V')).problem?.what).toMatch(/volts with one of/)
  // Watt-hours alone are asked about at the wall: more leaves it than comes in.
  const wall = await asking.ask('energy energy: 50Wh')
  expect(wall.figures.find(({ key }) => key === 'wallEnergy')?.value).toBeGreaterThan(50)
})
