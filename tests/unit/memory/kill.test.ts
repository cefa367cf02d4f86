// What was acknowledged survives a kill, in a few rounds; the end-to-end tier has two hundred.

import { expect, test } from 'vitest'
import { killRounds } from '../../support/kill-rounds.ts'

test('killed while writing, nothing acknowledged is lost and it starts clean', { timeout: 60_000 }, async () => {
  const { kills, killsWhileWriting, lost } = await killRounds(5)
  expect(lost).toEqual([])
  expect(kills).toBe(5)
  expect(killsWhileWriting).toBeGreaterThanOrEqual(3)
})
