// Cells in series and a chemistry, without a capacity.

import { expect, it } from 'vitest'
import { liFe, lihv, liIon, lipo } from '../../../src/charging/things/chemistries.ts'
import { readCellType, writeCellType } from '../../../src/language/things/cell-type.ts'
import { problemOf } from './problem-of.ts'

it.each([
  ['3s lipo', { chemistry: lipo, series: 3 }],
  ['LiHV 14S', { chemistry: lihv, series: 14 }],
  ['4 cell li-ion', { chemistry: liIon, series: 4 }],
  ['lifepo4', { chemistry: liFe }],
])('reads %j', (text, cells) => {
  const { value } = readCellType(text)
  expect(value).toEqual(cells)
  expect(readCellType(writeCellType(value)).value).toEqual(value)
})

it.each(['3s', '15S lipo', '0s lipo', '3s 720 lipo', 'nimh', ''])('refuses %j', text => {
  expect(problemOf(() => readCellType(text)).what).toContain('chemistry')
})
