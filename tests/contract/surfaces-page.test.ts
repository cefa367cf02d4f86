// The table of what each surface does is what its tests show: each cell has one that runs. `npm run docs` writes it anew.

import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Shown } from '../../docs/write/surfaces/features.ts'
import { surfaces, surfacesFile, surfacesPage } from '../../docs/write/surfaces/page.ts'

const cells = Object.entries(surfaces).flatMap(([surface, features]) =>
  Object.entries(features)
    .filter((one): one is [string, Shown] => typeof one[1] !== 'string')
    .map(([feature, [, file, test]]) => ({ surface, feature, file: `tests/${file}.test.ts`, test })),
)

/** The full names of the tests that a run of those files would run: none that is skipped, nor one beside an `only`. */
function testsIn(files: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const isOfMatrix = (file: string) => file.startsWith('tests/e2e/matrix/')
  const listed = (some: readonly string[], ...config: readonly string[]) => {
    // Behind "--json" the name of a file would be that of the file to write.
    const list = execFileSync('npx', ['vitest', 'list', ...some, ...config, '--json'], { encoding: 'utf8' })
    return JSON.parse(list) as { name: string; file: string }[]
  }
  const [ofMatrix = [], others = []] = [true, false].map(is => files.filter(file => isOfMatrix(file) === is))
  const found = [
    ...listed(others),
    ...listed(
      ofMatrix.map(file => file.replace('tests/e2e/matrix/', '')),
      '--config',
      'tests/e2e/matrix/vitest.config.ts',
    ),
  ]
  return new Map(
    files.map(path => [path, found.filter(({ file }) => file.endsWith(`/${path}`)).map(({ name }) => name)]),
  )
}

describe('the page of what surfaces do', () => {
  const tests = testsIn([...new Set(cells.map(({ file }) => file))])

  it.each(cells)('$surface, $feature: one test that runs shows it', ({ file, test }) => {
    expect(tests.get(file)?.filter(name => name.includes(test))).toHaveLength(1)
  })

  it('is written', () => {
    expect(readFileSync(surfacesFile, 'utf8'), 'run npm run docs').toBe(surfacesPage())
  })
})
