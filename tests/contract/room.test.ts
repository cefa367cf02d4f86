// The program as a shell sees it, at its shortest; the rest stands in tests/e2e/process.

import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { expect, it, onTestFinished } from 'vitest'

it('starts, answers one question on standard output, says nothing on the other, and ends', async () => {
  const question = 'current pack: 3S 720 LiHV charger: 0.5/1/2/4A'
  // Not in the folder of whoever tries the room here, with rules of their own.
  const folder = mkdtempSync(join(tmpdir(), 'room-'))
  onTestFinished(() => rmSync(folder, { recursive: true }))
  const env = { ...process.env, CHARGEHAND_DATA: folder }
  const { stdout, stderr } = await promisify(execFile)(process.execPath, ['src/room/ask.ts', question], { env })
  expect(stderr).toBe('')
  expect(stdout).toContain('4.35')
})
