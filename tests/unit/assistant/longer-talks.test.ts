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
  ])('%s', async (_, turns, question) => {
    expect(await lastOf(turns)).toMatch(question)
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
