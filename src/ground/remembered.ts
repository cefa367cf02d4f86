// Words come again and again: what was worked out of one is not worked out anew.

/** Remembers what `of` says of each word, and begins anew at `most` of them. Only for what depends on nothing else. */
export function remembered<T>(most: number, of: (word: string) => T): (word: string) => T {
  const known = new Map<string, { readonly said: T }>()
  return word => {
    const before = known.get(word)
    if (before) return before.said
    const said = of(word)
    if (known.size >= most) known.clear()
    known.set(word, { said })
    return said
  }
}
