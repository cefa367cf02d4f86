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

const breath_ms = 100

/** The same, but while the program itself is too busy to hear of it, that is not held against what is waited for. */
export async function patiently<T>(patience_ms: number, promise: Promise<T>): Promise<T | undefined> {
  const due_ms = performance.now() + patience_ms
  const found = await within(patience_ms, promise)
  const wasBusy = performance.now() - due_ms > breath_ms
  return found === undefined && wasBusy ? patiently(breath_ms, promise) : found
}
