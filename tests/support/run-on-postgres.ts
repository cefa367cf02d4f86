// Runs the memory's tests on a PostgreSQL of their own, started for them and thrown away afterwards.
// Says "skipped" where no PostgreSQL is installed.

import { spawnSync } from 'node:child_process'
import { globSync, readFileSync } from 'node:fs'
import { findPostgres, startPostgres } from './postgres.ts'

/** Every test that asks for a memory by way of the test support, and those of the server itself. */
const tests = globSync(['tests/unit/**/*.test.ts', 'tests/e2e/{memory,postgres}/*.test.ts']).filter(file =>
  /support\/(?:ask|test-memory|kill-rounds|inbox-kills|postgres)\.ts/.test(readFileSync(file, 'utf8')),
)

const binaries = findPostgres()
if (binaries) process.exitCode = await runOn(binaries)
else process.stdout.write('skipped: the tests on PostgreSQL, because initdb and postgres are not installed\n')

async function runOn(folder: string): Promise<number> {
  const server = await startPostgres(folder)
  try {
    process.stdout.write(`the memory's tests on ${server.version}\n`)
    const vitest = ['node_modules/vitest/vitest.mjs', 'run', '--testTimeout=60000', ...tests]
    const env = { ...process.env, TEST_DATABASE_URL: server.url }
    return spawnSync(process.execPath, vitest, { stdio: 'inherit', env }).status ?? 1
  } finally {
    await server.close()
  }
}
