// Packs that only name what something is for: a box of LiPos, a strap for a battery.

import { crossesClause, type Told } from './relation.ts'

const named = /^(?:packs?|lipos?|lihvs?|batter(?:y|ies)|batts?)$/
const holder = /^(?:box|boxes|bag|bags|sack|safe|pouch|bunker|strap|straps|checker|alarm|holder)$/
const itself = /^(?:it|its|them|they|s|mah|cells?|one|ones)$/

/** "Can I drill a hole in the LiPo box": of the box, and of no pack. */
export function isOfHolder({ marked: { words } }: Told): boolean {
  const packs = words.flatMap(({ w }, at) => (named.test(w) ? [at] : []))
  const isHeld = (at: number) => words[at + 1]?.cut === 0 && holder.test(words[at + 1]?.w ?? '')
  return packs.length > 0 && packs.every(isHeld) && !words.some(({ w }) => itself.test(w))
}

const label = /^(?:label|labels|sticker|stickers)$/
const whole =
  /^(?:cells?|below|foil|pouch|skin|corner|edge|edges|side|wrap|shrink|dent\w*|leak\w*|punctur\w*|pierc\w*)$/
const mostApart = 5

/** "The label is torn", "a scratched sticker": paper, and no foil below it is spoken of. */
export function isOfLabel(told: Told): boolean {
  const { words } = told.marked
  const hurt = words.flatMap((_, at) => (told.is(at, 'pierce') ? [at] : []))
  const isNear = (at: number) => {
    const from = words.slice(0, at).findLastIndex(({ w }) => label.test(w))
    const isBehind = from >= 0 && at - from <= mostApart && !crossesClause(told, from, at)
    // "The label of my battery is torn".
    const isItsOwn = /^(?:of|on|from)$/.test(words[from + 1]?.w ?? '')
    return (
      label.test(words[at + 1]?.w ?? '') ||
      (isBehind && (isItsOwn || !words.slice(from, at).some(({ w }) => named.test(w))))
    )
  }
  return hurt.length > 0 && hurt.every(isNear) && !words.some(({ w }) => whole.test(w))
}
