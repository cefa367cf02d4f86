// What people may write: values, options and sentences by the grammar, and then a few slips.

import fc from 'fast-check'
import { commands } from '../../commands/index.ts'
import { english } from '../../src/ground/locale.ts'
import { anyCharacter } from '../support/any-character.ts'
import { dangerWordings } from '../unit/language/danger-wordings.ts'

const oneOf = (...texts: string[]) => fc.constantFrom(...texts)
const joined = (...parts: fc.Arbitrary<string>[]) => fc.tuple(...parts).map(texts => texts.join(''))

const odd = oneOf(
  '',
  '0',
  '-1',
  '1,5',
  '1.234,5',
  '１２',
  '½',
  '٣',
  '1e9',
  '∞',
  '0x10',
  '1..2',
  '3/4',
  '1-2',
  '.5',
  'NaN',
)
const number = fc.oneof(
  { weight: 3, arbitrary: fc.nat(9999).map(String) },
  { weight: 3, arbitrary: fc.double({ min: 0, max: 100, noNaN: true }).map(value => value.toFixed(2)) },
  { weight: 1, arbitrary: odd },
)
const space = oneOf('', ' ', ' ', '\u00a0', '\u2009', '  ')
const unit = oneOf(
  ...[
    '',
    'mAh',
    'Ah',
    'A·h',
    'mA',
    'A',
    'V',
    'V per cell',
    'mV',
    'W',
    'Wh',
    'C',
    '°C',
    '°F',
    '%',
    'S',
    'P',
    's',
    'min',
  ],
  ...['h', 'h 20 min', 'mΩ', 'mohm', 'AWG', 'mm²', 'm', 'cm', 'kg', 'volts a cell'],
)
const quantity = joined(number, space, unit)
const chemistry = oneOf('LiPo', 'LiHV', 'Li-ion', 'LiFe', 'lipo', 'hv', 'NiMH', 'lead acid', 'sodium', '')
const series = oneOf('1S', '3S', '6S', '3s2p', '99S', '0S', '2 cell', '')
const pack = joined(
  series,
  space,
  fc.nat(6000).map(String),
  oneOf('', 'mAh', ' mah'),
  space,
  chemistry,
  space,
  oneOf('', '2C', '50C', 'swollen', 'at 3.7V', 'at 40%'),
)
const charger = joined(
  oneOf('0.5/1/2A', '0.1-5A by 0.1', '1A', '4/2/1A', '80W', ''),
  space,
  oneOf('', '1-4S', '80W', '10-26V'),
)
const source = oneOf(
  'PD 65W',
  'car',
  'car engine running',
  '12V 5A',
  'power bank 74Wh',
  '4S 5000 Li-ion',
  'solar 60W',
  '9V',
)
const anything = fc.string({ unit: anyCharacter, maxLength: 30 })

/** Values of any kind, fitting or not. */
export const someValue: fc.Arbitrary<string> = fc.oneof(
  quantity,
  pack,
  charger,
  source,
  fc.array(fc.oneof(pack, quantity), { minLength: 2, maxLength: 4 }).map(list => list.join('; ')),
  oneOf('full', 'storage', 'empty', 'yes', 'no', 'off', 'dead', 'wren', 'none', '', '🔋', '*', "'; drop table kit; --"),
  anything,
)

const notations = commands.map(({ name, takes }) =>
  fc
    .array(fc.tuple(oneOf(...Object.keys(takes), 'pack', 'nonesuch'), someValue), { maxLength: 4 })
    .map(options => [name, ...options.map(([option, value]) => `${option}: ${value}`)].join(' ')),
)
const asked = commands.flatMap(({ examples, words }) => [...examples, ...(words(english('.')).asks ?? [])])
const told = [...dangerWordings.values()].flat()
const wordsOfAll = [...new Set([...asked, ...told].flatMap(text => text.split(' ')))]
const sentence = fc.oneof(
  oneOf(...asked),
  oneOf(...told),
  fc
    .array(fc.oneof({ weight: 4, arbitrary: oneOf(...wordsOfAll) }, quantity, pack), { maxLength: 14 })
    .map(words => words.join(' ')),
)

type Slip = (text: string) => string
const at = fc.nat(400)
const slip: fc.Arbitrary<Slip> = fc.oneof(
  at.map(i => (text: string) => text.slice(0, i % (text.length + 1)) + text.slice((i % (text.length + 1)) + 1)),
  fc.tuple(at, anything).map(
    ([i, more]) =>
      (text: string) =>
        text.slice(0, i % (text.length + 1)) + more + text.slice(i % (text.length + 1)),
  ),
  fc.tuple(at, at).map(
    ([i, j]) =>
      (text: string) =>
        text.slice(i % (text.length + 1)) + text.slice(0, j % (text.length + 1)),
  ),
  fc.constant((text: string) => text.toUpperCase()),
  fc.constant((text: string) => text.replace(/\d/g, digit => String.fromCodePoint(0xff10 + Number(digit)))),
  fc.constant((text: string) => text.replaceAll(' ', '\n')),
  fc.constant((text: string) => text.replace(/[-']/g, '\u2019')),
  fc.integer({ min: 2, max: 40 }).map(times => (text: string) => `${text} `.repeat(times)),
)

/** A question in notation or in words, with up to three slips. */
export const someText: fc.Arbitrary<string> = fc
  .tuple(fc.oneof(...notations, ...Array.from({ length: 20 }, () => sentence)), fc.array(slip, { maxLength: 3 }))
  .map(([text, slips]) => slips.reduce((slipped, one) => one(slipped), text))

/** JSON with a part of it put out of shape. */
export function broken<T extends object>(whole: fc.Arbitrary<T>): fc.Arbitrary<unknown> {
  const value = fc.oneof(fc.jsonValue({ maxDepth: 2 }), anything, fc.constant(undefined))
  return fc.tuple(whole, fc.array(fc.tuple(fc.nat(60), value), { maxLength: 3 })).map(([one, changes]) => {
    const copy = structuredClone(one)
    for (const [which, put] of changes) {
      const places = placesIn(copy)
      const [holder, key] = places[which % places.length] ?? []
      if (holder && key !== undefined) holder[key] = put
    }
    return copy
  })
}

type Holder = Record<string, unknown>
function placesIn(value: unknown): (readonly [Holder, string])[] {
  if (typeof value !== 'object' || value === null) return []
  const holder = value as Holder
  return Object.keys(holder).flatMap(key => [[holder, key] as const, ...placesIn(holder[key])])
}
