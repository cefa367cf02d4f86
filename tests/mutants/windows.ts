// A sample of lines that is the same for the same seed: short runs of them, spread over all files.

import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'

const height = 12

/** `count` runs of lines, as `path:first-last`. */
export function windowsIn(files: readonly string[], count: number, seed: number): readonly string[] {
  const all = files.flatMap(file => {
    const lines = readFileSync(file, 'utf8').split('\n').length
    return Array.from(
      { length: Math.ceil(lines / height) },
      (_, at) => `${file}:${at * height + 1}-${(at + 1) * height}`,
    )
  })
  const rank = (window: string) => createHash('sha256').update(`${seed} ${window}`).digest('hex')
  return all.toSorted((a, b) => (rank(a) < rank(b) ? -1 : 1)).slice(0, count)
}
