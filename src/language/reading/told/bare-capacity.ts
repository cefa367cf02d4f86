// A capacity without its unit, or with a wrong one, where the pack has none else: "a 3S 2.2 lipo", "1300 milliamps", "2.2 mAh".

import type { Candidate } from '../../candidates/sentence/candidate.ts'
import { type PackTold, toldBy } from './told-pack.ts'

/** Between the parts of a pack stands a space or a sign at most. */
const mostBetween = 2
/** What people write, and what it is divided by to be Ah: labels print thousands of mAh, or a few Ah with decimals. */
const slips: readonly (readonly [ReadonlySet<Candidate['kind']>, RegExp, number])[] = [
  [new Set(['number', 'current', 'count', 'voltage']), /^(\d[.,]\d{1,2})$/, 1],
  [new Set(['current']), /^(\d{3,5}) ?m(?:a|illi ?amp\p{L}*)$/iu, 1000],
  [new Set(['capacity']), /^(\d{1,2}[.,]\d{1,2}) ?m.*h/i, 1],
]

/** A number right beside what was told of the pack, none that is to be set and none that volts could be. */
export function bareCapacity(values: readonly Candidate[], told: PackTold) {
  if (told.capacity_Ah !== undefined) return undefined
  const parts = values.filter(value => toldBy(value) !== undefined)
  for (const of of values) {
    const isOfPack = cues.test(of.cue ?? '') && parts.some(part => isBeside(part, of) || isBeside(of, part))
    for (const [kinds, form, per] of isOfPack ? slips : []) {
      const number = kinds.has(of.kind) ? form.exec(of.typed)?.[1] : undefined
      if (number) return { of, capacity_Ah: Number(number.replace(',', '.')) / per }
    }
  }
  return undefined
}

/** Before what a label says, and not before what is to be set. */
const cues = /^(?:|of|is|says?|reads?|and)$/

const isBeside = (one: Candidate, next: Candidate): boolean =>
  next.start >= one.end && next.start - one.end <= mostBetween
