// Readings cell by cell in a sentence: `3.82 3.83 3.79`, `3,82V, 3,83V and 3,79V`, `3.81 0 7.64`.

import type { Scanner } from '../scan/scanner.ts'

/** Two or more, the first of them one that a cell can have; not the steps of a charger. One alone is a level or a voltage. */
const cellVolts =
  /[2-4][.,]\d{2,3}(?:\/[2-4][.,]\d{2,3})+(?![\p{L}\d/]|[.,-]\d| ?(?:m?a|v|amps?|volts?|w)(?!\p{L}))|[2-4][.,]\d{1,3} ?v?(?:(?: ?[;|] ?|,? and |, ?| )(?:[0-9][.,]\d{1,3}|0(?=[ ,;?!]|$)) ?v?){1,13}(?![\p{L}\d]|[.,/-]\d| ?(?:m?a|amps?|m?ah|w)(?!\p{L}))/iuy

/** False, and not moved, where none stand. */
export const takeCellVolts = (scan: Scanner): boolean => scan.take(cellVolts) !== undefined
