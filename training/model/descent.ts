// Stochastic descent, with a rate of its own for each feature, and features left out at random.

import type { Row } from './rows.ts'

export interface DescentSettings {
  readonly pull: number
  readonly leftOut: number
  readonly seed: number
}

export class Descent {
  /** A row for each feature, a column for each intent. */
  readonly weights: Float64Array
  readonly #intents: number
  readonly #pull: Float64Array
  readonly #steepness: Float64Array
  readonly #error: Float64Array
  readonly #leftOut: number
  #chance: number

  constructor(features: number, intents: number, rows: readonly Row[], settings: DescentSettings) {
    this.weights = new Float64Array(features * intents)
    this.#intents = intents
    this.#steepness = new Float64Array(features).fill(1e-8)
    this.#error = new Float64Array(intents)
    this.#leftOut = settings.leftOut
    this.#chance = settings.seed
    // In proportion to how seldom it is seen, so that in a round all are pulled alike.
    const seen = new Float64Array(features)
    for (const { places } of rows) for (const place of places) seen[place] = (seen[place] ?? 0) + 1
    this.#pull = seen.map(times => settings.pull / times)
  }

  shuffle(list: unknown[]): void {
    for (let last = list.length - 1; last > 0; last -= 1) {
      const other = Math.floor(this.#random() * (last + 1))
      const kept = list[last]
      list[last] = list[other]
      list[other] = kept
    }
  }

  /** One step down for one row. */
  step(row: Row, target: Float64Array, importance: number, rate: number): void {
    const { places, values } = this.#thinned(row)
    this.#guess(places, values)
    const [error, weights, intents] = [this.#error, this.weights, this.#intents]
    for (let intent = 0; intent < intents; intent += 1) error[intent] = (error[intent] ?? 0) - (target[intent] ?? 0)
    for (let index = 0; index < places.length; index += 1) {
      const place = places[index] ?? 0
      const start = place * intents
      const value = (values[index] ?? 0) * importance
      const pull = this.#pull[place] ?? 0
      let squares = 0
      for (let intent = 0; intent < intents; intent += 1) {
        const slope = (error[intent] ?? 0) * value + pull * (weights[start + intent] ?? 0)
        squares += slope * slope
      }
      const steepness = (this.#steepness[place] ?? 0) + squares / 4
      this.#steepness[place] = steepness
      const step = rate / Math.sqrt(steepness)
      for (let intent = 0; intent < intents; intent += 1) {
        const weight = weights[start + intent] ?? 0
        weights[start + intent] = weight - step * ((error[intent] ?? 0) * value + pull * weight)
      }
    }
  }

  #thinned({ places, values }: Row): { places: readonly number[]; values: readonly number[] } {
    const left: { places: number[]; values: number[] } = { places: [], values: [] }
    for (let index = 0; index < places.length; index += 1) {
      if (this.#random() < this.#leftOut) continue
      left.places.push(places[index] ?? 0)
      left.values.push((values[index] ?? 0) / (1 - this.#leftOut))
    }
    return left
  }

  /** The shares that the weights now give, into #error. */
  #guess(places: readonly number[], values: readonly number[]): void {
    const [shares, weights, intents] = [this.#error.fill(0), this.weights, this.#intents]
    for (let index = 0; index < places.length; index += 1) {
      const start = (places[index] ?? 0) * intents
      const value = values[index] ?? 0
      for (let intent = 0; intent < intents; intent += 1)
        shares[intent] = (shares[intent] ?? 0) + (weights[start + intent] ?? 0) * value
    }
    const most = shares.reduce((one, other) => Math.max(one, other), Number.NEGATIVE_INFINITY)
    let sum = 0
    for (let intent = 0; intent < intents; intent += 1) {
      const power = Math.exp((shares[intent] ?? 0) - most)
      shares[intent] = power
      sum += power
    }
    for (let intent = 0; intent < intents; intent += 1) shares[intent] = (shares[intent] ?? 0) / sum
  }

  /** 0 to 1. */
  #random(): number {
    this.#chance = (Math.imul(this.#chance, 1664525) + 1013904223) >>> 0
    return this.#chance / 2 ** 32
  }
}
