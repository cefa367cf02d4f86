// Writes the pages of the commands and the pictures of the README anew: npm run docs

import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { licencesPage } from '../../release/licences.ts'
import { checksFile, checksPage } from './checks.ts'
import { commandPages, pagesFolder } from './command-pages.ts'
import { pictures, picturesFolder } from './pictures.ts'
import { surfacesFile, surfacesPage } from './surfaces/page.ts'

function write(folder: string, files: ReadonlyMap<string, string | Buffer>): void {
  mkdirSync(folder, { recursive: true })
  for (const [file, content] of files) writeFileSync(join(folder, file), content)
  console.log(`${files.size} files in ${folder}`)
}

rmSync(pagesFolder, { recursive: true, force: true })
write(pagesFolder, await commandPages())
writeFileSync(surfacesFile, surfacesPage())
writeFileSync(checksFile, checksPage())
writeFileSync('docs/licences.md', licencesPage())
write(picturesFolder, await pictures())
