// PostgreSQL is stopped and started again fifty times while a process writes: it goes on, and nothing is lost.

import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { openMemory } from '../../../src/memory/opening/open.ts'
import { acknowledgements, missingFrom } from '../../support/kill-rounds.ts'
import { findPostgres, startPostgres } from '../../support/postgres.ts'
import { spokenBy } from '../../support/spoken.ts'

const restarts = 50

test('fifty restarts under writes end no process and lose no acknowledged write', { timeout: 600_000 }, async () => {
  const server = await startPostgres(findPostgres() ?? '')
  const writer = join(import.meta.dirname, '../../support/memory-writer.ts')
  const writing = spawn(process.execPath, [writer, tmpdir(), '0', server.url])
  const said = spokenBy(writing)
  const ended = once(writing, 'exit')
  try {
    for (let round = 0; round < restarts; round++) {
      const before = said.output().length
      // Only what was written since the last restart shows that it came back by itself.
      await expect.poll(() => said.output().length, { timeout: 20_000 }).toBeGreaterThan(before + 200)
      await server.stop(round % 2 === 0 ? 'SIGINT' : 'SIGQUIT')
      await server.start()
    }
    expect(said.complaint()).toBe('')
    expect(writing.exitCode).toBeNull()
    writing.kill('SIGKILL')
    await ended
    const known = new Map(acknowledgements(said.output()))
    const memory = await openMemory({ dataFolder: ':memory:', databaseUrl: server.url })
    const lost = await missingFrom(memory, known)
    await memory.close()
    process.stdout.write(`${restarts} restarts: ${known.size} writes acknowledged, ${lost.length} lost\n`)
    expect(lost).toEqual([])
  } finally {
    writing.kill('SIGKILL')
    await server.close()
  }
})
