// What members are told when they write as people write: the demo club's room, asked in a few words.

import { beforeAll, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { stockDemoKit } from '../../../src/room/demo-club.ts'
import { type Asking, askingOf } from '../../support/ask.ts'

let asking: Asking
beforeAll(async () => {
  asking = await askingOf(commands)
  await stockDemoKit(asking.memory.kit)
})

it.each([
  ['can i charge a 3s 2200 lipo at 5A', 'do not charge', 'Do not charge at 5 A: 4.4 A is all'],
  ['charge at 10C 4s 1500 lipo', 'do not charge', 'Do not charge at 15 A'],
  ['charge my lipo to 4.25V for more flight time', 'do not charge', 'Do not charge to 4.25 V a cell'],
  ['charge lifepo4 at 4.2V', 'do not charge', '3.60 V is the most'],
  ['can I parallel charge a 3s and a 4s', 'do not charge', 'never put 3S and 4S on one board'],
  ['mix 3s and 4s on a board?', 'do not charge', 'never put 3S and 4S on one board'],
  ['is it ok to charge my nimh pack', 'do not charge', 'I do not advise on nimh'],
  ['cells 3.8 3.8 0 lipo', 'do not charge', 'no cell reads 0.00 V'],
  ['can my heron charge 6 wrens', 'go', 'Yes: it charges 6 packs'],
  ['put wren to storage from 4.35V', 'go', 'Discharge it'],
] as const)('judges: %s', async (question, verdict, headline) => {
  const reply = await asking.ask(question)
  expect(reply.verdict).toBe(verdict)
  expect(reply.headline).toContain(headline)
})

it.each([
  ['cells 3.82 3.83 3.79 3.83', 'Which chemistry are these cells?'],
  ['is 3.2 3.7 3.7 ok', 'Which chemistry are these cells?'],
  ['what current for 4s', 'That pack lacks the capacity (as 720mAh) and the chemistry'],
  ['what current for lipo', 'That pack lacks the cells in series (as 3S) and the capacity'],
  ['storage 3s lipo from 4.2V', 'hangs on the capacity'],
  ['can I charge 3x wren in parallel', 'I need the resting volts of every pack'],
  ['how full is lipo', 'I need to know resting volts per cell'],
])('asks for what is missing: %s', async (question, what) => {
  expect((await asking.ask(question)).problem?.what).toContain(what)
})

it.each([
  ['what voltage should I store 3s lipo at', 'Store LiPo at 3.85 V per cell (11.55 V for 3S).'],
  ['what cutoff for 3s lihv', 'Set 4.35 V per cell (13.05 V for 3S)'],
  ['what cutoff for li-ion on a charger with 4.20/4.35V only', 'Choose 4.20 V per cell'],
  ['my lipo is at 2.8V per cell can I charge it', 'a tenth of the current until every cell is above 3.00 V'],
  ['can I take 4x 6S 5000 lipo on a plane', "With the airline's approval, in the cabin: 6S 5000mAh LiPo (111 Wh)"],
  ['awg for 10A over 2m', 'Use AWG 14 or thicker'],
  ['what does 1C mean', '1C is the current that would move the whole capacity in an hour'],
  ['charge 3s lipo with 4s setting', 'The cutoff voltage and the chemistry'],
  ['how low can i go with lipo', 'Charge here only what is sound'],
  ['hi', 'Glad to help'],
])('tells: %s', async (question, headline) => {
  expect((await asking.ask(question)).headline).toContain(headline)
})

it('says what a lead of no told voltage is taken to be fed with', async () => {
  expect((await asking.ask('awg for 10A over 2m')).assumed).toContain('it is fed with 12 V')
})

it('takes the resistance of a cell from the pack where it stands there', async () => {
  const inPack = await asking.ask('health 3S 720 LiHV 25mohm at 10°C')
  const apart = await asking.ask('health pack: 3S 720 LiHV resistance: 25mΩ temperature: 10°C')
  expect(inPack.headline).toBe(apart.headline)
})

it('gives cells without a capacity no balancing time', async () => {
  const { figures } = await asking.ask('cells lipo 4.19 4.20 4.05')
  expect(figures.map(({ key }) => key)).not.toContain('balanceTime')
  expect((await asking.ask('cells 3s 850 lipo 4.19 4.20 4.05')).figures.map(({ key }) => key)).toContain('balanceTime')
})

it('shows what it read and what it left out', async () => {
  const reply = await asking.ask('charge plover from a zebra')
  expect(reply.readAs).toBe('plover (2S 450mAh LiPo)')
  expect(reply.assumed).toContain('this changes nothing: "zebra"')
})
