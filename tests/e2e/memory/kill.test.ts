// Two hundred kills at random moments of start and writing: nothing that was acknowledged is lost.

import { expect, test } from 'vitest'
import { killRounds } from '../../support/kill-rounds.ts'

test('killed two hundred times, nothing acknowledged is lost and it starts clean', { timeout: 1_200_000 }, async () => {
  const { kills, killsWhileWriting, acknowledged, lost } = await killRounds(200)
  process.stdout.write(
    `killed ${kills} times, ${killsWhileWriting} of them while writing: ${acknowledged} writes acknowledged, ${lost.length} lost\n`,
  )
  expect(lost).toEqual([])
  expect(kills).toBe(200)
  expect(killsWhileWriting).toBeGreaterThanOrEqual(100)
})
