// Watching: nothing runs before a change, and then the few tests that are nearest to what changed, by imports.

import { relative } from 'node:path'
import { mergeConfig } from 'vitest/config'
import base from '../vitest.config.ts'
import { filesWithImports, testsOf } from './support/imports.ts'

/** As many as run within three seconds. */
const most = 6

function nearest(changed: string): string[] {
  const files = filesWithImports(['{src,commands,training}/**/*.ts', 'tests/{unit,outside,contract,support}/**/*.ts'])
  const away = testsOf(relative('.', changed), files)
  return [...away.keys()].slice(0, most)
}

export default mergeConfig(base, {
  test: { standalone: true, watchTriggerPatterns: [{ pattern: /\.ts$/, testsToRun: nearest }] },
})
