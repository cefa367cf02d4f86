// The program as a shell sees it, at its shortest; the rest stands in tests/e2e/process.

import { execFile } from 'node:child_process'
import { promisify } from 'node:util'
import { expect, it } from 'vitest'

it('starts, answers one question on standard output, says nothing on the other, and ends', async () => {
  const question = 'current pack: 3S 720 LiHV charger: 0.5/1/2/4A'
  const { stdout, stderr } = await promisify(execFile)(process.execPath, ['src/room/ask.ts', question])
  expect(stderr).toBe('')
  expect(stdout).toContain('4.35')
})
