// What is said of a pack that its own log knows better than its label.

import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'

interface Told {
  readonly capacity_Ah: number | undefined
  readonly cell_ohm: number | undefined
}

export function recalledWords(
  name: string,
  { capacity_Ah, cell_ohm }: Told,
  { say, show, own }: Locale,
): Text | undefined {
  const holds = capacity_Ah === undefined ? undefined : say`it holds ${show.capacity(capacity_Ah)}`
  const has = cell_ohm === undefined ? undefined : say`a cell has ${show.resistance(cell_ohm)}`
  if (holds && has) return say`by the log of ${own(name)} ${holds} and ${has}`
  const told = holds ?? has
  return told && say`by the log of ${own(name)} ${told}`
}

export const retireWords = (name: string, { say, own }: Locale): Text =>
  say`the log of ${own(name)} says to retire it: ${own(`"log show name: ${name}"`)} tells why`
