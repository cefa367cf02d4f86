// Keeps the Matrix SDK from writing to the console: what matters, the surface logs itself.

import type { Logger } from 'matrix-js-sdk/lib/logger.js'
import { logger as sharedLogger } from 'matrix-js-sdk/lib/logger.js'

const nothing = (): void => {}

/** For every client. */
export const quiet: Logger = {
  trace: nothing,
  debug: nothing,
  info: nothing,
  warn: nothing,
  error: nothing,
  getChild: () => quiet,
}

/** Parts of the SDK write to this one whatever logger a client has; its children take over its methods. */
Object.assign(sharedLogger, quiet, { log: nothing })
