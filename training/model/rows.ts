// Examples as rows of numbers, for the learner.

import { length, placeIn } from '../../src/language/model/model.ts'
import type { Example } from './examples.ts'

export interface Row {
  /** Places in the list of features. */
  readonly places: Int32Array
  readonly values: Float64Array
}

/** Rising. A feature has to come from two people at least: what one alone writes is a habit. */
export function sharedFeatures(examples: readonly Example[]): Uint32Array {
  const first = new Map<number, number>()
  const shared = new Set<number>()
  for (const { person, features } of examples) {
    for (const feature of features.keys()) {
      const other = first.get(feature)
      if (other === undefined) first.set(feature, person)
      else if (other !== person) shared.add(feature)
    }
  }
  return Uint32Array.from(shared).sort()
}

export function rowOf({ features }: Example, all: Uint32Array): Row {
  const found: [number, number][] = []
  for (const [feature, weight] of features) {
    const place = placeIn(all, feature)
    if (place >= 0) found.push([place, weight])
  }
  const scale = length / (Math.sqrt(found.reduce((sum, [, weight]) => sum + weight * weight, 0)) || 1)
  return {
    places: Int32Array.from(found, ([place]) => place),
    values: Float64Array.from(found, ([, weight]) => weight * scale),
  }
}
