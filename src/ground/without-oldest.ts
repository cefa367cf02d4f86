// What is kept by name does not grow for ever.

/** Lets go of what was put in first, where there are more than `most`. */
export function withoutOldest<K>(kept: Map<K, unknown>, most: number): void {
  if (kept.size <= most) return
  const { value, done } = kept.keys().next()
  if (!done) kept.delete(value)
}
