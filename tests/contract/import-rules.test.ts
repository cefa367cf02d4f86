// Who may import whom: the rules that keep the core pure, commands platform-neutral and the environment in one place.

import { globSync, readFileSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'
import { describe, expect, it } from 'vitest'

const imported = /(?:from|import)\s*\(?\s*'([^']+)'/g

interface Source {
  readonly path: string
  readonly text: string
  /** Paths from the project's folder for its own files, names for packages. */
  readonly imports: readonly string[]
}

const sources: readonly Source[] = globSync(['src/**/*.ts', 'commands/**/*.ts']).map(path => {
  const text = readFileSync(path, 'utf8')
  const imports = [...text.matchAll(imported)].map(([, to = '']) =>
    to.startsWith('.') ? normalize(join(dirname(path), to)) : to,
  )
  return { path, text, imports }
})

/** Files under `folder` that import something `forbidden` says no to. */
function offences(folder: string, forbidden: (imported: string) => boolean): string[] {
  return sources
    .filter(({ path }) => path.startsWith(folder))
    .flatMap(({ path, imports }) => imports.filter(forbidden).map(to => `${path} imports ${to}`))
}

const surfaces = ['src/discord/', 'src/matrix/', 'src/room/', 'src/http/']
const isSurface = (path: string) => surfaces.some(surface => path.startsWith(surface))

/** Trainers, and what only they and tests read. */
const isTool = (path: string) => /^src\/language\/(?:.*\/)?tools\//.test(path)

describe('import rules', () => {
  it('reads the sources it judges', () => {
    expect(sources.length).toBeGreaterThan(30)
    expect(sources.flatMap(({ imports }) => imports)).toContain('src/charging/things/chemistry.ts')
  })

  it('the charging core imports only itself', () => {
    expect(offences('src/charging/', to => !to.startsWith('src/charging/'))).toEqual([])
  })

  it('the core and the notation know no clock, locale, file or environment', () => {
    const impure = /\bDate\.now\b|new Date\(\)|\bprocess\.|toLocale|Math\.random|console\./
    const pure = sources.filter(
      ({ path }) => /^src\/(ground|charging|language|handbook)\//.test(path) && !isTool(path),
    )
    expect(pure.filter(({ text }) => impure.test(text)).map(({ path }) => path)).toEqual([])
    expect(
      pure.flatMap(({ path, imports }) => imports.filter(to => to.startsWith('node:')).map(() => path)),
    ).toEqual([])
  })

  it('commands and the assistant import no surface', () => {
    expect(offences('commands/', isSurface)).toEqual([])
    expect(offences('src/assistant/', isSurface)).toEqual([])
  })

  it.each([
    ['discord.js', 'src/discord/'],
    ['matrix-js-sdk', 'src/matrix/'],
    ['kysely', 'src/memory/'],
    ['echarts', 'src/charts/'],
  ])('only one folder imports %s', (library, folder) => {
    const users = sources.filter(({ imports }) =>
      imports.some(to => to === library || to.startsWith(`${library}/`)),
    )
    expect(users.filter(({ path }) => !path.startsWith(folder)).map(({ path }) => path)).toEqual([])
  })

  it('only src/config.ts reads the environment', () => {
    const readers = sources.filter(({ text }) => /\bprocess\.env\b|\bimport\.meta\.env\b/.test(text))
    expect(readers.map(({ path }) => path)).toEqual(['src/config.ts'])
  })
})
