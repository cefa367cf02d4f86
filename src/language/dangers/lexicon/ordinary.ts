// Words that are meant as they stand, though they are one slip away from a word of the lists.

import { readFileSync } from 'node:fs'

export const ordinaryWords: ReadonlySet<string> = new Set(
  readFileSync(new URL('ordinary.txt', import.meta.url), 'utf8').split(/\s+/),
)
