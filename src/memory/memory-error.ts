// Why the memory cannot be used.

/** The stored memory cannot be used; the message says why in plain words. */
export class MemoryError extends Error {
  override name = 'MemoryError'
}
