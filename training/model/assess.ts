// How well people are read that nothing was learned from, for choosing features and settings: each quarter of the
// training people by a model of the other three quarters, and the people held out by models of ever more people.

import { authors, heldOut } from '../corpus/read-corpus.ts'
import { allExamples, type Example } from './examples.ts'
import { bestTemperature, type Guessed, hitShare } from './judged.ts'
import { report } from './report.ts'
import { guessedBy, modelOf } from './trained.ts'

const quarters = 4
const examples = allExamples()
const others = authors.filter(author => !heldOut.has(author))
const by = (people: ReadonlySet<number>): readonly Example[] => examples.filter(({ person }) => people.has(person))
const further = new Set(examples.filter(one => one.isFurther && !one.isHeldOut).map(({ person }) => person))
const crossed: Guessed[] = []
for (let quarter = 0; quarter < quarters; quarter += 1) {
  const asked = new Set(others.filter((_, index) => index % quarters === quarter))
  const learned = others.filter(author => !asked.has(author))
  crossed.push(...guessedBy(modelOf(by(new Set([...learned, ...further]))), by(asked)))
}
console.log(`Quarters of the training people:\n${report(crossed, bestTemperature(crossed))}`)

if (process.argv.includes('--curve')) {
  for (const size of [7, 14, 21, 28]) {
    // Every other person first, so that few people are as mixed as many.
    const mixed = [...others.filter((_, index) => index % 2 === 0), ...others.filter((_, index) => index % 2 === 1)]
    const guessed = guessedBy(modelOf(by(new Set([...mixed.slice(0, size), ...further]))), by(heldOut))
    const [first, two] = [hitShare(guessed, 1), hitShare(guessed, 2)].map(share => (100 * share).toFixed(1))
    console.log(`learned from ${size}: first fits ${first} %, one of two ${two} %`)
  }
}
