// Volts that a lead may take are a limit, those that it takes now tell of no feed, and a pack's are neither.

import { expect, it } from 'vitest'
import { bestCover, candidatesOf } from '../../../../src/language/candidates/index.ts'

const drops = (text: string) =>
  bestCover(candidatesOf(text)).flatMap(({ kind, text: value, typed }) =>
    /\bvolt|V\b|%/.test(typed) ? [`${kind} ${value}`.trim()] : [],
  )

it.each([
  ['what wire for 10 A over 3 m if it may drop half a volt', ['drop 0.5V']],
  ['12 V feed, 15 A, 5 m lead, drop at most 0.5 V', ['voltage 12V', 'drop 0.5V']],
  ['24 V 10 A 6 m cable, no more than 2 % loss', ['source 24V 10A', 'drop 2%']],
  ['is 14 awg enough for 12 A over 2 m with a drop under 0.4 V', ['drop 0.4V']],
  ['lead drops half a volt over the loop at 12 A, 3 m long, which wire', ['number']],
  ['2 m lead, 8 A, 12 V battery, I lose 0.6 V', ['source lead battery', 'number']],
  ['the pack drops to 3.2 V with this lead', ['state 3.2V']],
])('"%s"', (text, values) => expect(drops(text)).toEqual(values))
