// Cautions are for whoever stands at the bench: read with ease at twelve, and short at the start.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { rowsOf } from '../../../src/assistant/layers/budget.ts'
import { judge } from '../../../src/charging/envelope/judge.ts'
import { limits } from '../../../src/charging/envelope/limits/index.ts'
import { traits } from '../../../src/charging/envelope/traits.ts'
import { situationOf } from '../../../src/charging/situation/situation.ts'
import { english } from '../../../src/ground/locale.ts'
import { handbook } from '../../../src/handbook/entries.ts'
import { linesOf } from '../../../src/handbook/rules/index.ts'
import { readingAge } from '../../support/reading-age.ts'
import { allDangers, allDoubts, someBoard, somePlanned, someSituation } from '../../support/situations.ts'

/** What is said of each rule, as often as it was met. */
const said = new Map<string, readonly string[]>()
function note(judgement: ReturnType<typeof judge>): void {
  for (const found of judgement.found) said.set(found.key, linesOf(found, english('.')))
}
const someCase = fc.oneof(someSituation('charge', 'drain', 'store', 'carry', 'look'), someBoard)
for (const [situation, planned] of fc.sample(fc.tuple(someCase, somePlanned), { numRuns: 6000, seed: 1 }))
  note(judge(situation as Parameters<typeof judge>[0], planned))
note(judge(situationOf({ act: 'look' }, { house: {}, dangers: allDangers, doubts: allDoubts })))

it('is measured on most of what can be said', () => {
  const all = allDangers.length + Object.keys(limits).length + Object.keys(traits).length
  expect(said.size).toBeGreaterThan(0.85 * all)
})

it('is read with ease at twelve, and none of it later than at thirteen and a half', () => {
  const ages = [...said].map(([key, lines]) => [readingAge(lines), key] as const).toSorted(([a], [b]) => b - a)
  expect(ages.filter(([age]) => age > 13.5)).toEqual([])
  expect(readingAge([...said.values()].flat())).toBeLessThanOrEqual(12)
})

it('is as easily read in the entries of the handbook', () => {
  const ages = handbook.map(({ id, answer, why, do: deed }) => [readingAge([...answer, why, deed]), id] as const)
  expect(ages.filter(([age]) => age > 14)).toEqual([])
  expect(readingAge(handbook.flatMap(({ answer, why, do: deed }) => [...answer, why, deed]))).toBeLessThanOrEqual(12)
})

it('begins with a line of three rows at most', () => {
  expect([...said].filter(([, [first = '']]) => rowsOf(first) > 3).map(([key, [first]]) => [key, first])).toEqual([])
})
