import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: [
      'tests/{unit,outside,contract}/**/*.test.ts',
      'tests/e2e/{process,memory,postgres,load,newcomer}/**/*.test.ts',
    ],
    // Files share a process: no test of ours leaves anything behind, and it is more than twice as fast.
    isolate: false,
    // Node loads the modules, as when the program runs; the runner's own loading slows each call between them.
    experimental: { viteModuleRunner: false, nodeLoader: false },
    // One more than there are cores: some files only wait, for limits and for silence.
    maxWorkers: availableParallelism() + 1,
    // Room for what a test throws away, so that it is swept seldom.
    execArgv: ['--max-semi-space-size=32'],
    setupFiles: ['tests/support/property-seed.ts'],
    // Patient, so that a busy machine fails no test: how fast things are is for the bench to say.
    testTimeout: 120_000 * Math.max(1, Number(process.env.CASES ?? 0)),
    hookTimeout: 120_000,
  },
})
