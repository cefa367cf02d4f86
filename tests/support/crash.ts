// Ends by a fault that nobody caught, its error full of tokens: run as a process of its own by the crash test.

import { endOnUncaught } from '../../src/program/crash.ts'
import { createLog } from '../../src/program/log.ts'
import { leakyError } from './discord-commands.ts'

const [guard, how, secret = ''] = process.argv.slice(2)
if (guard === 'guarded') endOnUncaught(createLog('info'))
setTimeout(() => {
  if (how === 'thrown') throw leakyError(secret)
  Promise.reject(leakyError(secret))
})
