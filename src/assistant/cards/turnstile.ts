// Lets work begin one after the other, each in a turn of the event loop of its own: what waits for the loop never waits for
// a crowd.

import { setImmediate as nextTurn } from 'node:timers/promises'

/**
 * Resolves when it is one's turn. With `isUrgent` that is looked at first, in a short turn before all that only waits; what
 * is urgent goes on in that turn.
 */
export type Turnstile = (isUrgent?: () => boolean) => Promise<void>

export function createTurnstile(): Turnstile {
  const looks: (() => void)[] = []
  const others: (() => void)[] = []
  let isTurning = false

  const next = () => looks.shift() ?? others.shift()

  async function turn(): Promise<void> {
    isTurning = true
    await nextTurn()
    for (let begin = next(); begin; begin = next()) {
      begin()
      await nextTurn()
    }
    isTurning = false
  }

  const waitIn = (lane: (() => void)[]) =>
    new Promise<void>(resolve => {
      lane.push(resolve)
      if (!isTurning) void turn()
    })

  return async isUrgent => {
    if (isUrgent) await waitIn(looks)
    if (!isUrgent?.()) await waitIn(others)
  }
}
