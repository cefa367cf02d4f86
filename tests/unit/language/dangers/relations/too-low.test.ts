// Volts below what a cell bears, as people tell them. Common practice: LiPo is not run below 3.0 V a cell, Li-ion not
// below 2.5 V, LiFe not below 2.0 V, NiMH not below 0.9 V; a rule that refuses leaves a meter 0.1 to 0.2 V.

import { tooLow } from '../../../../../src/language/dangers/relations/volts.ts'
import { tells } from './tells.ts'

tells('each chemistry has its border', tooLow, 'tooLow', [
  ['a 3S at 2.79 V per cell', '2.79 V'],
  ['a 3S at 2.8 V per cell'],
  ['a lipo at 2.79 V per cell', '2.79 V'],
  ['a lipo at 2.8 V per cell'],
  ['a lihv at 2.79 V per cell', '2.79 V'],
  ['a lihv at 2.8 V per cell'],
  ['a liion at 2.39 V per cell', '2.39 V'],
  ['a liion at 2.4 V per cell'],
  ['a life at 1.89 V per cell', '1.89 V'],
  ['a life at 1.9 V per cell'],
  ['nimh at 0.69 V per cell', '0.69 V'],
  ['nimh at 0.7 V per cell'],
  ['pb at 0.1 V per cell'],
  // What a power bank holds is told at such volts, and no pack stands there.
  ['a 3S from a bank that says 12000 mAh at 5 V'],
  ['a 3S that says 5 V', '5 V'],
  // So little is a difference, and nothing at all is a cell that is gone.
  ['a lipo at 0.05 V per cell', '0.05 V'],
  ['a lipo at 0.04 V per cell'],
  ['a lipo at 0 V per cell', '0 V'],
  ['cell 2 reads 0.1 V', '0.1 V'],
  ['cell 2 reads 0.09 V'],
  ['cell 2 reads 0 V', '0 V'],
])

tells('only of a reading', tooLow, 'tooLow', [
  ['2 A per cell'],
  ['1 % per cell'],
  ['2.5 V. Each is there'],
  ['2.5 V, each of them', '2.5 V'],
  ['2.5 V each', '2.5 V'],
  ['2.5 per cell', '2.5'],
  ['cell 2 reads 2.5', '2.5'],
  ['cell 2 reads 2.00', '2.00'],
  ['cell 2 reads 2'],
  ['uh 2.5'],
  ['now 2.5'],
  ['uh 2.5 V'],
  ['now 2.5 V', '2.5 V'],
  ['shows uh uh uh uh 2.5', '2.5'],
  ['shows uh uh uh uh uh 2.5'],
  ['shows uh uh uh uh 2.5 V', '2.5 V'],
  ['shows uh uh uh uh uh 2.5 V'],
  ['forgot it and 2.5 V', '2.5 V'],
  ['cell 2 reads 2.5, and 8 mohm'],
  ['cell 2 reads 2.5 V, and 8 mohm', '2.5 V'],
  ['cell 2 reads 2.5 drop'],
  ['3 cell lipo at 1.5'],
  ['1 cell lipo at 1.5', '1.5'],
  ['the cell is at 1.5', '1.5'],
  ['supply at 2.5 V per cell'],
  ['supply on, 2.5 V per cell', '2.5 V'],
  ['supply uh uh uh 2.5 V per cell'],
  ['supply uh uh uh uh 2.5 V per cell', '2.5 V'],
  ['last year at 2.5 V per cell'],
  ['2.5 V per cell. It is gone'],
])

tells('shared among the cells of the pack', tooLow, 'tooLow', [
  ['3S 8.3 V in total', '8.3 V'],
  ['3S 8.5 V in total'],
  ['8.3 V in total'],
  ['my 3S shows 8.39 V', '8.39 V'],
  ['my 3S shows 8.4 V'],
  ['my 3S shows 8.3', '8.3'],
  ['my 3S shows 5.1', '5.1'],
  ['my 3S shows 5'],
  ['my 2S shows 5 V', '5 V'],
  ['my 2S shows 4.5 V', '4.5 V'],
  ['my 2S shows 4.5'],
  ['my 2S shows 4.4 V'],
  ['my 1S shows 4.5 V'],
  ['my 2S shows 5.2 V per cell'],
  ['my 2S shows 5 V per cell'],
  ['my 2S shows 4.9 V per cell'],
  // What a supply gives is no pack.
  ['my 4S shows 9 V'],
  ['my 4S shows 9.1 V', '9.1 V'],
  ['my 6S shows 13.8 V'],
  // Left on, without a count: volts that are too many for one cell are of two.
  ['forgot it, and 5.5 V', '5.5 V'],
  ['forgot it, and 5.6 V'],
  ['forgot it, and 4.4 V', '4.4 V'],
  ['forgot it, and 4.3 V'],
  ['it shows 5.5 V'],
  ['it shows 5.5, forgot it'],
  ['forgot the 1S, and 5.5 V'],
])

tells('in a list', tooLow, 'tooLow', [
  ['3.8 2.5 3.8', '2.5'],
  ['2.5 3.8', '2.5'],
  ['3.8 2.00', '2.00'],
  ['3.8 uh 2.5', '2.5'],
  ['3.8 uh uh 2.5'],
  ['2.5 uh uh 3.8'],
  ['3.8 2'],
  ['2.5 3'],
  ['2.5 1.5', '1.5'],
  ['2.5 1.6', '2.5'],

  ['2.5 4.4'],
  ['2.5 4.3', '2.5'],
  ['2.5 3.8 V'],
])

tells('not of how far cells lie apart', tooLow, 'tooLow', [
  ['cell 2 reads 1.5 V spread'],
  ['cell 2 reads 2.1 V spread', '2.1 V'],
  ['they differ, 1.99 V per cell'],
  ['they differ, 2 V per cell', '2 V'],
  ['the gap uh uh uh uh uh 1.5 V per cell'],
  ['the gap uh uh uh uh uh uh 1.5 V per cell', '1.5 V'],
])
