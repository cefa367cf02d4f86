// Short answers go on from what was asked before, whichever command answered it.

import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Asking } from '../../support/ask.ts'
import { demoAsking } from '../../support/demo-asking.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
beforeEach(async () => {
  asking = await demoAsking(commands)
})
afterEach(() => endFaultless(asking))

const chains: readonly (readonly (readonly [string, string])[])[] = [
  [
    ['how many wh has a 3s 2200 lipo', 'energy pack: 3S 2200mAh LiPo'],
    ['same for the 6s', 'energy pack: 6S 2200mAh LiPo'],
    ['no, 5 packs', 'energy pack: 6S 2200mAh LiPo count: 5'],
    ["it's LiFe", 'energy pack: 6S 2200mAh LiFe count: 5'],
  ],
  [
    ['how full is a 4s at 15.4', 'percent chemistry: 4S LiPo at: 15.4V pack told: chemistryAssumed'],
    ['lihv sorry', 'percent chemistry: 4S LiHV at: 15.4V pack'],
  ],
  [
    ['what amps for my 3s 1300 lipo', 'current pack: 3S 1300mAh LiPo'],
    ['and a 6s', 'current pack: 6S 1300mAh LiPo'],
    ['3S', 'current pack: 3S 1300mAh LiPo'],
  ],
  [
    ['what wire for 10A over 2m at 12V', 'lead length: 2m current: 10A voltage: 12V'],
    ['and 3m', 'lead length: 3m current: 10A voltage: 12V'],
    ['with 14 awg', 'lead gauge: AWG 14 length: 3m current: 10A voltage: 12V'],
  ],
  [
    ['how long for a 4s 1300 lipo at 1.2A from 14.8V', 'time pack: 4S 1300mAh LiPo current: 1.2A from: 14.8V pack'],
    ['15.1', 'time pack: 4S 1300mAh LiPo current: 1.2A from: 15.1V pack'],
    ['half that current', 'time pack: 4S 1300mAh LiPo current: 0.6A from: 15.1V pack'],
    ['and until 4.1V', 'time pack: 4S 1300mAh LiPo current: 0.6A from: 15.1V pack to: 4.1V per cell'],
  ],
  [
    ['how long for a 3s 1500 lipo', 'time pack: 3S 1500mAh LiPo'],
    ['its 1400 mah', 'time pack: 3S 1400mAh LiPo'],
    ['and the 6s', 'time pack: 6S 1400mAh LiPo'],
  ],
  [
    ['compare 3s 1300 lipo 110g with 3s 1500 lipo 128g', 'compare packs: 3S 1300mAh LiPo 110g; 3S 1500mAh LiPo 128g'],
    ['and a 3s 1500 lihv of 120g', 'compare packs: 3S 1300mAh LiPo 110g; 3S 1500mAh LiPo 128g; 3S 1500mAh LiHV 120g'],
  ],
  [
    ['does a 100W usb c brick do for 6s 1400 lipo at 2A', 'supply source: PD 100W pack: 6S 1400mAh LiPo current: 2A'],
    ['and one of 65W', 'supply source: PD 65W pack: 6S 1400mAh LiPo current: 2A'],
    ['for how long then', 'time pack: 6S 1400mAh LiPo current: 2A source: PD 65W'],
  ],
  [
    [
      'two 3s 850 lipo in parallel at 11.9 and 11.8',
      'parallel packs: 3S 850mAh LiPo at 11.9V pack; 3S 850mAh LiPo at 11.8V pack',
    ],
    ['and the end volts', 'trim pack: 3S 850mAh LiPo'],
  ],
  [
    ['amps for a 3s 1800 lipo', 'current pack: 3S 1800mAh LiPo'],
    ['the wrapper says 4C charge rate', 'current pack: 3S 1800mAh LiPo 4C charge'],
    ['how many amps does that pull from 24 V', 'supply pack: 3S 1800mAh LiPo 4C charge voltage: 24V'],
  ],
  [
    ['5s 1000 lipo stands at 3.7 a cell', 'percent pack: 5S 1000mAh LiPo at: 3.7V per cell'],
    ['how full would that be', 'percent pack: 5S 1000mAh LiPo at: 3.7V per cell'],
  ],
  [
    ['watt hours of a 5s 2200 lipo', 'energy pack: 5S 2200mAh LiPo'],
    ['i own three. allowed in hand luggage, are they?', 'travel packs: 3x 5S 2200mAh LiPo'],
  ],
  [
    ['storage volts for a 5s li-ion', 'storage chemistry: 5S Li-ion'],
    ['its a 5s 2500, at 4.0 a cell', 'storage pack: 5S 2500mAh Li-ion from: 4V per cell'],
    ['how much do i have to take out', 'storage pack: 5S 2500mAh Li-ion from: 4V per cell'],
  ],
  [
    ['time for a 4s 900 lipo at 1A', 'time pack: 4S 900mAh LiPo current: 1A'],
    ['why not 3A', 'time pack: 4S 900mAh LiPo current: 3A'],
  ],
  [
    ['amps for 6x 1s 450 lihv on a board', 'parallel packs: 6x 1S 450mAh LiHV'],
    ['how many watt hours are those', 'energy packs: 6x 1S 450mAh LiHV'],
  ],
  [
    ['what amps for a 4s 1100 lipo', 'current pack: 4S 1100mAh LiPo'],
    ['the 6s 1400 one', 'current pack: 6S 1400mAh LiPo'],
  ],
  [
    ['is a 4s 1400 lipo with 11 mohm worn out', 'health pack: 4S 1400mAh LiPo resistance: 11mΩ'],
    ['8 it is', 'health pack: 4S 1400mAh LiPo resistance: 8mΩ'],
  ],
  [
    ['amps for a 4s 1800 lipo', 'current pack: 4S 1800mAh LiPo'],
    ['and in Wh?', 'energy pack: 4S 1800mAh LiPo'],
    ['where does it stop', 'trim pack: 4S 1800mAh LiPo'],
  ],
  [
    ['how long for a 3s 1500 lipo at 1.5A', 'time pack: 3S 1500mAh LiPo current: 1.5A'],
    ['its watt-hours when full please', 'energy pack: 3S 1500mAh LiPo'],
  ],
  [
    ['6s 1300 lihv at 2A how long', 'time pack: 6S 1300mAh LiHV current: 2A'],
    ['and at what point does it cut off', 'trim pack: 6S 1300mAh LiHV'],
    ['and whats that in watts', 'supply pack: 6S 1300mAh LiHV'],
  ],
  [
    ['5s 4000 lipo from 3.6 at 4a how long', 'time pack: 5S 4000mAh LiPo current: 4A from: 3.6V per cell'],
    ['and at 2.5', 'time pack: 5S 4000mAh LiPo current: 2.5A from: 3.6V per cell'],
    ['what about at 5', 'time pack: 5S 4000mAh LiPo current: 5A from: 3.6V per cell'],
    ['and with 3', 'time pack: 5S 4000mAh LiPo current: 3A from: 3.6V per cell'],
    ['and from 3.5', 'time pack: 5S 4000mAh LiPo current: 3A from: 3.5V per cell'],
  ],
  [
    ['what current for a 4s 3200 lipo', 'current pack: 4S 3200mAh LiPo'],
    ['I measured 14.8 on it', 'current pack: 4S 3200mAh LiPo from: 14.8V pack'],
    ['how full is that', 'percent pack: 4S 3200mAh LiPo at: 14.8V pack'],
    ['and the total charge time', 'time pack: 4S 3200mAh LiPo from: 14.8V pack'],
  ],
  [
    ['what current for a 3S 1700 lipo', 'current pack: 3S 1700mAh LiPo'],
    ['One more thing: to what voltage does the charger bring it?', 'trim pack: 3S 1700mAh LiPo'],
    [
      'And were I to charge two such packs together in parallel?',
      'parallel packs: 2x 3S 1700mAh LiPo told: maybeBoardMixed',
    ],
  ],
  [
    ['how full is a 4s lipo at 15.2', 'percent chemistry: 4S LiPo at: 15.2V pack'],
    ['how long to fill from there, 1400 mah at 1.4', 'time pack: 4S 1400mAh LiPo current: 1.4A from: 15.2V pack'],
  ],
  [
    [
      'a 12V 50Ah AGM, how many 3S 2100 lipo does it do',
      'source source: deep-cycle battery 30A 50Ah pack: 3S 2100mAh LiPo',
    ],
    [
      'and if the battery is only 80% full',
      'source source: deep-cycle battery 30A 50Ah pack: 3S 2100mAh LiPo to: full charged: 80%',
    ],
  ],
  [
    ['2s 400 lihv amps', 'current pack: 2S 400mAh LiHV'],
    ["it's actually a 1s", 'current pack: 1S 400mAh LiHV'],
  ],
  [
    ['until which voltage do i charge a 5s lihv', 'trim chemistry: 5S LiHV'],
    ['lovely sunshine today', 'hello'],
    ['and a normal one?', 'trim chemistry: 5S LiPo'],
  ],
  [
    ['6s 1300 lihv how long at 1.3A', 'time pack: 6S 1300mAh LiHV current: 1.3A'],
    ['and an ordinary pack', 'time pack: 6S 1300mAh LiPo current: 1.3A'],
  ],
  [
    ['rain on the plane yesterday, the pack stayed dry. 3s 1800 lipo, amps?', 'current pack: 3S 1800mAh LiPo'],
    ['and if im in no hurry', 'current pack: 3S 1800mAh LiPo current: 0.9A'],
  ],
  [
    ['4s 5000 lipo what amps', 'current pack: 4S 5000mAh LiPo'],
    ['i have all evening, gentler?', 'current pack: 4S 5000mAh LiPo current: 2.5A'],
  ],
  [
    ['amps for a 6s 1300 lipo', 'current pack: 6S 1300mAh LiPo'],
    ['thanks a lot', 'hello'],
    ['we have plenty of time', 'current pack: 6S 1300mAh LiPo current: 0.65A'],
  ],
  [
    ['what amps for a 3s 1100 lipo', 'current pack: 3S 1100mAh LiPo'],
    ['anyway three of those in parallel', 'parallel packs: 3x 3S 1100mAh LiPo'],
  ],
]

/** Without what is only suspected: that changes with what dangers are learned from. */
const sure = (question = ''): string =>
  question.replace(/(?<=told: .*)maybe\w+(?:, )?/g, '').replace(/,? ?(?:told: )?$/, '')

describe('a chain of short answers', () => {
  it.each(chains)('from %j', async (...chain) => {
    for (const [text, question] of chain)
      expect([text, sure((await asking.ask(text)).question)]).toEqual([text, sure(question)])
  })
})

describe('which of two takes longer', () => {
  it.each([
    ['4s 1300 lipo empty at 1C how long', 'or is the 6s 1100 quicker', /^The same time as for 4S 1300mAh LiPo/],
    ['6s 2600 lipo at 2.6A from 3.6V how long', 'so a 3s 2600 is done in half the time', /^The same time/],
    ['amps for 5s 900 lipo', 'does a 3s 900 take longer then', /^The same time/],
    ['how long for 3s 1500 lipo at 1.5A', 'is a 3s 3000 at 1.5A twice as long', /^Longer than .*: 1 h 55 min, not 1 h/],
    ['how long for 3s 1500 lipo at 1.5A', 'and would 3A be faster', /^Sooner than .*: .* min, not 1 h/],
  ])('is said behind %j to %j', async (before, text, line) => {
    await asking.ask(before)
    const { command, headline } = await asking.ask(text)
    expect([command, headline]).toEqual(['time', expect.stringMatching(line)])
  })

  it('goes by the question before, where nothing is told anew', async () => {
    await asking.ask('3S 2100 lipo at 2.1 A, from storage, how long?')
    await asking.ask('and from flat')
    expect((await asking.ask('so twice as long?')).headline).toMatch(/^Longer than .* from storage/)
  })

  it('is told of two packs at once by their C-rate', async () => {
    const { headline } = await asking.ask('my mate has a 3s 2100, i have a 4s 2100, which one charges faster at 1c')
    expect(headline).toContain('the same time')
  })

  it('says nothing of times behind a refusal', async () => {
    await asking.ask('how long for 3s 1500 lipo at 1.5A')
    const { verdict, headline } = await asking.ask('is a 3s 1500 at 30A quicker')
    expect([verdict, headline]).toEqual(['do not charge', expect.not.stringMatching(/than for|same time/)])
  })
})

it('takes two of those for the pack that was spoken of, and never one full and one empty', async () => {
  await asking.ask('which current for a 3s 2400 lipo')
  expect((await asking.ask('and for two of them in parallel on one lead?')).verdict).toBe('go with care')
  await asking.ask('which current for a 3s 2400 lipo')
  expect((await asking.ask('two of them in parallel on one lead, one full and one empty')).verdict).toBe(
    'do not charge',
  )
})

describe('why', () => {
  it('opens the working of the answer before', async () => {
    const first = await asking.ask('how long for a 3s 2200 lipo at 2A from 3.7V')
    const reply = await asking.ask('why?')
    expect(reply.question).toBe(first.question)
    expect(first.working.length).toBeGreaterThan(0)
    expect(reply.headline).toContain(first.working[0])
  })

  it('goes by what the handbook was asked last', async () => {
    await asking.ask('how long for a 3s 2200 lipo at 2A from 3.7V')
    await asking.ask('what is a balance charge')
    expect((await asking.ask('but why')).command).toBe('handbook')
  })
})

describe('what is asked of the answer itself', () => {
  it('is its reasons, where somebody wonders what to think of it', async () => {
    const first = await asking.ask('how long for a 4s 1300 lipo at 1.3A')
    const reply = await asking.ask('is that a lot')
    expect(reply.question).toBe(first.question)
    expect(reply.headline).toContain(first.working[0])
  })

  it('is its first line, where it was too long', async () => {
    const first = await asking.ask('how long for a 4s 1300 lipo at 1.3A')
    const reply = await asking.ask('could you put that in plainer words please')
    expect([reply.question, reply.headline]).toEqual([first.question, first.lines[0]])
    expect(reply.verdict).toBe(first.verdict)
  })

  it.each([
    ['how do i get rid of an old pack', 'where would i take it', 'Old packs'],
    ['what is internal resistance', 'how do i measure it', 'Measuring internal resistance'],
    ['are lipo bags any good', 'and what else can i use', 'Bags, pots'],
  ])('goes on from what the handbook said of %j', async (before, text, title) => {
    await asking.ask(before)
    const reply = await asking.ask(text)
    expect([reply.command, reply.question?.toLowerCase()]).toEqual([
      'handbook',
      expect.stringContaining(title.toLowerCase()),
    ])
  })

  it('is judged where it tells how warm a pack is', async () => {
    await asking.ask('is it ok to charge outside in winter')
    expect((await asking.ask('ours read -4 degrees')).verdict).toBe('do not charge')
    await asking.ask('why does heat harm packs')
    expect((await asking.ask('mine reads 51 degrees')).verdict).toBe('do not charge')
  })

  it('is not what a new question asks', async () => {
    await asking.ask('what is internal resistance')
    expect((await asking.ask('is it normal that a pack is warm')).question).toContain('Warm while charging')
    expect((await asking.ask('what current for a 3s 1300 lipo')).command).toBe('current')
  })
})

it('that a lead was plugged in the other way round is a danger where nothing could change places', async () => {
  expect((await asking.ask('the other way round')).verdict).toBe('do not charge')
})

describe('what a reply offers', () => {
  it.each([
    ['lesson list', 'next', 'lesson read lesson: label'],
    ['lesson read lesson: label', 'Next.', 'lesson read lesson: label step: 2'],
    ['what amps for my 4s 1500 lipo', 'how long?', 'time pack: 4S 1500mAh LiPo current: 1.5A'],
  ])('below %j is taken up by %j', async (question, label, asked) => {
    await asking.ask(question)
    expect((await asking.ask(label)).question).toBe(asked)
  })

  it('is forgotten with the next reply', async () => {
    await asking.ask('lesson list')
    await asking.ask('what amps for my 4s 1500 lipo')
    expect((await asking.ask('next')).command).not.toBe('lesson read')
  })
})
