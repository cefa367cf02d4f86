// A number for a text, so that no list of features has to be kept as text.

/** FNV-1a over the UTF-16 units: 0 to 2³²-1. */
export function hashOf(text: string): number {
  let hash = 0x811c9dc5
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193)
  return hash >>> 0
}

/** One number for two, whose order counts. */
export function mixed(one: number, other: number): number {
  let hash = (Math.imul(one, 0x9e3779b1) + other) | 0
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b)
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35)
  return (hash ^ (hash >>> 16)) >>> 0
}
