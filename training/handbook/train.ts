// Trains what tells the entries of the handbook apart and writes its file. The same questions and code give the same bytes.

import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { condensed } from '../model/condense.ts'
import { learn } from '../model/learner.ts'
import { fileOf } from '../model/trained.ts'
import { allExamples, places } from './examples.ts'

const noWords = new Uint32Array()
/** More entries than there are intents have more weights: with 7 the file is above a megabyte. */
const least = 8
const text = fileOf(condensed(learn(allExamples(), places), noWords, places, least))
writeFileSync(join(import.meta.dirname, '../../src/handbook/search/model.json'), text)
console.log(`${text.length} bytes of weights for the handbook`)
