// Waiting for something, but not for ever.

/** Undefined where it takes longer; what comes later is dropped. */
export const within = <T>(patience_ms: number, promise: Promise<T>): Promise<T | undefined> =>
  new Promise((resolve, reject) => {
    const timer = setTimeout(resolve, patience_ms, undefined)
    promise.then(resolve, reject).finally(() => clearTimeout(timer))
  })

const breath_ms = 100

/** The same, but while the program itself is too busy to hear of it, that is not held against what is waited for. */
export async function patiently<T>(patience_ms: number, promise: Promise<T>): Promise<T | undefined> {
  const due_ms = performance.now() + patience_ms
  const found = await within(patience_ms, promise)
  const wasBusy = performance.now() - due_ms > breath_ms
  return found === undefined && wasBusy ? patiently(breath_ms, promise) : found
}
