// What a pack's own charges tell of its cells: each of those that it may be made of is bent towards what was measured.

import { drawCount, draws } from '../simulation/design.ts'
import { likelyTraits, possibleTraits } from '../simulation/traits.ts'
import type { Learned, Traits } from '../things/learned.ts'
import type { Pack } from '../things/pack.ts'
import type { ChargeNote } from './charge-note.ts'
import { type Measured, measuredIn, type Telling, tellingNotes } from './measured.ts'
import { oddAmong } from './odd-notes.ts'

/** The step to what was measured is made in so many parts, as it is straight only for a little way. */
const rounds = 8
const usual_C = 25

/** What the charges noted of a pack, in order of time, have told of its cells; undefined where they tell nothing. */
export function learn(pack: Pack, notes: readonly ChargeNote[]): Learned | undefined {
  const all = tellingNotes(pack, notes)
  const odd = oddAmong(all, likelyTraits(pack, usual_C))
  const telling = all.filter(({ index }) => !odd.includes(index))
  if (telling.length === 0) return undefined
  let traits = possibleTraits(pack, usual_C)
  for (let round = 0; round < rounds; round++) {
    const measured = telling.flatMap((one, at) => measuredIn(one, traits, telling.length - 1 - at))
    traits = bent(traits, measured, round)
  }
  return { pack, traits, charges: telling.length, rates_C: ratesOf(pack, telling), odd }
}

function ratesOf({ capacity_Ah, chemistry }: Pack, telling: readonly Telling[]): readonly number[] {
  const rates_C = telling.flatMap(({ note }) => (note.current_A ? [note.current_A / capacity_Ah] : []))
  return rates_C.length > 0 ? rates_C : [chemistry.recommendedRate_C.value]
}

const keys = ['share', 'atOnce_ohmAh', 'diffusion_h'] as const satisfies readonly (keyof Traits)[]

/**
 * Bends the traits of all cells towards what was measured, one value after the other: each cell by what it is off, as far
 * as trait and value go together over the cells (an ensemble Kalman smoother in parts: Emerick and Reynolds 2013, with
 * the noise of each measured value drawn anew for each cell in each part, as drawn once it would count several times).
 */
function bent(traits: readonly Traits[], measured: readonly Measured[], round: number): readonly Traits[] {
  const logs = keys.map(key => Float64Array.from(traits, one => Math.log(one[key])))
  const rows = [...logs, ...measured.map(({ predicted }) => predicted)]
  for (const [at, { predicted, noted, noise }] of measured.entries()) {
    const width = noise * Math.sqrt(rounds)
    const off = predicted.map((one, index) => noted + width * drawAt(index, at, round) - one)
    const own = covariance(predicted, predicted) + width ** 2
    const gains = rows.map(row => covariance(row, predicted) / own)
    for (const [which, row] of rows.entries())
      for (let index = 0; index < row.length; index++)
        row[index] = (row[index] as number) + (gains[which] as number) * (off[index] as number)
  }
  return traits.map((_, index) => {
    const value = (which: number) => Math.exp((logs[which] as Float64Array)[index] as number)
    return { share: value(0), atOnce_ohmAh: value(1), diffusion_h: value(2) }
  })
}

/** A standard normal number for each cell, value and part: from the design, in another order for each. */
function drawAt(index: number, at: number, round: number): number {
  const shuffled = (index * (2 * round + 1) + 29 * (at + 1) + 11 * round) % drawCount
  return (draws[shuffled] as (typeof draws)[number])[(at + 5 * round) % 12] as number
}

function covariance(one: Float64Array, other: Float64Array): number {
  let [sum1, sum2, sum12] = [0, 0, 0]
  for (let index = 0; index < one.length; index++) {
    const [first, second] = [one[index] as number, other[index] as number]
    sum1 += first
    sum2 += second
    sum12 += first * second
  }
  return (sum12 - (sum1 * sum2) / one.length) / (one.length - 1)
}
