// The log: one JSON line an event on standard error, with secrets hidden.

import { type Logger, pino } from 'pino'
import type { Config } from './config.ts'

export type Log = Logger

const secretPaths = [
  'token',
  '*.token',
  '*.*.token',
  'authorization',
  '*.authorization',
  '*.headers',
  'password',
  '*.password',
]

export function createLog(level: Config['CHARGEHAND_LOG_LEVEL']): Log {
  return pino({ level, redact: { paths: secretPaths, censor: '(hidden)' }, base: null }, pino.destination(2))
}

/** The fields of an error that are safe to log: error objects of HTTP clients carry tokens in their URLs. */
export function describeError(error: unknown): {
  name: string
  message: string
  code?: unknown
  stack?: string
} {
  if (!(error instanceof Error)) return { name: 'unknown', message: String(error) }
  const { name, message, stack } = error
  const code = (error as { code?: unknown }).code
  return { name, message, ...(code === undefined ? {} : { code }), ...(stack ? { stack } : {}) }
}
