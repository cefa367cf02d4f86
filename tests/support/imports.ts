// What each file imports, and by it which tests have to do with a file.

import { globSync, readFileSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'

export interface Source {
  readonly path: string
  readonly text: string
  /** Paths from the project's folder for its own files, names for packages; of types too. */
  readonly imports: readonly string[]
}

const imported = /(?:from|import)\s*\(?\s*'([^']+)'/g

export const filesWithImports = (patterns: readonly string[]): readonly Source[] =>
  globSync(patterns).map(path => {
    const text = readFileSync(path, 'utf8')
    const imports = [...text.matchAll(imported)].map(([, to = '']) =>
      to.startsWith('.') ? normalize(join(dirname(path), to)) : to,
    )
    return { path, text, imports }
  })

/** The tests that reach a file, by how many imports; those that reach it by fewest first. */
export function testsOf(file: string, files: readonly Source[]): ReadonlyMap<string, number> {
  const importers = Map.groupBy(
    files.flatMap(({ path, imports }) => imports.map(to => ({ path, to }))),
    ({ to }) => to,
  )
  const away = new Map([[file, 0]])
  for (const [path, distance] of away)
    for (const by of importers.get(path) ?? []) if (!away.has(by.path)) away.set(by.path, distance + 1)
  return new Map([...away].filter(([path]) => path.endsWith('.test.ts')))
}
