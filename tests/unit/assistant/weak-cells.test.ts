// One cell of a pack is too low or lies apart, told in whatever words: nobody gets a go, and no volts are taken for amps.

import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, askingOf } from '../../support/ask.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
beforeEach(async () => {
  asking = await askingOf(commands)
})
afterEach(() => endFaultless(asking))

const tellings = [
  (low: string) => `2S 900 lipo, one cell 3.82 and the other ${low}, what current`,
  (low: string) => `3S 900 lipo: first cell 3.82, second 3.80, third one just ${low}. amps?`,
  (low: string) => `two cells at 3.8 and one at ${low} on a 3S 900 lipo, how long at 0.9A`,
  (low: string) => `4S 900 lipo, cell one is 3.81, two 3.80, three ${low}, four 3.79. what do I set`,
  (low: string) => `5S 900 lipo: four cells 3.9, last one ${low}, current please`,
  (low: string) => `2S 900 lihv, one cell sits at 3.9 volts, the other only at ${low}, what amps`,
]

describe('a weak cell among others', () => {
  it.each(tellings.flatMap(tell => ['3.3', '2.4', '1.90', '0.7'].map(tell)))('is no go: %s', async text => {
    const { verdict, readAs } = await asking.ask(text)
    expect([verdict, readAs]).toEqual(['do not charge', expect.stringContaining('cells')])
  })

  it.each(['is dead', 'reads nothing', 'shows zero', 'is completely gone'])(
    'that %s is spoken of first',
    async state => {
      const { verdict, headline } = await asking.ask(`3S 900 lipo, one cell ${state}, what current`)
      expect([verdict, headline]).toEqual(['go with care', expect.stringMatching(/^Do not charge before every cell/)])
    },
  )

  it.each([
    'no dead cells in my 3S 900 lipo, what current',
    'the 2S with the dead cell went to recycling, what current for a 3S 900 lipo',
    'cells are flat and firm, 3S 900 lipo, amps?',
  ])('is not heard in: %s', async text => {
    const { headline } = await asking.ask(text)
    expect(headline).toMatch(/^3S LiPo/)
  })

  it('is not a pack of so many cells, charged at so many amps', async () => {
    const { headline } = await asking.ask('charge a 3 cell lipo 900 at 0.7, how long')
    expect(headline).toMatch(/^It takes/)
  })
})

describe('volts that a meter shows', () => {
  it.each(['4S 900 lipo 18.1 volt on the meter what current', '3S 900 lipo, multimeter 13.4, amps?'])(
    'are where the pack stands, however odd: %s',
    async text => {
      const { verdict } = await asking.ask(text)
      expect(verdict ?? 'asked back').not.toMatch(/^go/)
    },
  )
})

describe('a pack that is to be full at once', () => {
  it.each(['charge my 3S 900 lipo in 10 min, how many amps', 'a 2S 450 lipo full in eight minutes, what amps'])(
    'is refused: %s',
    async text => expect((await asking.ask(text)).verdict).toBe('do not charge'),
  )

  it('is not what a display counts down', async () => {
    const { verdict } = await asking.ask('charger says full in 8 min, 3S 900 lipo at 0.9A, how long altogether')
    expect(verdict).not.toBe('do not charge')
  })
})

describe('a pack that is said to be empty beyond any level', () => {
  it.each([
    'a 3S 900 lipo at 0 %, what current',
    'my 3S 900 lipo is dead, how long at 0.9 A',
    'nothing left in my 3S 900 lipo, amps?',
    'how many 3S 900 lipo from a 4S 5000 li-ion, they are at zero percent',
  ])('is asked for its volts: %s', async text => {
    const { problem, verdict } = await asking.ask(text)
    expect([verdict, problem?.what]).toEqual([undefined, expect.stringContaining('the volts of its cells decide')])
  })

  it.each(['it is dead simple: 3S 900 lipo, amps?', 'slope was dead, 3S 900 lipo stands at 3.75 a cell, what current'])(
    'is none where that is said of something else: %s',
    async text => expect((await asking.ask(text)).question).toContain('3S 900mAh LiPo'),
  )
})
