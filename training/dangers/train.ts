// Trains the second opinion on dangers and writes its file. The same corpus and the same code give the same bytes.

import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { storedWeights } from '../../src/language/dangers/opinion/opinion.ts'
import { trainedWeights } from './trained.ts'

const text = `${JSON.stringify(storedWeights(trainedWeights()), null, 2)}\n`
writeFileSync(join(import.meta.dirname, '../../src/language/dangers/opinion/weights.json'), text)
console.log(`${text.length} bytes of weights for dangers`)
