// How a test of an assistant ends: with no fault of the program itself.

import { expect } from 'vitest'
import type { Asking } from './ask.ts'

export async function endFaultless({ faults, memory }: Asking): Promise<void> {
  expect(faults).toEqual([])
  await memory.close()
}
