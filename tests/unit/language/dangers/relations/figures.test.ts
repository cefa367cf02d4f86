// What the numbers of a message amount to: each border from both sides, and which numbers count at all. The borders
// are common practice for the cells that are flown, with what a cheap meter is off.

import { expect, test } from 'vitest'
import { wordsOf } from '../../../../../src/language/dangers/engine/words.ts'
import { figuresIn } from '../../../../../src/language/dangers/relations/figures.ts'
import { valuesOf } from '../../../../../src/language/dangers/relations/values.ts'

const figuresOf = (text: string): readonly string[] => figuresIn(valuesOf(wordsOf(text)))

/** The last number that means the same in a sentence, the first that does not, and the name for what the last means. */
const borders: readonly (readonly [sentence: string, last: string, next: string, meaning: string])[] = [
  // Ruined, run down, empty, nearly so (a full LiFe), below storage, storage, in use, full, too full, no single cell.
  ['a cell at # V', '2', '2.01', 'cell_V 0'],
  ['a cell at # V', '2.9', '2.91', 'cell_V 1'],
  ['a cell at # V', '3.25', '3.26', 'cell_V 2'],
  ['a cell at # V', '3.6', '3.61', 'cell_V 3'],
  ['a cell at # V', '3.78', '3.79', 'cell_V 4'],
  ['a cell at # V', '3.9', '3.91', 'cell_V 5'],
  ['a cell at # V', '4.1', '4.11', 'cell_V 6'],
  ['a cell at # V', '4.21', '4.22', 'cell_V 7'],
  ['a cell at # V', '4.34', '4.35', 'cell_V 8'],
  ['a cell at # V', '4.69', '4.7', 'cell_V 9'],
  // As good as the same, fit for one board, apart.
  ['cells at 3.01, # and 3.02 V', '3.03', '3.05', 'apart_V 0'],
  ['cells at 3.01, # and 3.02 V', '3.1', '3.11', 'apart_V 1'],
  ['cells at 3.01, # and 3.02 V', '3.3', '3.32', 'apart_V 2'],
  // Gentle, for every pack, for many, what labels promise, what motors draw.
  ['charge at # C', '0.3', '0.31', 'rate_C 0'],
  ['charge at # C', '1.1', '1.11', 'rate_C 1'],
  ['charge at # C', '2.1', '2.11', 'rate_C 2'],
  ['charge at # C', '6', '6.1', 'rate_C 3'],
  ['charge at # C', '200', '201', 'rate_C 4'],
  ['500 mAh at # A', '0.15', '0.16', 'rate_C 0'],
  ['500 mAh at # A', '0.55', '0.56', 'rate_C 1'],
  ['500 mAh at # A', '3', '3.1', 'rate_C 3'],
  // Sooner than any pack, than most, fast, within the hour.
  ['full in # minutes', '6', '7', 'time_min 0'],
  ['full in # minutes', '12', '13', 'time_min 1'],
  ['full in # minutes', '25', '26', 'time_min 2'],
  ['full in # minutes', '59', '60', 'time_min 3'],
  // Frost, cold, usual, hot.
  ['it is # degrees here', '0', '1', 'air_C 0'],
  ['it is # degrees here', '5', '6', 'air_C 1'],
  ['it is # degrees here', '35', '36', 'air_C 2'],
  ['it is # degrees here', '45', '46', 'air_C 3'],
  // Empty, flown, storage, in use.
  ['it is at # %', '5', '6', 'percent 0'],
  ['it is at # %', '35', '36', 'percent 1'],
  ['it is at # %', '65', '66', 'percent 2'],
  ['it is at # %', '94', '95', 'percent 3'],
  // Of the label: half, less, as much, more.
  ['2000 mAh has taken # mAh', '1000', '1001', 'share 0'],
  ['2000 mAh has taken # mAh', '1940', '1941', 'share 1'],
  ['2000 mAh has taken # mAh', '2080', '2081', 'share 2'],
  ['2000 mAh has taken #', '3800', '3801', 'share 3'],
]

test.each(borders)('%s: %s means something else than %s', (sentence, last, next, meaning) => {
  const [name, range] = meaning.split(' ')
  const said = (number: string) => figuresOf(sentence.replace('#', number))
  expect(said(last)).toContain(meaning)
  expect(said(next)).not.toContain(meaning)
  const isHigher = borders.some(([, , , other]) => other === `${name} ${Number(range) + 1}`)
  if (isHigher) expect(said(next)).toContain(`${name} ${Number(range) + 1}`)
})

const counted: readonly (readonly [sentence: string, ...figures: string[]])[] = [
  ['the charger is on'],
  // Volts are of one cell, or shared among those of the pack; what no cell has is none.
  ['0.5 V'],
  ['0.51 V', 'cell_V 0'],
  ['reads 3.85', 'cell_V 5'],
  ['12.6 V'],
  ['3S 12.6 V', 'cell_V 7'],
  ['3S 12.6', 'cell_V 7'],
  ['3S 14.1 V'],
  ['6S 6 V'],
  ['6S 6.1 V', 'cell_V 0'],
  ['5 V'],
  ['4 packs'],
  ['4 V', 'cell_V 6'],
  ['one cell 3.80, one 3.80', 'cell_V 5', 'apart_V 0'],
  ['one cell 2.50, one 3.80', 'cell_V 1', 'cell_V 5', 'apart_V -1'],
  // Amps are fast for a capacity, and minutes and degrees are what they are.
  ['at 2 A'],
  ['2200 lipo at 2.2 A', 'of lipo', 'rate_C 1'],
  ['15 minutes at 20 degrees', 'time_min 2', 'air_C 2'],
  // What went in counts beside another number for the capacity.
  ['taken 3000 mAh'],
  ['500 W'],
  ['1000 mAh, taken 99'],
  ['1000 mAh, taken 100', 'share 0'],
  ['1000 mAh, taken 100.5'],
  ['1000 mAh, 1000 put in'],
  ['1000 mAh, 500 W', 'share 0'],
  ['1000 mAh, 500 V'],
  // The same twice is told once; another count or type is worth a figure of its own.
  ['3S, and a 3S'],
  ['3S, and a 4S', 'counts'],
  ['lipo, a lipo', 'of lipo'],
  ['life, a lipo', 'of life', 'of lipo', 'chemistries'],
]

test.each(counted)('%s: means this and nothing else', (sentence, ...figures) =>
  expect(figuresOf(sentence)).toEqual(figures),
)
