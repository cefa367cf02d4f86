// "A 4S 3000 made of two 4S 1500": one thing told twice, as a whole and by its parts.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'

/** Labels are rounded. */
const tolerance = 0.01

/** "Two 4S 1500", "2 packs of 4S 1500": how many parts there are. */
function countOf(part: Candidate, values: readonly Candidate[]): number {
  const before = values[values.indexOf(part) - 1]
  return part.pack?.count ?? (before?.kind === 'count' ? Number(before.text) : 1)
}

function isMadeOf({ pack: whole }: Candidate, { pack: part }: Candidate, count: number): boolean {
  const [whole_Ah, part_Ah] = [whole?.capacity_Ah ?? 0, part?.capacity_Ah ?? 0]
  const isAlike = part?.series === undefined || part.series === whole?.series
  return count > 1 && part_Ah > 0 && isAlike && Math.abs(whole_Ah - count * part_Ah) <= tolerance * whole_Ah
}

/** Where packs are listed the parts alone, for they are what is connected; elsewhere the whole alone. */
export function withoutMadeOf(values: readonly Candidate[], { options }: CommandWords): readonly Candidate[] {
  const wholeOf = (part: Candidate) => values.find(whole => isMadeOf(whole, part, countOf(part, values)))
  const part = values.find(wholeOf)
  const whole = part && wholeOf(part)
  if (!part || !whole) return values
  if (options.some(({ kind }) => kind === 'session packs')) return values.filter(value => value !== whole)
  const count = values[values.indexOf(part) - 1]
  return values.filter(value => value !== part && (value !== count || value.kind !== 'count'))
}
