// Questions about supplies, leads and sums as people write them: which command they become, with which details.

import { afterAll, beforeAll, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, askingOf, member } from '../../support/ask.ts'

let asking: Asking
beforeAll(async () => {
  asking = await askingOf(commands)
})
/** Each in a place of its own: nothing was said before. */
const inPlace = (id: string) => ({ ...member, place: { id, direct: false } })
afterAll(() => asking.memory.close())

it.each([
  ['which gauge is 2.5mm2 as awg', 'lead gauge: AWG 14'],
  ['wire for a 240w charger at 12v, 2m', 'lead length: 2m power: 240W voltage: 12V'],
  ['wh of 230ah at 12v', 'energy capacity: 230000mAh voltage: 12V'],
  ['3300 mah at 22.2 V how many watt hours', 'energy capacity: 3300mAh voltage: 22.2V'],
  ['6 amps for a quarter of an hour, how much went in', 'energy current: 6A duration: 15min'],
  [
    'what sag is it with 7 mohm a cell at 45A, 4s',
    'energy cells: 4S LiPo current: 45A resistance: 7mΩ told: chemistryAssumed',
  ],
  ['a 150w charger on 5s, amps', 'supply charger: 0.1-15A by 0.1 150W chemistry: 5S LiPo told: chemistryAssumed'],
  ['rested 12.6 V and 11.9 V with 18 A, what resistance is that', 'health one: rest 12.6V other: 18A 11.9V'],
  [
    'what do nine 4s 1300 cost at 31 cents per kwh',
    'energy pack: 4S 1300mAh LiPo count: 9 price: 31 cents/kWh told: chemistryAssumed',
  ],
  ['what does it cost to fill nine 4s 1300 lipo at 31ct', 'energy pack: 4S 1300mAh LiPo count: 9 price: 31 ct/kWh'],
  ['at 27 amps on average, what flight time has a 4s 2500 lipo', 'energy pack: 4S 2500mAh LiPo current: 27A'],
  // So many amps are those of a flight where nothing else lasts: with a charge before it they are the charge's.
  ['flight time of a 3s 2600 lipo at 13A', 'energy pack: 3S 2600mAh LiPo current: 13A'],
  ['how many minutes of flying on a 4s 3000 lipo at 12 amps', 'energy pack: 4S 3000mAh LiPo current: 12A'],
  ['3s 2600 lipo at 2A, how long before I can fly', 'time pack: 3S 2600mAh LiPo current: 2A'],
  // Volts for some weeks are where a pack is left.
  ['is 3.92 ok for three weeks, lipo', 'storage chemistry: LiPo from: 3.92V per cell told: notUnderstood'],
  ['3 batteries 4s 1400 lipo one at a time at 1.4 A, total time', 'plan packs: 3x 4S 1400mAh LiPo at 1.4A'],
  ['carry on limit in Wh, a 4S 4400 lipo', 'travel packs: 4S 4400mAh LiPo'],
  ['volts of a full 5S lihv', 'percent chemistry: 5S LiHV at: full'],
  ['4S lihv shows 15.7, fly it or fill it up', 'percent chemistry: 4S LiHV at: 15.7V pack'],
  ['what is the top voltage of a 5S lihv', 'trim chemistry: 5S LiHV'],
  [
    'used 820 of 1100 mah, what is left',
    'percent pack: 1S 1100mAh LiPo back: 820mAh told: chemistryAssumed, cellsUnknown',
  ],
  ['3 A into a 5S lipo from 19 V, what does the supply give', 'supply chemistry: 5S LiPo current: 3A voltage: 19V'],
  ['generator of 2 kW, both chargers together draw 900 W at the plug, ok', 'supply source: mains 2000W draws: 900W'],
  [
    '3100 mah in 7 min 30 from a 6s 4000 lipo, average amps',
    'energy pack: 6S 4000mAh LiPo capacity: 3100mAh duration: 7min30s',
  ],
  ['each cell is 4 Ah, the pack is a 6S2P lipo. how many Wh', 'energy pack: 6S2P 8000mAh LiPo'],
  ['2 kW generator, two chargers pulling 500 W each, enough?', 'supply source: mains 2000W count: 2 draws: 500W'],
  ['a 3S 1400 that is to have a quiet life, what amps', 'current pack: 3S 1400mAh LiPo told: chemistryAssumed'],
  ['how many 120 W chargers run on one 24V 20A supply', 'supply source: 24V 20A charger: 0.1-12A by 0.1 120W'],
  ['an XT90 with 70 A, is that ok', 'lead current: 70A plug: XT90'],
  [
    'two packs at 3.77 and 3.84, both 4S 1300 lipo, on one board',
    'parallel packs: 4S 1300mAh LiPo at 3.77V per cell; 4S 1300mAh LiPo at 3.84V per cell',
  ],
  [
    'how long does a 3S 24.4Wh lihv take at 1C from storage',
    'time pack: 3S 2198mAh LiHV current: 2.198A from: storage',
  ],
  // What only stands there feeds nothing that is asked about, and a part of a car neither.
  [
    'the generator hums, how long for a 6S 5000 lipo at 5 A from 3.75 a cell',
    'time pack: 6S 5000mAh LiPo current: 5A from: 3.75V per cell',
  ],
  ['fresh out of the car boot at 14 °C, 4S 4000 lipo, what amps', 'current pack: 4S 4000mAh LiPo temperature: 14°C'],
  [
    'a 450 Wh box with a mains socket, how many 3S 2200 lipo',
    'source source: power bank 450Wh 12V 10A pack: 3S 2200mAh LiPo',
  ],
  [
    'the panel spares 300 Wh, how many 4S 1500 lipo is that',
    'source source: power bank 300Wh 12V 10A pack: 4S 1500mAh LiPo',
  ],
  ['how long for a 4S 1500 lipo to 4.10 instead of 4.20', 'time pack: 4S 1500mAh LiPo to: 4.1V per cell'],
  [
    '6S 1300 lipo flown to 3.5 a cell, how long at 1.3 A',
    'time pack: 6S 1300mAh LiPo current: 1.3A from: 3.5V per cell',
  ],
  [
    'a 4S 1500 lipo at 1.5 A, does it go at full speed on a 100W charger, how long',
    'time pack: 4S 1500mAh LiPo current: 1.5A charger: 0.1-10A by 0.1 100W',
  ],
  ['3 of the 4 lights are on, 4S 4000 lipo, how many mAh are left', 'percent pack: 4S 4000mAh LiPo at: 75%'],
])('reads %j', async (text, question) => {
  expect((await asking.ask(text, inPlace(text))).question).toBe(question)
})

it('works nothing out where reasons are asked for, and no pack is named', async () => {
  const text = 'why does the current fall in the last 15 min though I set 3 A'
  expect((await asking.ask(text, inPlace(text))).command).toBe('handbook')
})

it('judges cells, and says how much is left in them', async () => {
  const { headline } = await asking.ask(
    'my 6S 4000 lipo reads 3.71, 3.72, 3.71, 3.70, 3.72 and 3.71 V, how full is it',
    inPlace('cells'),
  )
  expect(headline).toMatch(/0\.02.V apart.*about 2\d.% of their charge/)
})

it.each(['can I charge a 3S 2200 lipo from the car', 'from the car how many 3S 2200 lipo'])(
  'sees nobody leave in %j',
  async text => {
    expect((await asking.ask(text, inPlace(text))).verdict).not.toBe('do not charge')
  },
)

it('takes a protection board for no board of packs', async () => {
  const text = '3S li-ion 2600, its protection board stays in and works, what amps'
  expect((await asking.ask(text, inPlace(text))).command).toBe('current')
})

it.each([
  'my charger takes 11 to 18 V, all I have is a 24 V supply, does a 4S 1500 lipo go on that',
  'charger input 11-18 V, the supply gives 24V 10A, 4S 1500 lipo at 3 A ok?',
  'can I run my 11-18V charger off a 24V truck battery for a 3S 2200 lipo',
  'is 24 V fine for a charger that says 11-18 V',
])('refuses volts that the charger does not take: %s', async text => {
  const { verdict, headline } = await asking.ask(text, inPlace(text))
  expect([verdict, headline]).toEqual(['do not charge', expect.stringMatching(/the charger wants 11 V to 18 V/)])
})

it.each([
  ['how many 3S 2100 LiPo can my 60Ah car battery charge at 12.5V', /rest 12.5V/],
  ['how many 3S 2100 LiPo at 11.4 V can my 60Ah car battery charge', /from 11.4V pack/],
])('gives volts to what they are told of: %s', async (text, read) => {
  expect((await asking.ask(text, inPlace(text))).readAs).toMatch(read)
})
