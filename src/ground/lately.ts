// One question is read by many who ask the same of it.

const most = 3

/** Remembers what `of` says of the last few texts. Only for what depends on nothing else. */
export function lately<T>(of: (text: string) => T): (text: string) => T {
  const known: { readonly text: string; readonly said: T }[] = []
  return text => {
    const before = known.find(one => one.text === text)
    if (before) return before.said
    const said = of(text)
    known.unshift({ text, said })
    known.length = Math.min(known.length, most)
    return said
  }
}
