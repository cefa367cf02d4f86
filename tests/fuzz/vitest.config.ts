// Every door tried with what its grammar lets one write and a little more, for FUZZ_S seconds in all.

import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/fuzz/*.fuzz.ts'],
    isolate: false,
    maxWorkers: availableParallelism(),
    testTimeout: 3_600_000,
  },
})
