// The tests against a real homeserver: one file after another, each with a homeserver of its own.

import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const here = fileURLToPath(new URL('.', import.meta.url))

export default defineConfig({
  test: {
    root: here,
    include: ['**/*.test.ts'],
    globalSetup: [`${here}setup.ts`],
    fileParallelism: false,
    reporters: ['verbose'],
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
})
