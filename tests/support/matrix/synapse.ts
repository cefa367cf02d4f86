// A real homeserver for tests: Synapse (Apache/AGPL, the reference homeserver) in a virtual environment, on loopback.

import { type ChildProcess, execFileSync, spawn } from 'node:child_process'
import { createHmac, randomBytes } from 'node:crypto'
import { existsSync, mkdirSync, mkdtempSync, openSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as sleep } from 'node:timers/promises'

/** From the Python Package Index. */
const version = '1.163.2'
const environment = join(tmpdir(), 'chargehand-tests', `synapse-${version}`)
const python = join(environment, 'bin', 'python')
const sharedSecret = 'for tests on loopback only'

/** Makes the virtual environment where it is not there yet; the first time takes a minute. Gives its version. */
export function installSynapse(): string {
  const done = join(environment, 'complete')
  if (!existsSync(done)) {
    rmSync(environment, { recursive: true, force: true })
    mkdirSync(environment, { recursive: true })
    execFileSync('python3', ['-m', 'venv', environment], { stdio: 'inherit' })
    execFileSync(python, ['-m', 'pip', 'install', '--quiet', `matrix-synapse==${version}`], { stdio: 'inherit' })
    writeFileSync(done, '')
  }
  return execFileSync(python, ['-c', 'import synapse; print(synapse.__version__)'], { encoding: 'utf8' }).trim()
}

export interface Login {
  readonly userId: string
  readonly deviceId: string
  readonly accessToken: string
}

export interface Synapse {
  readonly url: string
  readonly serverName: string
  /** A new account; the password is its name twice. */
  register(name: string, admin?: boolean): Promise<Login>
  /** Ends the server at once, as a power cut does. */
  kill(): Promise<void>
  /** Starts it anew on the same data and port. */
  start(): Promise<void>
  /** Calls the admin interface. */
  admin(method: string, path: string, body?: object): Promise<unknown>
  /** What it logged: among it one line for each request, with the status of its answer. */
  log(): string
  /** Stops it and removes its data. */
  remove(): Promise<void>
}

export const passwordOf = (name: string): string => `${name}-${name}`

export async function startSynapse(): Promise<Synapse> {
  const folder = mkdtempSync(join(tmpdir(), 'synapse-'))
  const port = await freePort()
  const url = `http://127.0.0.1:${port}`
  writeFileSync(join(folder, 'homeserver.yaml'), JSON.stringify(configuration(folder, port)))
  let server: ChildProcess | undefined
  let admin: Login | undefined

  async function start(): Promise<void> {
    const output = openSync(join(folder, 'output.log'), 'a')
    server = spawn(python, ['-m', 'synapse.app.homeserver', '-c', join(folder, 'homeserver.yaml')], {
      cwd: folder,
      stdio: ['ignore', output, output],
    })
    for (let tries = 0; tries < 300; tries += 1) {
      if (server.exitCode !== null) throw new Error(`Synapse ended: see ${folder}/output.log`)
      const up = await fetch(`${url}/health`).then(
        response => response.ok,
        () => false,
      )
      if (up) return
      await sleep(100)
    }
    throw new Error('Synapse did not answer within 30 s')
  }

  async function end(signal: NodeJS.Signals): Promise<void> {
    if (!server || server.exitCode !== null || server.signalCode !== null) return
    const ended = new Promise(resolve => server?.once('exit', resolve))
    server.kill(signal)
    await ended
  }

  async function register(name: string, isAdmin = false): Promise<Login> {
    const at = `${url}/_synapse/admin/v1/register`
    const { nonce } = (await (await fetch(at)).json()) as { nonce: string }
    const parts = [nonce, name, passwordOf(name), isAdmin ? 'admin' : 'notadmin']
    const mac = createHmac('sha1', sharedSecret).update(parts.join('\0')).digest('hex')
    const body = { nonce, username: name, password: passwordOf(name), admin: isAdmin, mac }
    const answer = (await post(at, body)) as { user_id: string; device_id: string; access_token: string }
    return { userId: answer.user_id, deviceId: answer.device_id, accessToken: answer.access_token }
  }

  await start()
  return {
    url,
    serverName: 'club.test',
    register,
    start,
    kill: () => end('SIGKILL'),
    async admin(method, path, body) {
      admin ??= await register(`admin${randomBytes(4).toString('hex')}`, true)
      const response = await fetch(`${url}/_synapse/admin/${path}`, {
        method,
        headers: { authorization: `Bearer ${admin.accessToken}` },
        ...(body ? { body: JSON.stringify(body) } : {}),
      })
      if (!response.ok) throw new Error(`${method} ${path}: ${response.status} ${await response.text()}`)
      return response.json()
    },
    log: () => readFileSync(join(folder, 'output.log'), 'utf8'),
    async remove() {
      await end('SIGTERM')
      rmSync(folder, { recursive: true })
    },
  }
}

async function post(url: string, body: object): Promise<unknown> {
  const response = await fetch(url, { method: 'POST', body: JSON.stringify(body) })
  if (!response.ok) throw new Error(`${url}: ${response.status} ${await response.text()}`)
  return response.json()
}

async function freePort(): Promise<number> {
  const server = createServer()
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve))
  const address = server.address()
  await new Promise(resolve => server.close(resolve))
  if (address === null || typeof address === 'string') throw new Error('no free port')
  return address.port
}

/** JSON is YAML. Rate limits are out of the way, save where a test sets one. */
function configuration(folder: string, port: number): object {
  const unlimited = { per_second: 10_000, burst_count: 10_000 }
  return {
    server_name: 'club.test',
    pid_file: join(folder, 'pid'),
    media_store_path: join(folder, 'media'),
    signing_key_path: join(folder, 'signing.key'),
    registration_shared_secret: sharedSecret,
    macaroon_secret_key: 'for tests',
    form_secret: 'for tests',
    report_stats: false,
    trusted_key_servers: [],
    listeners: [{ port, type: 'http', bind_addresses: ['127.0.0.1'], resources: [{ names: ['client'] }] }],
    database: { name: 'sqlite3', args: { database: join(folder, 'homeserver.db') } },
    rc_message: unlimited,
    rc_login: { address: unlimited, account: unlimited, failed_attempts: unlimited },
    rc_joins: { local: unlimited, remote: unlimited },
    rc_joins_per_room: unlimited,
    rc_invites: { per_room: unlimited, per_user: unlimited, per_issuer: unlimited },
    rc_room_creation: unlimited,
    rc_registration: unlimited,
  }
}
