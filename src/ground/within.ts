// Waiting for something, but not for ever.

/** Undefined where it takes longer; what comes later is dropped. */
export async function within<T>(patience_ms: number, promise: Promise<T>): Promise<T | undefined> {
  let timer: NodeJS.Timeout | undefined
  const patience = new Promise<undefined>(resolve => {
    timer = setTimeout(resolve, patience_ms, undefined)
  })
  try {
    return await Promise.race([promise, patience])
  } finally {
    clearTimeout(timer)
  }
}
