// Volts that a charge is to end at: refused above what the told cells take, read as the end of the charge elsewhere.

import { expect, it } from 'vitest'
import { bestCover, candidatesOf } from '../../../src/language/candidates/index.ts'
import { dangersIn } from '../../../src/language/dangers/index.ts'

// Full: LiPo 4.20 V, LiHV 4.35 V, LiFe 3.60 V (common practice), charged to 3.65 V by many.
it.each([
  ['3S 2200 LiPo, the cutoff is set to 4.23V', '3S 2200 LiPo, the cutoff is set to 4.22V'],
  ['cutoff 4.6V per cell for a 3S 2200 LiPo', 'cutoff 4.20V per cell for a 3S 2200 LiPo'],
  ['3S 2200 lipo, charger stops at 12.9V', '3S 2200 lipo, charger stops at 12.6V'],
  ['3S 650 LiHV until 13.2V', '3S 650 LiHV until 13.05V'],
  ['4S 2500 LiFe cut-off 3.7V per cell', '4S 2500 LiFe cut-off 3.65V per cell'],
  ['2S 450 ends at 8.8 V', '2S 450 ends at 8.7 V'],
  ['3S 2200 LiPo, terminate at 15V', '3S 2200 LiPo, do not terminate at 15V'],
  ['3S 2200 LiPo, cutoff 17.9V', '3S 2200 LiPo, cutoff 18.1V'],
  ['cutoff 4.38 V a cell, 3S', 'to extend its life I terminate at 4.10 V a cell, 3S'],
])('%s', (high, fine) => {
  const told = (text: string) => dangersIn(text).told.map(({ danger }) => danger)
  expect(told(high)).toContain('wrongMode')
  expect(told(fine)).not.toContain('wrongMode')
})

it.each([
  ['3S 650 LiHV cutoff 4.35V', 'until'],
  ['cut-off voltage: 12.6V', 'until'],
  ['the cutoff is 4.1V', 'until'],
  ['esc cutoff 10.5V', undefined],
])('%s', (text, cue) => {
  const volts = bestCover(candidatesOf(text)).find(({ kind }) => kind === 'state' || kind === 'voltage')
  expect(volts?.cue).toBe(cue)
})
