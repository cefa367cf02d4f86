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
export function describeError(error: unknown): { name: string; message: string; code?: unknown; stack?: string } {
  if (!(error instanceof Error)) return { name: 'unknown', message: discreet(String(error)) }
  const { name, message, stack } = error
  const code = (error as { code?: unknown }).code
  return { name, message: discreet(message), code, stack: stack && discreet(stack) }
}

/**
 * Strikes tokens from texts: those in URLs of Discord and Matrix, and whatever has the form of a Discord bot's. And what
 * an error quotes, which may be what a member wrote: a parser shows the text that it did not like, a database a value.
 */
function discreet(text: string): string {
  return text
    .replace(/(?<!\b(?:relation|table|column|constraint|database|index|role|type) )"[^"]+"/g, '"(hidden)"')
    .replace(/(Invalid regular expression: )\/.*\/(?=\w*: )/gs, '$1(hidden)')
    .replace(/\b(interactions|webhooks)\/(\d+)\/[^/\s"'?]+/g, '$1/$2/(hidden)')
    .replace(/\b(access_token=)[^&\s"']+/g, '$1(hidden)')
    .replace(/\b[\w-]{20,}\.[\w-]{6,}\.[\w-]{25,}/g, '(hidden)')
}
