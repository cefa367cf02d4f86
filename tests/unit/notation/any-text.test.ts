import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plainText } from '../../../src/ground/plain-text.ts'
import { attempt, Problem } from '../../../src/ground/problem.ts'
import { readChemistry } from '../../../src/language/parts/chemistry.ts'
import { readDuration } from '../../../src/language/quantities/duration.ts'
import * as quantities from '../../../src/language/quantities/quantities.ts'
import { readTyped } from '../../../src/language/sentence/typed.ts'
import { readCharger, writeCharger } from '../../../src/language/things/charger.ts'
import { readPack, writePack } from '../../../src/language/things/pack.ts'
import { readSource, writeSource } from '../../../src/language/things/source.ts'
import { readState, readTarget, writeLevel } from '../../../src/language/things/state.ts'
import { anyCharacter } from '../../support/any-character.ts'
import { cases, partOf } from '../../support/cases.ts'
import { vocabulary } from './vocabulary.ts'

const pack = readPack('3S 720mAh LiHV').value

const readers: Record<string, (text: string) => unknown> = {
  pack: readPack,
  charger: readCharger,
  source: readSource,
  chemistry: readChemistry,
  state: text => readState(text, pack),
  target: text => readTarget(text, pack),
  duration: readDuration,
  count: text => quantities.readCount(text),
  gauge: quantities.readGauge,
  current: text => quantities.readCurrent(text),
  voltage: text => quantities.readVoltage(text),
  capacity: text => quantities.readCapacity(text),
  resistance: text => quantities.readResistance(text),
  temperature: text => quantities.readTemperature(text),
  percent: text => quantities.readPercent(text),
  rate: text => quantities.readRate(text),
  length: text => quantities.readLength(text),
  mass: text => quantities.readMass(text),
  question: text => readTyped(text, vocabulary) ?? 'a plain sentence',
}

/** Pieces that the grammar knows, so that random texts get deep into it. */
const piece = fc.constantFrom(
  ...'3S 99S 0S 1P 720 2.2 1,234 -5 1e308 NaN 0x1F Infinity mAh Ah A V W Wh C % mΩ °C lipo hv li-ion PD USB car power bank engine off charge by'.split(
    ' ',
  ),
  ...'full storage empty from to at on how long what current pack: time source: balance 0.5/1/2/4A 9-20V 1-4S 4.20/4.35V 20V 5A 65W 74Wh 3.7V 20% 1h20 / - , . : ; + @ ( ) 😀 שלום ٣ ² ½ \u202e \u0000 \ud800'.split(
    ' ',
  ),
)
const someText = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 60 }),
  fc.string({ unit: anyCharacter, maxLength: 60 }),
  fc.array(piece, { maxLength: 14 }).map(pieces => pieces.join(' ')),
  fc.array(piece, { maxLength: 14 }).map(pieces => pieces.join('')),
)

function expectValueOrProblem(read: (text: string) => unknown, text: string): void {
  try {
    const value = read(text)
    if (typeof value === 'number') expect(value).toSatisfy(Number.isFinite)
    else expect(value).toBeTruthy()
  } catch (error) {
    if (!(error instanceof Problem)) throw error
    const { what, token, expected, example } = error.details
    expect(what.length).toBeGreaterThan(10)
    expect(what.length).toBeLessThan(200)
    expect(expected).toBeTruthy()
    expect(example).toBeTruthy()
    if (text.length <= 4000 && plainText(text) === '') expect(token).toBeUndefined()
    else {
      expect(token).toBeTruthy()
      expect(token?.length).toBeLessThan(100)
    }
  }
}

describe.each(Object.entries(readers))('any text read as %s', (_, read) => {
  it('gives a value or a problem that names the token', () => {
    fc.assert(
      fc.property(someText, text => {
        expectValueOrProblem(read, text)
      }),
      cases(1000),
    )
  })

  it.each(['3S '.repeat(7000), '9'.repeat(20_000), '1.'.repeat(10_000), '😀'.repeat(10_000), 'שלום '.repeat(4000)])(
    'refuses 20,000 characters (case %#)',
    text => {
      expect(() => read(text)).toThrow(Problem)
    },
  )

  it.each([
    '9'.repeat(3900),
    '1.'.repeat(1950),
    '1/'.repeat(1950),
    '3S '.repeat(1300),
    'a:'.repeat(1900),
    '- '.repeat(1900),
    '0.5,'.repeat(900),
  ])('reads through a long text (case %#)', text => {
    expectValueOrProblem(read, text)
  })
})

describe('whatever was read', () => {
  type Written = [string, (text: string) => { value: unknown }, (value: never) => string, string]
  const again: Written[] = [
    ['pack', readPack, writePack, '3S|2s2p|14 cells|720|0,72 Ah|59999.9mAh|lihv|li-ion|life|2C|8C charge|45C|6mΩ|8Wh'],
    [
      'charger',
      readCharger,
      writeCharger,
      '1/2A|0.3, 0.5 or 1 A|0.1-10A|0.05-1A by 0.05|80W|1-4S|6S|2S+|9-20V|up to 28V|9V+|85%|balance 0.3A|needs balance lead|4.20/4.35V',
    ],
    [
      'source',
      readSource,
      writeSource,
      'PD 65W|usb-c|65.5W|USB|5V 2A|12V 120W|5V 3A, 9V 2A|2A|car|engine off|12.6V|60Ah|power bank|74Wh|20000mAh|4S 5000 li-ion',
    ],
    [
      'state',
      text => readState(text, pack),
      writeLevel,
      '3.7V|11.1V|3,85|20%|12.345%|full|storage|empty|per cell|pack',
    ],
  ]

  it.each(again)('%s: is written so that it reads the same', (_, read, write, words) => {
    let readable = 0
    const text = fc.shuffledSubarray(words.split('|'), { minLength: 1, maxLength: 5 }).map(some => some.join(' '))
    fc.assert(
      fc.property(text, text => {
        const first = attempt(() => read(text))
        if (!first) return
        readable += 1
        expect(read(write(first.value as never))).toEqual({ value: first.value, assumed: [] })
      }),
      cases(4000),
    )
    expect(readable).toBeGreaterThan(partOf(100))
  })
})
