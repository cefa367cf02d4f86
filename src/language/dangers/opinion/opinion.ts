// How likely a message tells any danger, and which one it would be.

import { type Danger, dangers, isWorded } from '../../../charging/situation/dangers.ts'
import { packed, unpacked } from '../../../ground/packed.ts'
import { sharesOf } from '../../model/model.ts'
import { type Features, fewerPlaces } from './features.ts'
import file from './weights.json' with { type: 'json' }

/** In the order of the weights. */
export const judged: readonly Danger[] = (Object.keys(dangers) as readonly Danger[]).filter(isWorded)

export interface Opinion {
  /** 0 to 1: that it tells any danger. */
  readonly any: number
  /** Each danger's share, 0 to 1, were it one; in the order of `judged`. */
  readonly shares: readonly number[]
}

/** Logistic weights in whole steps, as a step is worth little and small numbers take little room. */
export interface Weights {
  readonly step: number
  readonly bias: number
  /** For any danger, by place. */
  readonly any: Int8Array
  readonly whichStep: number
  /** By place folded to fewer, then by danger. */
  readonly which: Int8Array
}

/** As they are kept: lists packed, for most weights are nothing. */
export interface StoredWeights {
  readonly step: number
  readonly bias: number
  readonly any: string
  readonly whichStep: number
  readonly which: string
}

/** Long messages hold more features: each weighs less. Of a short one the few that it holds prove little. */
export const weightOf = (features: readonly number[]): number => 1 / Math.sqrt(features.length + 100)

export function opinionOf({ all, telling }: Features, { step, bias, any, whichStep, which }: Weights): Opinion {
  let sum = 0
  for (const place of all) sum += any[place] ?? 0
  const scores = new Float64Array(judged.length)
  for (const place of telling) {
    const from = (place % fewerPlaces) * judged.length
    for (let n = 0; n < judged.length; n += 1) scores[n] = (scores[n] ?? 0) + (which[from + n] ?? 0)
  }
  const scale = whichStep * weightOf(telling)
  return { any: 1 / (1 + Math.exp(-(bias + step * weightOf(all) * sum))), shares: [...sharesOf(scores, 1 / scale)] }
}

export function readWeights(): Weights {
  const { any, which, ...rest }: StoredWeights = file
  return { ...rest, any: new Int8Array(unpacked(any)), which: new Int8Array(unpacked(which)) }
}

export const storedWeights = ({ any, which, ...rest }: Weights): StoredWeights => ({
  ...rest,
  any: packed(any),
  which: packed(which),
})
