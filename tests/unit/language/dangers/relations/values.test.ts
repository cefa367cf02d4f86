// Which values stand in a sentence, at which words, and which of them is the pack's.

import { expect, test } from 'vitest'
import { wordsOf } from '../../../../../src/language/dangers/engine/words.ts'
import { capacityIn, chemistryIn, countIn, valuesOf } from '../../../../../src/language/dangers/relations/values.ts'

const valuesIn = (text: string) => valuesOf(wordsOf(text))

const read: readonly (readonly [text: string, ...values: string[]])[] = [
  ['3s', 'count 3 at 0-2'],
  ['a 24 cell pack', 'count 24 at 1-3'],
  ['25 cells', 'bare 25 at 0-1'],
  ['0 cells', 'bare 0 at 0-1'],
  ['1 cell', 'count 1 at 0-2'],
  ['2.5 s', 'bare 2.5 at 0-1'],
  ['three cells', 'count 3 at 0-2'],
  ['a single cell', 'count 1 at 1-3'],
  ['li-ion for longer life', 'chemistry liion at 0-2'],
  ['to extend its life'],
  ['its life pack', 'chemistry life at 1-2'],
  ['single pack'],
  ['three packs'],
  ['three amps'],
  ['ten minutes', 'minutes 10 at 0-2'],
  ['five pins', 'wires 5 at 0-2'],
  ['4 wires', 'wires 4 at 0-2'],
  ['11.1 V', 'volts 11.1 at 0-2'],
  ['11,1 volts', 'volts 11.1 at 0-2'],
  ['2. volts', 'bare 2 at 0-1'],
  ['3.7 a cell', 'volts 3.7 at 0-1'],
  ['3.7 a cells', 'volts 3.7 at 0-1'],
  ['3.7a cell', 'amps 3.7 at 0-2'],
  ['3.7 a, cell 2', 'amps 3.7 at 0-2', 'bare 2 at 3-4'],
  ['3.7 a cellar', 'amps 3.7 at 0-2'],
  ['3.7 a supercell', 'amps 3.7 at 0-2'],
  ['3.7 v cell', 'volts 3.7 at 0-2'],
  ['2 amps', 'amps 2 at 0-2'],
  ['2 amp hours', 'mAh 2000 at 0-3'],
  ['2 a h', 'mAh 2000 at 0-3'],
  ['2 amp hourly', 'amps 2 at 0-2'],
  ['2 amp ah', 'amps 2 at 0-2'],
  ['2 v h', 'volts 2 at 0-2'],
  ['500 ma', 'amps 0.5 at 0-2'],
  ['2.2 ah', 'mAh 2200 at 0-2'],
  ['850 mah', 'mAh 850 at 0-2'],
  ['2 C', 'rate 2 at 0-2'],
  ['80 %', 'percent 80 at 0-2'],
  ['minus 5 degrees', 'celsius -5 at 1-3'],
  ['minus 5 percent', 'percent 5 at 1-3'],
  ['about 5 degrees', 'celsius 5 at 1-3'],
  ['5 degrees', 'celsius 5 at 0-2'],
  ['lipo', 'chemistry lipo at 0-1'],
  ['my li po pack', 'chemistry lipo at 1-3'],
  ['l i p o', 'chemistry lipo at 0-4'],
  ['two lipos', 'chemistry lipo at 1-2'],
  ['lithium polymer', 'chemistry lipo at 0-2'],
  ['lihv and li-ion', 'chemistry lihv at 0-1', 'chemistry liion at 2-4'],
  ['lifepo4 or a123', 'chemistry life at 0-2', 'chemistry life at 3-5'],
  ['lion', 'chemistry liion at 0-1'],
  ['lithium iron', 'chemistry life at 0-2'],
  ['nimh, nicads and nicd', 'chemistry nickel at 0-1', 'chemistry nickel at 1-2', 'chemistry nickel at 3-4'],
  ['pb agm', 'chemistry lead at 0-1', 'chemistry lead at 1-2'],
  ['lead acid', 'chemistry lead at 0-2'],
  ['lead'],
  ['agms', 'chemistry lead at 0-1'],
  ['asgm'],
]

test.each(read)('%s', (text, ...values) => {
  const shown = valuesIn(text).map(
    ({ kind, value, chemistry, from, to }) => `${kind} ${chemistry ?? value} at ${from}-${to}`,
  )
  expect(shown).toEqual(values)
})

/** In mAh. */
const capacities: readonly (readonly [text: string, capacity: number | undefined])[] = [
  ['the pack of 850 mAh', 850],
  ['79 mAh', undefined],
  ['80 mAh', 80],
  ['30 Ah', 30000],
  ['30.001 Ah', undefined],
  ['60 mAh to spare in 850 mAh', 850],
  // Bare, it stands behind a count or right before a type.
  ['850 lipo', 850],
  ['850 of lipo', undefined],
  ['79 lipo', undefined],
  ['80 lipo', 80],
  ['3 A lipo', undefined],
  ['300 A lipo', undefined],
  ['3S 850', 850],
  ['3S of 850', 850],
  ['3S and then 850', undefined],
  ['3S 79', undefined],
  ['3S 300 W', 300],
  ['3S 300 V', undefined],
  ['3 A 850', undefined],
  ['850', undefined],
  ['3S', undefined],
  ['lipo', undefined],
  ['3S 850 or 1000 mAh', 1000],
]

test.each(capacities)('%s: a capacity of %s', (text, capacity) => expect(capacityIn(valuesIn(text))).toBe(capacity))

const counts: readonly (readonly [text: string, count: number | undefined])[] = [
  ['set to 2S, my 3S 850', 3],
  ['set to 2S, my 3S of 850', 3],
  ['set to 2S, my 3S with the 850', 2],
  ['set to 2S, my 3S 850 mAh', 3],
  ['set to 2S, my 3S lipo', 3],
  ['set to 2S, my 3S 80', 3],
  ['set to 2S, my 3S 79', 2],
  ['set to 2S, my 3S 500 A', 2],
  ['6 V 850, and 3S', 3],
  ['at 2 A with 3S', 3],
  ['850 lipo', undefined],
]

test.each(counts)('%s: %s cells', (text, count) => expect(countIn(valuesIn(text))).toBe(count))

const chemistries: readonly (readonly [text: string, chemistry: string | undefined])[] = [
  ['lihv mode, my 3S lipo', 'lipo'],
  ['lihv mode, my 3S old lipo', 'lipo'],
  ['lihv mode, my 3S very old lipo', 'lihv'],
  ['lihv mode, my 850 lipo', 'lipo'],
  ['lihv mode, my 850 mAh lipo', 'lipo'],
  ['lihv mode, my 3 A lipo', 'lihv'],
  ['lihv mode, 3S 850', 'lihv'],
  ['3S 850, lihv', 'lihv'],
  ['3S 850, mode of the lihv, or lipo', 'lihv'],
  ['3S 850', undefined],
]

test.each(chemistries)('%s: the pack is %s', (text, chemistry) => expect(chemistryIn(valuesIn(text))).toBe(chemistry))
