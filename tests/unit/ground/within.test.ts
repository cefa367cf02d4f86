// Waiting, but not for ever; and not giving up what came while the program was too busy to hear of it.

import { expect, test } from 'vitest'
import { patiently, within } from '../../../src/ground/within.ts'

const never = new Promise<string>(() => {})
const busyFor = (time_ms: number) => {
  const since = performance.now()
  while (performance.now() - since < time_ms);
}

test.each([within, patiently])('what does not come is undefined when the time is over', async wait => {
  const since = performance.now()
  expect(await wait(50, never)).toBeUndefined()
  expect(performance.now() - since).toBeLessThan(500)
})

test.each([within, patiently])('what comes is there, and what fails fails', async wait => {
  expect(await wait(1000, Promise.resolve('here'))).toBe('here')
  await expect(wait(1000, Promise.reject(new Error('no')))).rejects.toThrow('no')
})

test('what came while the program was busy is heard', async () => {
  // Both are due before the program hears of either, and the end of patience first.
  const coming = new Promise<string>(resolve => setTimeout(resolve, 60, 'here'))
  const waiting = patiently(50, coming)
  busyFor(400)
  expect(await waiting).toBe('here')
})
