// Packs that only name what something is for: a box of LiPos, a strap for a battery.

import type { Told } from './relation.ts'

const named = /^(?:packs?|lipos?|lihvs?|batter(?:y|ies)|batts?)$/
const holder = /^(?:box|boxes|bag|bags|sack|safe|pouch|bunker|strap|straps|checker|alarm|holder)$/
const itself = /^(?:it|its|them|they|s|mah|cells?|one|ones)$/

/** "Can I drill a hole in the LiPo box": of the box, and of no pack. */
export function isOfHolder({ marked: { words } }: Told): boolean {
  const packs = words.flatMap(({ w }, at) => (named.test(w) ? [at] : []))
  const isHeld = (at: number) => words[at + 1]?.cut === 0 && holder.test(words[at + 1]?.w ?? '')
  return packs.length > 0 && packs.every(isHeld) && !words.some(({ w }) => itself.test(w))
}
