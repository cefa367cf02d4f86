// The last net: a fault that nobody caught is logged by chosen fields, never dumped whole, and ends the process.

import { describeError, type Log } from './log.ts'

/** Left alone, Node would print every field of the error: those of HTTP clients hold tokens. */
export function endOnUncaught(log: Log): void {
  process.on('uncaughtException', error => {
    log.fatal({ error: describeError(error) }, 'a fault that nobody caught')
    process.exit(1)
  })
}
