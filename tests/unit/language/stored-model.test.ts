// A model is read as it was stored, however many things it tells apart.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { readModel, stored } from '../../../src/language/model/stored.ts'
import { cases } from '../../support/cases.ts'

it('keeps every weight with its intent', () => {
  const someRow = fc.uniqueArray(fc.tuple(fc.nat({ max: 999 }), fc.integer({ min: -127, max: 127 })), {
    minLength: 1,
    maxLength: 600,
    selector: ([intent]) => intent,
  })
  fc.assert(
    fc.property(fc.array(someRow, { minLength: 1, maxLength: 5 }), rows => {
      const weights = rows.flat()
      const starts = [0]
      for (const row of rows) starts.push((starts.at(-1) ?? 0) + row.length)
      const model = {
        temperature: 1,
        unit: 0.01,
        intents: 1000,
        features: Uint32Array.from(rows, (_, at) => 7 * at),
        starts: Uint32Array.from(starts),
        of: Uint16Array.from(weights, ([intent]) => intent),
        weights: Int8Array.from(weights, ([, weight]) => weight),
        words: Uint32Array.from([3, 70_000]),
      }
      expect(readModel(stored(model))).toEqual(model)
    }),
    cases(100),
  )
})
