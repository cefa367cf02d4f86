// Runs the assistant as a process against a test homeserver, so that a test can kill it.

import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { passwordOf, type Synapse } from './synapse.ts'

const script = fileURLToPath(new URL('../../../src/main.ts', import.meta.url))

export interface AssistantProcess {
  readonly userId: string
  readonly folder: string
  /** Resolves when questions can come. Rejects, with what it wrote, where it ends instead. */
  start(environment?: Record<string, string>): Promise<void>
  /** SIGKILL: no goodbye, as a power cut. */
  kill(): Promise<void>
  /** Sends a signal that does not end it. */
  signal(signal: 'SIGSTOP' | 'SIGCONT'): void
  /** SIGTERM; resolves with its exit code. */
  stop(): Promise<number | null>
  /** What it wrote to standard error since the last start: its log. */
  log(): string
  /** What it wrote to standard output since the last start. */
  output(): string
  /** Stops it and removes its data. */
  remove(): Promise<void>
}

export async function assistantProcess(
  synapse: Synapse,
  name: string,
  environment: Record<string, string> = {},
): Promise<AssistantProcess> {
  const { userId } = await synapse.register(name)
  const folder = mkdtempSync(join(tmpdir(), 'chargehand-'))
  let child: ChildProcess | undefined
  let output = ''
  let log = ''

  function start(more: Record<string, string> = {}): Promise<void> {
    output = ''
    log = ''
    const started = spawn(process.execPath, ['--disable-warning=ExperimentalWarning', script], {
      env: {
        PATH: process.env.PATH,
        CHARGEHAND_DATA: folder,
        MATRIX_HOMESERVER: synapse.url,
        MATRIX_USER: userId,
        MATRIX_PASSWORD: passwordOf(name),
        MATRIX_STORE_KEY: 'a passphrase for tests only',
        ...environment,
        ...more,
      },
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    child = started
    started.stdout.on('data', data => {
      output += data
    })
    return new Promise((resolve, reject) => {
      started.stderr.on('data', data => {
        log += data
        if (log.includes('"msg":"ready"')) resolve()
      })
      started.once('close', code => reject(new Error(`the assistant ended with ${code}: ${log}`)))
    })
  }

  async function end(signal: NodeJS.Signals): Promise<void> {
    if (!child || child.exitCode !== null || child.signalCode !== null) return
    const ended = new Promise(resolve => child?.once('close', resolve))
    child.kill(signal)
    await ended
  }

  return {
    userId,
    folder,
    start,
    kill: () => end('SIGKILL'),
    signal: signal => void child?.kill(signal),
    stop: async () => {
      await end('SIGTERM')
      return child?.exitCode ?? null
    },
    log: () => log,
    output: () => output,
    remove: async () => {
      await end('SIGKILL')
      rmSync(folder, { recursive: true })
    },
  }
}
