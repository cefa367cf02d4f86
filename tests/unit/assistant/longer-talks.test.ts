// Conversations of several turns: what is told bit by bit, gone back to, counted anew, or asked of the same things.

import { beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, askingOf } from '../../support/ask.ts'

let asking: Asking
beforeEach(async () => {
  asking = await askingOf(commands)
})

/** The canonical text of the last question, without what was only assumed. */
async function lastOf(turns: readonly string[]): Promise<string> {
  let question = ''
  for (const turn of turns) {
    const reply = await asking.ask(turn)
    question = reply.question ?? `${reply.command}?`
  }
  return question.replace(/ told: .*$/, '')
}

describe('a conversation', () => {
  it.each([
    [
      'of a pack told in parts',
      ['how do i charge my 5s', 'it has 1800 mah', 'and 30% are left'],
      /^current pack: 5S 1800mAh LiPo from: 30%$/,
    ],
    [
      'of a source alone, then a pack',
      ['i have a 12v 6a supply', '4s 1300 at 1C'],
      /12V 6A.*pack: 4S 1300mAh LiPo|pack: 4S 1300mAh LiPo.*12V 6A/,
    ],
    [
      'of a source told in parts',
      ['4s 1300 off a 6s 5000', 'with the generator instead', '800 W'],
      /source: mains 800W/,
    ],
    ['of a bank by its bare mAh', ['how many 3s 850 from a powerbank', '20000 mah', 'and 10000?'], /power bank 37Wh/],
    [
      'of alike packs in another size',
      ['4x 4s 1500 in parallel', 'and with 2200s'],
      /^parallel packs: 4x 4S 2200mAh LiPo$/,
    ],
    [
      'of which one is another',
      ['4x 4s 1500 in parallel', 'one of them is 1300'],
      /4S 1300mAh LiPo; 3x 4S 1500mAh LiPo/,
    ],
    [
      'that asks how long of a discharge',
      ['storage for a 6s 1300 that is full', 'how long does that take'],
      /^storage /,
    ],
    ['that asks how long of a board', ['6 4s 1300 on a board', 'how long'], /^parallel /],
    ['of half of what was answered', ['what amps for 4s 1500', 'half the current'], /current: 0.75A/],
    ['of half a length', ['lead for 30A 1.5 m', 'half the length'], /length: 0.75m/],
    [
      'of what a plan sets each pack to',
      ['3 packs 4s 1300, 2 chargers 200W, ready when', 'at 2A'],
      /3x 4S 1300mAh LiPo at 2A/,
    ],
    [
      'that asks for another thing by a level',
      ['what amps for 4s 1300', 'storage for 6s 1100'],
      /^storage pack: 6S 1100mAh LiPo$/,
    ],
    [
      'that puts numbers to the handbook',
      ['what do you mean by storage voltage', 'and for a 3s'],
      /^storage .*3S LiPo$/,
    ],
    [
      'of the car in place of a pack',
      ['charge 4s 1500 off a 6s 5000', 'from the car instead', '10A'],
      /source: car 10A/,
    ],
    [
      'that goes back to a pack by a word',
      ['amps for the 2S 1900 LiFe receiver pack', 'and a 3S 1700 lipo', 'back to the receiver pack: how long'],
      /^time pack: 2S 1900mAh LiFe$/,
    ],
    [
      'that goes back to a pack by its cells',
      ['amps for a 4s 1500 lipo', 'and a 6s 5000 lihv', 'good. now the 4S again, how long'],
      /^time pack: 4S 1500mAh LiPo$/,
    ],
    [
      'that goes back past a word of thanks',
      ['how long for my glider pack, 3S 2100 lipo', 'thanks', 'and a 6S 4000', 'back to the glider one, and at 1A'],
      /^time pack: 3S 2100mAh LiPo current: 1A$/,
    ],
    [
      'of both packs',
      ['what amps for a 3s 1300 lipo', 'and a 4s 1500', 'how long for both'],
      /^plan packs: 3S 1300mAh LiPo; 4S 1500mAh LiPo$/,
    ],
    [
      'of both packs in Wh',
      ['storage for 3s 1100 lipo', 'and a 6s 4000', 'watt hours of both'],
      /^energy packs: 3S 1100mAh LiPo; 6S 4000mAh LiPo$/,
    ],
    [
      'of packs in turn, and when they are done',
      [
        'Three 4S 1400, 1.4 A, one after the other. How long?',
        'it is 16:30 and the sun is off the panel at 19:00, do they make it',
      ],
      /^plan packs: 3x 4S 1400mAh LiPo .*start: 16:30 ready: 19:00$/,
    ],
    [
      'of the lot',
      ['3s 2100 and 4s 1400, two ports. amps?', 'how long is that for the lot'],
      /^plan packs: 3S 2100mAh LiPo; 4S 1400mAh LiPo ports: 2$/,
    ],
    [
      'that adds a pack with a current of its own',
      [
        'two outlets: 3S 2100 with 2,1 A and 4S 3200 with 3,2 A. How long?',
        'and a 6S 4800 with 2,4 A also, on a third outlet',
      ],
      /^plan packs: 3S 2100mAh LiPo at 2.1A; 4S 3200mAh LiPo at 3.2A; 6S 4800mAh LiPo at 2.4A ports: 3$/,
    ],
    [
      'that adds a pack to a plan',
      ['plan for 4S 1400 at 1.4A and 6S 1200 at 1.2 A on a dual charger', 'add a 3S 2100 at 1 A'],
      /packs: 4S 1400mAh LiPo at 1.4A; 6S 1200mAh LiPo at 1.2A; 3S 2100mAh LiPo at 1A ports: 2$/,
    ],
    ['of which is first', ['6S 3100 and 4S 1400, one charger. how long', 'and which should I do first'], /^plan /],
    [
      'of some of the packs and the rest',
      ['5 packs of 4S 1400, parallel board takes 6, current?', 'and if two are at 3.7 and the rest at 3.8'],
      /^parallel packs: 2x 4S 1400mAh LiPo at 3.7V per cell; 3x 4S 1400mAh LiPo at 3.8V per cell places: 6$/,
    ],
    [
      'of another source, which is emptied so far and no further',
      ['how many 4s 1400 lipo from a 300Wh station', 'and from the 90 Ah AGM, down to half'],
      /^source source: deep-cycle battery 30A 90Ah pack: 4S 1400mAh LiPo leave: 50%$/,
    ],
    [
      'of a battery to a share of it',
      ['how many 6s 1100 lipo from a 50 Ah AGM', 'and with my 20 Ah LiFePO4, to 10 %'],
      /^source source: 4S 20000mAh LiFe pack: 6S 1100mAh LiPo leave: 10%$/,
    ],
    ['of a goal behind the source', ['how many 4s 1400 lipo from a 90 Ah AGM to full'], / to: full$/],
    ['of a faster charge', ['amps for a 4s 1400 lipo', 'can it be charged faster'], /^current .* current: 2.8A$/],
    [
      'of how many it charges',
      ['how many 6S 4800 lipo from a 12.8V 90Ah LiFe box', 'how many if I leave 20%'],
      /^source .*90000mAh LiFe/,
    ],
    ['of where an answer comes from', ['4S 1400 lipo how long', 'where do you get that from?'], /^time /],
    [
      'of several at once',
      ['5S 3600 lipo is down to 15 %', 'ok so amps, end voltage, and how long please'],
      /^current pack: 5S 3600mAh LiPo/,
    ],
    ['of which cell it is', ['cells of my 4s: 4.18 4.19 4.05 4.18', 'so which is weak'], /^cells .*4.05V/],
    [
      'of which resistance it is',
      ['4S 4800 lipo has 28 31 64 10 mohm', 'which one is the bad one'],
      /^health .*28mΩ 31mΩ 64mΩ 10mΩ$/,
    ],
  ])('%s', async (_, turns, question) => {
    expect(await lastOf(turns)).toMatch(question)
  })

  it('keeps what was told of the pack that it goes back to', async () => {
    await asking.ask('my 3s 1300 lipo, its puffed')
    await asking.ask('amps for a 4s 1500 lipo')
    expect((await asking.ask('back to the 3s, how many amps')).verdict).toBe('do not charge')
  })

  it('keeps that cells lie far apart, until they are measured anew', async () => {
    await asking.ask('cells of my 3S 1300 lipo are 3.84 3.83 3.58')
    expect((await asking.ask('what amps for it')).headline).toMatch(/cells are far apart/)
    expect((await asking.ask('how many amps for a 2S 450 lipo')).verdict).not.toBe('do not charge')
    await asking.ask('I measured the 3S again: 3.83 each')
    expect((await asking.ask('amps for the 3S 1300 lipo')).verdict).toBe('go with care')
  })

  it('names the cell that is lowest where it refuses', async () => {
    expect((await asking.ask('3S pack reads 3.81 3.82 3.60')).headline).toContain('cell 3 is lowest at 3.60 V')
  })

  it.each([
    [['amps for a 2S 900 lipo', 'can i charge both with my 6s 3900 at the same time on one port'], 'do not charge'],
    [
      ['amps for my 4s 1200 lipo', 'i am off to work, it can run meanwhile, right?', 'and at half the current?'],
      'do not charge',
    ],
    [['amps for 3s 700 lihv', 'and 2s 400 lipo', 'both on one board?'], 'do not charge'],
    [['can i charge a 4S 4800 lipo from my car', 'and with the engine running'], 'go with care'],
    [['can i charge a 4S 4800 lipo from my car', 'and with the engine running in the garage'], 'do not charge'],
  ])('judges what it comes to: %j', async (turns, verdict) => {
    for (const turn of turns.slice(0, -1)) await asking.ask(turn)
    expect((await asking.ask(turns.at(-1) ?? '')).verdict).toBe(verdict)
  })

  it('tells who may change what, behind a change that was refused', async () => {
    await asking.ask('set our max to 1C')
    expect((await asking.ask('who can do that')).question?.toLowerCase()).toContain('who may change what')
  })

  it('says why, behind a refusal in words', async () => {
    await asking.ask('can i charge it with the balance lead off')
    const { headline, problem } = await asking.ask('why not')
    expect(problem).toBeUndefined()
    expect(headline).toMatch(/cell/)
  })
})
