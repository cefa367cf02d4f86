// Dangers that show only together with what was asked before: a short message behind a question about a pack, a board or a supply.

import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, askingOf } from '../../support/ask.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
beforeEach(async () => {
  asking = await askingOf(commands)
})
afterEach(() => endFaultless(asking))

const verdictBehind = async (first: string, second: string) => {
  await asking.ask(first)
  return (await asking.ask(second)).verdict
}

describe('is refused', () => {
  it.each([
    // What the charger does or is set to, beside what the pack is.
    ['what current for my 4S 1400 lipo', 'the charger is set to 5S'],
    ['what current for my 4S 1400 lipo', 'set 5S'],
    ['what current for my 4S 1400 lipo', 'my charger only does LiFe, ok?'],
    ['amps for a 2S 1900 LiFe', 'the charger just knows lipo, 8.4 alright?'],
    ['what current for my 4S 1400 lipo', 'it has a lihv mode, can I use that'],
    // More gone in than the label says.
    ['what current for my 4S 1400 lipo', '1800 mAh went in'],
    ['what current for my 4S 1400 lipo', 'it took 1900'],
    ['what current for my 2S 700 lipo', 'it has taken 2500, its label says 2100, and it goes on'],
    ['into the 4S 2300 lipo went 1500 mAh, how empty was it', 'sorry, it was 2950'],
    // Volts above full, as a reading or as the end of a charge.
    ['what current for my 4S 1400 lipo', '17.4?'],
    ['cutoff for a 6S lipo', '27'],
    ['which end voltage has a 3S 2800 Li-ion', '13,2 is what I set'],
    // Others on the board.
    ['board of 5x 2S 500 lipo, amps', "one's a 3S"],
    ['six 6S 1400 lipo on the board, amps', 'one sits at 22.1, the rest are 25'],
    // Volts that the charger does not take.
    ['my charger takes 11 to 18 V, 60 W. is a 12 V 5 A supply enough', 'would a 24 V one do too?'],
    ['is a 19,5 V 90 W brick enough for a 4S 2100 lipo', 'the charger says input 11-15 V'],
    // Nobody stays, or it is not to be touched.
    ['what current for my 4S 1400 lipo', 'what about overnight'],
    ['4S 1400 lipo just landed, can I charge it', "can't even hold it, it's that hot"],
  ])('behind %j: %j', async (first, second) => {
    expect(await verdictBehind(first, second)).toBe('do not charge')
  })
})

describe('is said again to whoever asks why', () => {
  it.each([
    ['my lipo is on fire', /^Get away from it now/],
    ['my 4S 1400 lipo is puffed', /^Do not charge, discharge or fly it/],
  ])('behind %j', async (first, refused) => {
    await asking.ask(first)
    const { verdict, headline } = await asking.ask('why')
    expect([verdict, headline]).toEqual(['do not charge', expect.stringMatching(refused)])
  })
})

describe('is no reason to refuse', () => {
  it.each([
    ['what current for my 4S 1400 lipo', 'the charger is set to 4S'],
    ['what current for my 4S 1400 lipo', 'the charger does lipo and life, ok?'],
    ['what current for my 4S 1400 lipo', 'sorry, it is a 5S'],
    ['what current for my 4S 1400 lipo', 'it took 1000'],
    ['what current for my 4S 1400 lihv', '17.3?'],
    ['how long does a 3S 1300 lipo take at 1.3 A from half full', 'it has swallowed 610 mAh so far'],
    ['a 12 V 100 Ah lead battery, how many 6S 1400 lipo', 'its at 12.6 and steady'],
    ['my charger takes 11 to 18 V, 60 W. is a 12 V 5 A supply enough', 'would a 15 V one do too?'],
    ['charge a 4S 1400 lipo at 6 degrees', 'and at 18'],
  ])('behind %j: %j', async (first, second) => {
    expect(await verdictBehind(first, second)).not.toBe('do not charge')
  })
})
