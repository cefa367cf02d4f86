// "A 3S 2.2 lipo": the capacity in Ah without its unit, where the pack has none else.

import type { Candidate } from '../../candidates/sentence/candidate.ts'
import { type PackTold, toldBy } from './told-pack.ts'

/** Between the parts of a pack stands a space or a sign at most. */
const mostBetween = 2
const bareAh = /^\d[.,]\d{1,2}$/
const plain: ReadonlySet<Candidate['kind']> = new Set(['number', 'current', 'count', 'voltage'])

/** A number with decimals right beside what was told of the pack, none that is to be set and none that volts could be. */
export function bareCapacity(values: readonly Candidate[], told: PackTold) {
  if (told.capacity_Ah !== undefined) return undefined
  const parts = values.filter(value => toldBy(value) !== undefined)
  const of = values.find(
    value =>
      plain.has(value.kind) &&
      value.cue === undefined &&
      bareAh.test(value.typed) &&
      parts.some(part => isBeside(part, value) || isBeside(value, part)),
  )
  return of && { of, capacity_Ah: Number(of.typed.replace(',', '.')) }
}

const isBeside = (one: Candidate, next: Candidate): boolean =>
  next.start >= one.end && next.start - one.end <= mostBetween
