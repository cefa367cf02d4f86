// Backups by the script while a process writes without pause: each restores to one moment, with nothing half done.

import { spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { openMemory } from '../../../src/memory/opening/open.ts'
import { acknowledgements, missingFrom } from '../../support/kill-rounds.ts'
import { testDatabaseUrl } from '../../support/test-memory.ts'

test('a backup taken under load has all that was acknowledged before it, and no half of a change', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'backup-under-load-'))
  const data = join(folder, 'data')
  const url = await testDatabaseUrl()
  const run = (script: string, file: string, place: string, databaseUrl: string | undefined) => {
    const env = { PATH: process.env.PATH, CHARGEHAND_DATA: place, DATABASE_URL: databaseUrl ?? '' }
    const { status, stderr } = spawnSync(process.execPath, [`src/program/${script}.ts`, file], {
      env,
      encoding: 'utf8',
    })
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
  }
  const writing = spawn(process.execPath, ['tests/support/memory-writer.ts', data, '0', url ?? ''])
  let output = ''
  writing.stdout.on('data', chunk => {
    output += chunk
  })
  try {
    for (let count = 0; count < 5; count++) {
      await once(writing.stdout, 'data')
      const known = new Map(acknowledgements(output))
      const file = join(folder, `backup-${count}`)
      run('backup', file, data, url)
      const place = join(folder, `restored-${count}`)
      const restoredUrl = await testDatabaseUrl()
      run('restore', file, place, restoredUrl)
      const restored = await openMemory({ dataFolder: place, databaseUrl: restoredUrl })
      expect(await missingFrom(restored, known)).toEqual([])
      await restored.close()
    }
    expect(acknowledgements(output).length).toBeGreaterThan(100)
  } finally {
    writing.kill('SIGKILL')
    await once(writing, 'exit')
    rmSync(folder, { recursive: true })
  }
})
