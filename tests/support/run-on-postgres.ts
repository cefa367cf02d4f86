// Runs the memory's tests on a PostgreSQL of their own, started for them and thrown away afterwards.
// Says "skipped" where no PostgreSQL is installed.

import { execFileSync, type SpawnSyncOptions, spawn, spawnSync } from 'node:child_process'
import { chownSync, existsSync, globSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { Client } from 'pg'

/** Every test that asks for a memory by way of the test support. */
const tests = globSync(['tests/unit/**/*.test.ts', 'tests/e2e/memory/*.test.ts']).filter(file =>
  /support\/(?:ask|test-memory|kill-rounds)\.ts/.test(readFileSync(file, 'utf8')),
)

const binaries = findBinaries()
if (!binaries) {
  process.stdout.write('skipped: the tests on PostgreSQL, because initdb and postgres are not installed\n')
} else {
  process.exitCode = await runOn(binaries)
}

/** The folder of the server's programs: on the path, or where Debian puts them. */
function findBinaries(): string | undefined {
  const folders = [...(process.env.PATH ?? '').split(delimiter), ...globSync('/usr/lib/postgresql/*/bin')]
  return folders.find(folder => ['initdb', 'postgres'].every(name => existsSync(join(folder, name))))
}

async function runOn(folder: string): Promise<number> {
  const data = mkdtempSync(join(tmpdir(), 'chargehand-postgres-'))
  const user = ordinaryUser()
  if (user.uid !== undefined && user.gid !== undefined) chownSync(data, user.uid, user.gid)
  const port = await freePort()
  try {
    execFileSync(join(folder, 'initdb'), ['-D', data, '-U', 'tester', '-A', 'trust', '-E', 'UTF8'], {
      ...user,
      cwd: data,
    })
    const settings = ['-h', '127.0.0.1', '-p', String(port), '-k', data, '-F']
    const server = spawn(join(folder, 'postgres'), ['-D', data, ...settings], { ...user, cwd: data, stdio: 'ignore' })
    const ended = new Promise(resolve => server.on('exit', resolve))
    try {
      const url = `postgres://tester@127.0.0.1:${port}/postgres`
      process.stdout.write(`the memory's tests on ${await versionOf(url)}\n`)
      const vitest = ['node_modules/vitest/vitest.mjs', 'run', '--testTimeout=60000', ...tests]
      const { status } = spawnSync(process.execPath, vitest, {
        stdio: 'inherit',
        env: { ...process.env, TEST_DATABASE_URL: url },
      })
      return status ?? 1
    } finally {
      server.kill('SIGINT')
      await ended
    }
  } finally {
    rmSync(data, { recursive: true })
  }
}

/** PostgreSQL refuses to run as root. */
function ordinaryUser(): Pick<SpawnSyncOptions, 'uid' | 'gid'> {
  if (process.getuid?.() !== 0) return {}
  const idOf = (flag: '-u' | '-g', name: string) => Number(execFileSync('id', [flag, name], { stdio: 'pipe' }))
  try {
    return { uid: idOf('-u', 'postgres'), gid: idOf('-g', 'postgres') }
  } catch {
    return { uid: idOf('-u', 'nobody'), gid: idOf('-g', 'nobody') }
  }
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer().on('error', reject)
    server.listen(0, '127.0.0.1', () => {
      const address = server.address()
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0))
    })
  })
}

/** Waits until the server answers. */
async function versionOf(url: string, attempts = 100): Promise<string> {
  const client = new Client({ connectionString: url })
  try {
    await client.connect()
    const { rows } = await client.query('select version()')
    return String(rows[0].version).split(' on ')[0] ?? ''
  } catch (error) {
    if (attempts === 0) throw error
    await pause(100)
    return versionOf(url, attempts - 1)
  } finally {
    await client.end().catch(() => {})
  }
}
