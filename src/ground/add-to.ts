// Lists by key.

/** Puts the value into the list of its key, once. */
export function addTo<K, V>(lists: Map<K, V[]>, key: K, value: V): void {
  const there = lists.get(key)
  if (there === undefined) lists.set(key, [value])
  else if (!there.includes(value)) there.push(value)
}
