// A PostgreSQL of a test's own: started for it, stopped and started again as often as it wants, thrown away afterwards.

import { execFileSync, type SpawnSyncOptions, spawn } from 'node:child_process'
import { chownSync, existsSync, globSync, mkdtempSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { Client } from 'pg'

export interface PostgresServer {
  readonly url: string
  /** As "PostgreSQL 15.3". */
  readonly version: string
  /** Resolves when it answers. */
  start(): Promise<void>
  /** Breaks every connection, with a word before it (SIGINT) or as in a crash; resolves when it has ended. */
  stop(signal?: 'SIGINT' | 'SIGQUIT'): Promise<void>
  /** Ends it and takes its files away. */
  close(): Promise<void>
}

/** The folder of the server's programs: on the path, or where Debian puts them; undefined where it is not installed. */
export function findPostgres(): string | undefined {
  const folders = [...(process.env.PATH ?? '').split(delimiter), ...globSync('/usr/lib/postgresql/*/bin')]
  return folders.find(folder => ['initdb', 'postgres'].every(name => existsSync(join(folder, name))))
}

export async function startPostgres(folder: string): Promise<PostgresServer> {
  const data = mkdtempSync(join(tmpdir(), 'chargehand-postgres-'))
  const user = ordinaryUser()
  if (user.uid !== undefined && user.gid !== undefined) chownSync(data, user.uid, user.gid)
  const port = await freePort()
  const url = `postgres://tester@127.0.0.1:${port}/postgres`
  const initial = ['-D', data, '-U', 'tester', '-A', 'trust', '-E', 'UTF8']
  execFileSync(join(folder, 'initdb'), initial, { ...user, cwd: data })
  let stop: PostgresServer['stop'] = async () => {}
  const start = async () => {
    const settings = ['-h', '127.0.0.1', '-p', String(port), '-k', data, '-F']
    const server = spawn(join(folder, 'postgres'), ['-D', data, ...settings], { ...user, cwd: data, stdio: 'ignore' })
    const ended = new Promise<void>(resolve => server.on('exit', () => resolve()))
    stop = async (signal = 'SIGINT') => {
      server.kill(signal)
      await ended
    }
    await versionOf(url)
  }
  await start()
  const version = await versionOf(url)
  return {
    url,
    version,
    start,
    stop: signal => stop(signal),
    close: async () => {
      await stop()
      rmSync(data, { recursive: true })
    },
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

export function freePort(): Promise<number> {
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
  client.on('error', () => {})
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
