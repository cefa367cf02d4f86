// What is said behind an answer without a question of its own: pleas, leave-takings, pins.

import { afterEach, beforeEach, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, moderator } from '../../support/ask.ts'
import { demoAsking } from '../../support/demo-asking.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
beforeEach(async () => {
  asking = await demoAsking(commands)
})
afterEach(() => endFaultless(asking))

it.each([
  ['4A for a 2s 700 lipo ok?', 'come on, only this time'],
  ['can i charge on my bed', 'just for today'],
])('refuses %j once more to whoever only pleads', async (refused, plea) => {
  const before = await asking.ask(refused)
  const after = await asking.ask(plea)
  expect([after.verdict, after.lines[0]]).toEqual(['do not charge', before.lines[0]])
  expect((await asking.ask('ok thanks')).verdict).toBeUndefined()
})

it('pins what was just worked out, once it has a title', async () => {
  await asking.ask('current for a 2s 350 lipo', moderator)
  expect((await asking.ask('please pin this for everybody', moderator)).problem?.what).toContain('title')
  expect((await asking.ask('Indoor packs', moderator)).readAs).toContain('current pack: 2S 350mAh LiPo')
})

it.each([
  ['3s 1000 lipo at 8.5 V', 'do not charge'],
  ['3s 1000 lipo at 11.4 V', 'go with care'],
])('knows that a pack that stands too low for weeks is past saving: %j', async (text, verdict) => {
  await asking.ask(text)
  expect((await asking.ask('no idea since when it is like that, what current')).verdict).toBe(verdict)
})

it.each([
  ['nice, plugging it in and off to the cinema', 'do not charge'],
  ['thanks, good night', 'go with care'],
  ['thanks, bye', undefined],
])('takes %j for said of the charge that was asked about', async (text, verdict) => {
  await asking.ask('how long for a 3s 1000 lipo at 1A')
  expect((await asking.ask(text)).verdict).toBe(verdict)
})

it.each([
  ['my 3s 900 has a cell at 4.31 V', 'can i still fly it', 'do not charge'],
  ['amps for a 2s 800 life', 'and as lihv?', 'go'],
  ['amps for a 2s 800 life', "i'll set it to lihv", 'do not charge'],
  ['two 3s 900 lipo on a board, both at 11.7', 'and a 4s with them', 'do not charge'],
  ['two 3s 900 lipo on a board, both at 11.7', 'one more at 11.7', 'go with care'],
  ['amps for a 2s 800 lipo', 'thanks! and how long does that take?', 'go'],
])('judges behind %j what %j means', async (before, text, verdict) => {
  await asking.ask(before)
  expect((await asking.ask(text)).verdict).toBe(verdict)
})

it.each([
  ['4s 1500 lipo at 2 A', 'it draws 18 amps hovering, flight time?', 'energy pack: 4S 1500mAh LiPo current: 18A'],
  ['4s 2200 lipo storage', 'if i pull 25 A how long can i fly', 'energy pack: 4S 2200mAh LiPo current: 25A'],
  ['4s 2200 lipo at 2 A', 'at 3 A, how long till i can fly', 'time pack: 4S 2200mAh LiPo current: 3A'],
  ['what amps for 4s 1500 lipo', 'flying commercially with two of them', 'travel packs: 2x 4S 1500mAh LiPo'],
  [
    'feed from one 3S 2200 lipo, how many 1S 300 lipo',
    'how many from a 4S 5000 lipo then',
    'source source: 4S 5000mAh LiPo pack: 1S 300mAh LiPo',
  ],
])('asks behind %j by %j', async (before, text, question) => {
  await asking.ask(before)
  expect((await asking.ask(text)).question?.replace(/ told: .*/, '')).toBe(question)
})

it.each([
  ['what current for 4s 1500 lipo', '15.2 V', 'current pack: 4S 1500mAh LiPo from: 15.2V pack'],
  [
    'how long for 2s 450 lihv at 0.45 A',
    '8.2 on the checker',
    'time pack: 2S 450mAh LiHV current: 0.45A from: 8.2V pack',
  ],
  ['storage for 6s 1300 lipo', '24.6 V', 'storage pack: 6S 1300mAh LiPo from: 24.6V pack'],
  ['supply for 6s 5000 lipo at 5 A', '10 A', 'supply pack: 6S 5000mAh LiPo current: 10A'],
  ['supply for 6s 5000 lipo at 5 A', '24 V', 'supply pack: 6S 5000mAh LiPo current: 5A voltage: 24V'],
])('changes %j by the bare value %j', async (before, text, question) => {
  await asking.ask(before)
  expect((await asking.ask(text)).question?.replace(/ told: .*/, '')).toBe(question)
})

it('knows where a lead battery rests, and keeps it when its size is told anew', async () => {
  await asking.ask('how many 3s 2200 lipo from a 12 V 50 Ah lead battery')
  expect((await asking.ask('only 12.1 on the meter')).verdict).toBe('do not charge')
  expect((await asking.ask('12.4 V')).question).toContain('rest 12.4V 50Ah')
  expect((await asking.ask('80 Ah')).question).toContain('rest 12.4V 80Ah')
  const whole = await asking.ask('how many 3s 2200 lipo from a 12 V 50 Ah lead battery that rests at 12.1 V')
  expect(whole.verdict).toBe('do not charge')
})

it.each([
  ['and the new one at 4.0', 'do not charge'],
  ['and one more at 3.85', 'go with care'],
  ['all at 4.0', 'go with care'],
])('judges what joins a board by where the others stand: %j', async (text, verdict) => {
  await asking.ask('5 packs 4s 1500 lipo on one board at 3.8')
  expect((await asking.ask(text)).verdict).toBe(verdict)
})

it.each([
  ['4s 1500 lipo how long from 14.4 V', 'it was 15.6 actually', 'time pack: 4S 1500mAh LiPo from: 15.6V pack'],
  ['4s 1500 lipo how long at 2 A', 'sorry, i meant 1.2 A', 'time pack: 4S 1500mAh LiPo current: 1.2A'],
])('puts right %j by %j', async (before, text, question) => {
  await asking.ask(before)
  expect((await asking.ask(text)).question).toBe(question)
})

it('hears of a night behind a charge', async () => {
  await asking.ask('2s 2000 lipo, how long at 0.5 A')
  expect((await asking.ask('over night then?')).verdict).toBe('do not charge')
})

it('answers of the pack that was spoken of, and not of the example in a greeting', async () => {
  await asking.ask('what amps for 4s 1500 lipo')
  await asking.ask('hello')
  expect((await asking.ask('how long')).question).toBe('time pack: 4S 1500mAh LiPo')
})

it('hears what the others of a board stand at', async () => {
  await asking.ask('charging 24 1s 300 lihv on 4 boards, 3 at 4.0')
  expect((await asking.ask('others at 3.7')).verdict).toBe('do not charge')
})

it('takes the one of two that holds', async () => {
  await asking.ask('4s 1500 lipo from 13.9 to 16 V at 1 A')
  expect((await asking.ask('not 16, 16.4')).question).toContain('to: 16.4V')
})
