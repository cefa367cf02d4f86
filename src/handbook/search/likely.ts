// How likely each entry of the handbook is what was asked, learned from how many people word it.

import { candidatesOf } from '../../language/candidates/index.ts'
import { type Model, scoresOf, sharesOf } from '../../language/model/model.ts'
import { readModel } from '../../language/model/stored.ts'
import file from './model.json' with { type: 'json' }

let loaded: Model | undefined

/** A share for each entry in the order of the handbook, and a last one for what it has nothing on; they sum to 1. */
export function likelyEntries(text: string): Float64Array {
  loaded ??= readModel(file)
  return sharesOf(scoresOf(loaded, text, candidatesOf(text)), loaded.temperature)
}
