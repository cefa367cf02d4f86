// "A 4S 3000 made of two 4S 1500": one thing told twice, as a whole and by its parts.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'

/** Labels are rounded. */
const tolerance = 0.01

const isMadeOf = (whole: Candidate['pack'], part: Candidate['pack']): boolean => {
  const { count = 1, capacity_Ah: part_Ah = 0 } = part ?? {}
  const { series, capacity_Ah: whole_Ah = 0 } = whole ?? {}
  return (
    count > 1 &&
    whole_Ah > 0 &&
    (part?.series ?? series) === series &&
    Math.abs(whole_Ah - count * part_Ah) <= tolerance * whole_Ah
  )
}

/** Where packs are listed the parts alone, for they are what is connected; elsewhere the whole alone. */
export function withoutMadeOf(values: readonly Candidate[], { options }: CommandWords): readonly Candidate[] {
  const part = values.find(({ pack }) => values.some(whole => isMadeOf(whole.pack, pack)))
  const whole = values.find(({ pack }) => part && isMadeOf(pack, part.pack))
  if (!part || !whole) return values
  if (options.some(({ kind }) => kind === 'session packs')) return values.filter(value => value !== whole)
  const count = values[values.indexOf(part) - 1]
  return values.filter(value => value !== part && (value !== count || value.kind !== 'count'))
}
