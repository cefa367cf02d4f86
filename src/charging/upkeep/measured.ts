// What a note of a charge measured, beside what each of the cells that the pack may be made of would give.

import type { ChargeRequest } from '../simulation/charge.ts'
import { membersOf } from '../simulation/members.ts'
import { quickCharge } from '../simulation/quick-charge.ts'
import type { Traits } from '../things/learned.ts'
import type { Pack } from '../things/pack.ts'
import { type ChargeNote, resistanceReading } from './charge-note.ts'

/** Older charges tell of an older pack. */
const mostNotes = 6
/** Each is believed so much less than the one after it. */
const olderTimes = 1.2
/** A smaller share of the label says too little. */
const leastShare = 0.2
/** Two of three measured values lie within such a share of what the right cell would give; reading ohms is rougher. */
const noise = { charge: 0.008, cutoff: 0.012, duration: 0.008, reading: 0.15 } as const
/** Times are noted to about this. */
const clock_s = 15

/** One measured value, as a logarithm. */
export interface Measured {
  readonly of: keyof typeof noise
  /** What each cell would give. */
  readonly predicted: Float64Array
  readonly noted: number
  readonly noise: number
}

/** A note that tells something, and the charge that it tells of. */
export interface Telling {
  /** Among the notes of the pack. */
  readonly index: number
  readonly pack: Pack
  readonly note: ChargeNote
  readonly request: ChargeRequest | undefined
}

/** The last notes that say something of the cells, in order of time. */
export const tellingNotes = (pack: Pack, notes: readonly ChargeNote[]): readonly Telling[] =>
  notes
    .map((note, index) => ({ index, pack, note, request: requestOf(pack, note) }))
    .filter(({ note, request }) => request !== undefined || note.cells_ohm !== undefined)
    .slice(-mostNotes)

/** The charge that a note tells of; undefined where it tells too little of it. */
function requestOf(pack: Pack, note: ChargeNote): ChargeRequest | undefined {
  const { from, to, charge_Ah } = note
  if (!from || charge_Ah < leastShare * pack.capacity_Ah) return undefined
  const cutoffPerCell_V = pack.chemistry.full_V.value
  return {
    pack,
    current_A: note.current_A ?? pack.chemistry.recommendedRate_C.value * pack.capacity_Ah,
    from,
    target: to.kind === 'soc' ? { ...to, cutoffPerCell_V } : { kind: 'voltage', perCell_V: to.perCell_V },
    ...(note.termination_A !== undefined && { termination_A: note.termination_A }),
    ...(note.temperature_C !== undefined && { temperature_C: note.temperature_C }),
  }
}

/** What a note measured, for cells of such traits; it is believed the less the more notes came after it. */
export function measuredIn({ index, pack, note, request }: Telling, traits: readonly Traits[], later = 0): Measured[] {
  const measured: Measured[] = []
  const add = (of: Measured['of'], noted: number | undefined, predicted: ArrayLike<number>, also = 0) => {
    if (noted === undefined) return
    const width = Math.hypot(noise[of], also) * olderTimes ** later
    measured.push({ of, predicted: Float64Array.from(predicted, Math.log), noted: Math.log(noted), noise: width })
  }
  if (request) {
    const learned = { pack, traits, charges: 1, rates_C: [1], odd: [] }
    const members = membersOf({ ...request, learned }, traits, index + 1)
    const runs = members.map(({ cell, law }) => quickCharge(cell, law))
    // A charger counts with its own ammeter: what it sets and what it counts are off alike.
    const counted = members.map(({ law }, at) => ((runs[at]?.charge_Ah ?? 0) * request.current_A) / law.current_A)
    add('charge', note.charge_Ah, counted)
    const timed = (of: 'cutoff' | 'duration', noted_s: number | undefined, key: 'timeToCutoff_s' | 'duration_s') =>
      add(
        of,
        noted_s,
        runs.map(run => Math.max(1, run[key])),
        clock_s / (noted_s ?? 1),
      )
    if (note.current_A !== undefined) {
      timed('cutoff', note.timeToCutoff_s, 'timeToCutoff_s')
      timed('duration', note.duration_s, 'duration_s')
    }
  }
  const reading_ohm = resistanceReading(note)
  if (reading_ohm !== undefined) {
    const atOnce = traits.map(one => one.atOnce_ohmAh)
    add('reading', reading_ohm * pack.capacity_Ah, atOnce)
  }
  return measured
}
