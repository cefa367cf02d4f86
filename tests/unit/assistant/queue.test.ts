// Whose turn it is in a room.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { createQueue, type Waiting } from '../../../src/assistant/running/queue.ts'

interface One extends Waiting {
  readonly at: number
}
const said = (senders: string): One[] => [...senders].map((sender, at) => ({ sender, urgent: sender === '!', at }))

function order(some: readonly One[]): One[] {
  const queue = createQueue<One>()
  queue.add(some)
  const taken: One[] = []
  for (let one = queue.next(); one; one = queue.next()) taken.push(one)
  return taken
}

it.each([
  ['in the order in which they came', 'abcab', 'abcab'],
  ['nobody more than three times in a row while others wait', 'aaaaaab', 'aaabaaa'],
  ['whoever is alone all at once', 'aaaaaa', 'aaaaaa'],
  ['an emergency before all', 'aab!', '!aab'],
])('%s', (_, came, taken) => {
  expect(
    order(said(came))
      .map(({ sender }) => sender)
      .join(''),
  ).toBe(taken)
})

it('takes everything once, and what one person said in their order', () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom('a', 'b', 'c', '!'), maxLength: 40 }), senders => {
      const some = said(senders)
      const taken = order(some)
      expect(new Set(taken)).toEqual(new Set(some))
      for (const sender of 'abc!') {
        const own = taken.filter(one => one.sender === sender).map(({ at }) => at)
        expect(own).toEqual(own.toSorted((a, b) => a - b))
      }
    }),
  )
})
