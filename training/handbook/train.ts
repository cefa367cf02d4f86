// Trains what tells the entries of the handbook apart, and indexes them. The same questions and code give the same bytes.

import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { handbook } from '../../src/handbook/entries.ts'
import { storedIndex } from '../../src/handbook/search/stored.ts'
import { condensed } from '../model/condense.ts'
import { learn } from '../model/learner.ts'
import { fileOf } from '../model/trained.ts'
import { allExamples, places } from './examples.ts'

const noWords = new Uint32Array()
/** More entries than there are intents have more weights: with 7 the file is above a megabyte. */
const least = 8
write('index.json', `${JSON.stringify(storedIndex(handbook), undefined, 2)}\n`)
write('model.json', fileOf(condensed(learn(allExamples(), places), noWords, places, least)))

function write(file: string, text: string): void {
  writeFileSync(join(import.meta.dirname, '../../src/handbook/search', file), text)
  console.log(`${text.length} bytes of ${file} for the handbook`)
}
