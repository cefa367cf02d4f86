// The program as a host runs it (deploy/): a process of its own, with nothing of our environment but the path.

import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'

export interface Program {
  readonly process: ChildProcess
  /** What it has written to standard error so far. */
  errors(): string
  /** The exit code or the signal that it ended by. */
  ended(): Promise<number | NodeJS.Signals | null>
  /** At once, where it still runs. */
  kill(): Promise<void>
}

export function startProgram(env: Readonly<Record<string, string>>, script = 'src/main.ts', umask = '022'): Program {
  const command = `umask ${umask}; exec "${process.execPath}" --min-semi-space-size=4 ${script}`
  const running = spawn('sh', ['-c', command], {
    env: { PATH: process.env.PATH, ...env },
    stdio: ['ignore', 'ignore', 'pipe'],
  })
  let errors = ''
  running.stderr.on('data', chunk => {
    errors += chunk
  })
  const closed = once(running, 'close').then(([code, signal]) => code ?? signal)
  return {
    process: running,
    errors: () => errors,
    ended: () => closed,
    kill: async () => {
      running.kill('SIGKILL')
      await closed
    },
  }
}
