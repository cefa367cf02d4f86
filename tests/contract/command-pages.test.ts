// The pages under docs/commands are what the commands themselves say; `npm run docs` writes them anew.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { commandPages, pagesFolder } from '../../docs/write/command-pages.ts'

it('every command has its page, and every page its command', async () => {
  const pages = await commandPages()
  const written = new Map(
    readdirSync(pagesFolder).map(file => [file, readFileSync(join(pagesFolder, file), 'utf8')] as const),
  )
  expect([...written.keys()].sort()).toEqual([...pages.keys()].sort())
  for (const [file, text] of pages) expect(written.get(file), `${file}: run npm run docs`).toBe(text)
})
