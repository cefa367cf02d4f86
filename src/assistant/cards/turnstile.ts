// Lets work begin one after the other, each in a turn of the event loop of its own: what waits for the loop never waits for
// a crowd.

import { setImmediate as nextTurn } from 'node:timers/promises'

/** Resolves when it is one's turn. */
export function createTurnstile(): () => Promise<void> {
  let last: Promise<void> = Promise.resolve()
  return () => {
    last = last.then(() => nextTurn())
    return last
  }
}
