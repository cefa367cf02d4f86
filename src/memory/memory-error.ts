// Why the memory cannot be used.

/** What is wrong with it: `away` and `locked` may heal by waiting, the others want somebody's hand. */
export type MemoryFault = 'away' | 'locked' | 'full' | 'read-only' | 'closed' | 'broken' | 'newer'

/** The stored memory cannot be used; the message says why in plain words. */
export class MemoryError extends Error {
  override name = 'MemoryError'
  readonly fault: MemoryFault | undefined

  constructor(message: string, fault?: MemoryFault) {
    super(message)
    this.fault = fault
  }
}

/** https://www.sqlite.org/rescode.html, without what stands above the lowest byte. */
const sqliteFaults: Readonly<Record<number, MemoryFault>> = {
  3: 'closed',
  5: 'locked',
  6: 'locked',
  8: 'read-only',
  10: 'full',
  11: 'broken',
  13: 'full',
  14: 'closed',
  26: 'broken',
}

/** https://www.postgresql.org/docs/current/errcodes-appendix.html, and what Node says of connections. */
const codes: readonly (readonly [RegExp, MemoryFault])[] = [
  [/^25006$/, 'read-only'],
  [/^(?:53100|ENOSPC)$/, 'full'],
  [/^(?:28|3D)...$|^(?:EACCES|EPERM|ENOENT|ENOTDIR|EISDIR)$/, 'closed'],
  [/^EROFS$/, 'read-only'],
  [/^XX00[12]$/, 'broken'],
  [/^(?:08|57|53)...$|^(?:55P03|25P03)$|^E(?:CONN|HOST|NET|TIMEDOUT|NOTFOUND|PIPE|AI_AGAIN)/, 'away'],
]

/** The driver gives these no code. */
const awayWords = /connection|timeout|not queryable|driver has already been destroyed/i

/** Undefined where it is no fault of the database: then it is one of ours. */
export function faultOfMemory(error: unknown): MemoryFault | undefined {
  if (!(error instanceof Error)) return undefined
  if (error instanceof MemoryError) return error.fault
  const { code, errcode, message, name } = error as Error & { code?: unknown; errcode?: number }
  if (errcode !== undefined) return sqliteFaults[errcode & 0xff]
  if (name === 'AbortedTransactionError') return 'away'
  if (typeof code === 'string') return codes.find(([pattern]) => pattern.test(code))?.[1]
  return awayWords.test(message) ? 'away' : undefined
}
