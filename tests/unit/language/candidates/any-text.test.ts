import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plainText } from '../../../../src/ground/plain-text.ts'
import { bestCover, candidatesOf } from '../../../../src/language/candidates/index.ts'
import { anyCharacter } from '../../../support/any-character.ts'
import { cases } from '../../../support/cases.ts'

const piece = fc.constantFrom(
  ...'3S 2p 720 2.2 1,234 half a an hour and point two hundred mAh Ah A V W Wh C % mΩ °C lipo hv li-ion L i P o PD USB-C car battery engine off charger steps'.split(
    ' ',
  ),
  ...'full storage dead 0% landed from to at on by 3pm half past quarter 0.5/1/2/4A 9-20V 3.82 3.83 20V 5A 65W 1h20 / - , . : ; + @ ( ) 😀 שלום ٣ ² ½ \u202e \u0000 \ud800 ２．２Ａ'.split(
    ' ',
  ),
)
const someText = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 80 }),
  fc.string({ unit: anyCharacter, maxLength: 80 }),
  fc.array(piece, { maxLength: 20 }).map(pieces => pieces.join(' ')),
  fc.array(piece, { maxLength: 20 }).map(pieces => pieces.join('')),
)

describe('candidates of any text', () => {
  it('stand where they say, and a cover has none that overlap', () => {
    fc.assert(
      fc.property(someText, text => {
        const plain = plainText(text)
        const all = candidatesOf(text)
        for (const { start, end, typed, score } of all) {
          expect(end).toBeGreaterThan(start)
          expect(typed).toBe(plain.slice(start, end))
          expect(score).toBeGreaterThanOrEqual(0)
          expect(score).toBeLessThanOrEqual(1)
        }
        const cover = bestCover(all)
        cover.slice(1).forEach((candidate, at) => {
          expect(candidate.start).toBeGreaterThanOrEqual(cover[at]?.end ?? 0)
        })
      }),
      cases(2000),
    )
  })

  it.each([
    '😀'.repeat(10_000),
    '😀 שלום ３S '.repeat(400),
    '9'.repeat(20_000),
    '1.'.repeat(2000),
    '1/'.repeat(2000),
    'one '.repeat(1000),
    '3S '.repeat(1300),
    'l i '.repeat(1000),
    'half a '.repeat(600),
    '- '.repeat(2000),
    '12V '.repeat(1000),
  ])('reads through a long text without throwing (case %#)', text => {
    expect(bestCover(candidatesOf(text)).length).toBeGreaterThanOrEqual(0)
  })
})
