// Writes the pages of the commands anew: npm run docs

import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { commandPages, pagesFolder } from './command-pages.ts'

const pages = await commandPages()
rmSync(pagesFolder, { recursive: true, force: true })
mkdirSync(pagesFolder, { recursive: true })
for (const [file, text] of pages) writeFileSync(join(pagesFolder, file), text)
console.log(`${pages.size} pages in ${pagesFolder}`)
