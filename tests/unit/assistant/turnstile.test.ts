// Whose turn it is while a crowd asks: whoever tells of danger first, then all in the order in which they came.

import { expect, test } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { createTurnstile } from '../../../src/assistant/cards/turnstile.ts'
import { createAssistant } from '../../../src/assistant/running/assistant.ts'
import { member } from '../../support/ask.ts'
import { openTestMemory } from '../../support/test-memory.ts'

test('in their order, each in a turn of its own, but what is urgent first', async () => {
  const myTurn = createTurnstile()
  const gone: string[] = []
  await Promise.all([...'ab!cd!'].map(name => myTurn(() => name === '!').then(() => gone.push(name))))
  expect(gone.join('')).toBe('!!abcd')
})

test('whoever tells of danger does not wait for a crowd', async () => {
  const memory = await openTestMemory()
  const assistant = createAssistant({ commands, memory, onFault: () => {} })
  const asked = (words: string, by: number) =>
    assistant.answer(words, { ...member, asker: { ...member.asker, id: `room:${by}` } })
  let answered = 0
  const crowd = Array.from({ length: 100 }, async (_, by) => {
    await asked(`how long to charge a 3S ${900 + by} LiPo at 0.5A from 3.7V per cell`, by)
    answered += 1
  })
  expect((await asked('my pack is on fire', 100)).verdict).toBe('do not charge')
  expect(answered).toBeLessThan(5)
  await Promise.all(crowd)
  await memory.close()
})
