// Who may import whom: which way the arrows point, that none goes round, and what only one place may touch.

import { dirname, join, normalize } from 'node:path'
import { describe, expect, it } from 'vitest'
import { filesWithImports } from '../support/imports.ts'

const sources = filesWithImports(['src/**/*.ts', 'commands/**/*.ts'])

/** Lowest first: a folder imports what stands above it in this list, or beside it. */
const layers: readonly (readonly string[])[] = [
  ['src/ground/'],
  ['src/charging/numbers/'],
  ['src/charging/things/'],
  ['src/charging/situation/'],
  ['src/charging/simulation/'],
  ['src/charging/setting/'],
  [
    'src/charging/upkeep/',
    'src/charging/leads/',
    'src/charging/sources/',
    'src/charging/plan/',
    'src/charging/envelope/',
  ],
  ['src/language/'],
  ['src/handbook/'],
  ['src/memory/', 'src/charts/'],
  ['src/assistant/'],
  ['commands/'],
  ['src/program/'],
  ['src/room/', 'src/discord/', 'src/matrix/', 'src/http/'],
  ['src/'],
]
const layerOf = (path: string): number => layers.findIndex(folders => folders.some(folder => path.startsWith(folder)))

/** Files that import more than types from there. */
const valuesFrom = (target: string): readonly string[] =>
  sources
    .filter(({ path, text }) =>
      [...text.matchAll(/import (?!type )[^']*'([^']+)'/g)].some(
        ([, to = '']) => normalize(join(dirname(path), to)) === target,
      ),
    )
    .map(({ path }) => path)

/** Imports under `folder` that `forbidden` says no to. */
const offences = (folder: string, forbidden: (to: string, from: string) => boolean): readonly string[] =>
  sources
    .filter(({ path }) => path.startsWith(folder))
    .flatMap(({ path, imports }) => imports.filter(to => forbidden(to, path)).map(to => `${path} imports ${to}`))

/** Those from which a way leads back to themselves. */
function inCircles(nameOf: (path: string) => string): readonly string[] {
  const arrows = new Map<string, Set<string>>()
  for (const { path, imports } of sources) {
    const from = nameOf(path)
    const known = arrows.get(from) ?? new Set()
    for (const to of imports) if (to.endsWith('.ts') && nameOf(to) !== from) known.add(nameOf(to))
    arrows.set(from, known)
  }
  const reached = (from: string): ReadonlySet<string> => {
    const seen = new Set<string>()
    const open = [...(arrows.get(from) ?? [])]
    for (let next = open.pop(); next !== undefined; next = open.pop()) {
      if (seen.has(next)) continue
      seen.add(next)
      open.push(...(arrows.get(next) ?? []))
    }
    return seen
  }
  return [...arrows.keys()].filter(name => reached(name).has(name)).toSorted()
}

describe('import rules', () => {
  it('read the sources that they judge', () => {
    expect(sources.length).toBeGreaterThan(300)
    expect(sources.flatMap(({ imports }) => imports)).toContain('src/charging/things/chemistry.ts')
    for (const { path } of sources) expect(layerOf(path), path).toBeGreaterThanOrEqual(0)
  })

  it('no files go round in a circle, types included', () => {
    expect(inCircles(path => path)).toEqual([])
  })

  it.each([
    ['of files', (path: string) => dirname(path)],
    ['as a whole', (path: string) => dirname(path).split('/').slice(0, 2).join('/')],
  ])('no folders %s go round in a circle, types included', (_, nameOf) => {
    const isRoot = (path: string) => dirname(path) === 'src' || dirname(path) === 'commands'
    expect(inCircles(path => (isRoot(path) ? path : nameOf(path)))).toEqual([])
  })

  it('no arrow goes up', () => {
    expect(offences('', (to, from) => to.endsWith('.ts') && layerOf(to) > layerOf(from))).toEqual([])
  })

  it('what runs imports no test, no trainer and no writer of pages or of commands', () => {
    expect(offences('', to => /^(?:tests|training|docs|scaffold|release)\//.test(to))).toEqual([])
  })

  it('the charging core imports only itself', () => {
    expect(offences('src/charging/', to => !to.startsWith('src/charging/'))).toEqual([])
  })

  it('only the entry to a command judges it', () => {
    const judging = 'src/charging/envelope/judge.ts'
    expect(valuesFrom(judging).filter(path => path.startsWith('commands/'))).toEqual([])
  })

  it('core, language and handbook know no clock, locale of the system, file or environment', () => {
    // What unpacks bytes only computes.
    const impure = /\bDate\.now\b|new Date\(\)|\bprocess\.|toLocale|Math\.random|console\.|from 'node:(?!zlib)/
    const pure = sources.filter(({ path }) => /^src\/(ground|charging|language|handbook)\//.test(path))
    expect(pure.filter(({ text }) => impure.test(text)).map(({ path }) => path)).toEqual([])
  })

  it.each([
    ['discord.js', 'src/discord/'],
    ['matrix-js-sdk', 'src/matrix/'],
    ['kysely', 'src/memory/'],
    ['@resvg/resvg-js', 'src/charts/'],
    ['minisearch', 'src/handbook/'],
  ])('only one folder imports %s', (library, folder) => {
    const users = sources.filter(({ imports }) => imports.some(to => to === library || to.startsWith(`${library}/`)))
    expect(users.length).toBeGreaterThan(0)
    expect(users.filter(({ path }) => !path.startsWith(folder)).map(({ path }) => path)).toEqual([])
  })

  it('only one file reads the environment, and one tells the threads by it where Node keeps what it compiled', () => {
    const readers = sources.filter(({ text }) => /\bprocess\.env\b|\bimport\.meta\.env\b/.test(text))
    expect(readers.map(({ path }) => path)).toEqual(['src/program/config.ts', 'src/program/footing.ts'])
  })
})
