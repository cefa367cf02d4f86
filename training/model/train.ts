// Trains the model and writes its file. The same corpus and the same code give the same bytes.

import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { allExamples } from './examples.ts'
import { report } from './report.ts'
import { fileOf, guessedBy, trained } from './trained.ts'

const examples = allExamples()
const model = trained(examples)
const text = fileOf(model)
writeFileSync(join(import.meta.dirname, '../../src/language/model/model.json'), text)

const others = examples.filter(({ isHeldOut }) => isHeldOut)
console.log(`${model.features.length} features, ${model.weights.length} weights, ${text.length} bytes`)
for (const isFurther of [false, true]) {
  const asked = others.filter(other => other.isFurther === isFurther)
  console.log(report(guessedBy(model, asked), model.temperature))
}
