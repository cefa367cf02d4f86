// What is worked out where it is first asked for.

/** What `of` says, which is asked at most once. */
export function once<T>(of: () => T): () => T {
  let known: { readonly said: T } | undefined
  return () => {
    known ??= { said: of() }
    return known.said
  }
}
