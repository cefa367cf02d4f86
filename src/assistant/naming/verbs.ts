// Verbs that tell what is to be done with something that is kept, whatever it is called.

import { stemsOf } from '../../handbook/search/words.ts'
import words from './deed-words.json' with { type: 'json' }

export type Deed = keyof typeof words.deeds

const phrases = (Object.keys(words.deeds) as Deed[]).flatMap(deed =>
  words.deeds[deed].split(', ').map(phrase => ({ deed, stems: stemsOf(phrase) })),
)

const ofDeeds: ReadonlySet<string> = new Set(phrases.flatMap(({ stems }) => stems))

/** What is told beside it. */
export const besideDeeds = (text: string): string =>
  text.replace(/[\p{L}\p{N}]+/gu, word => (stemsOf(word).some(one => ofDeeds.has(one)) ? '' : word))

/** What the words tell first of all, the longer phrase before the shorter; a name among them is none of them. */
export function deedsIn(text: string): readonly Deed[] {
  const said = stemsOf(text)
  return phrases
    .flatMap(({ deed, stems }) => {
      const at = placeOf(stems, said)
      const isWanted = at >= 0 && !isOnlyTold(said.slice(Math.max(0, at - 2), at))
      return isWanted ? [{ deed, at, length: stems.length }] : []
    })
    .toSorted((a, b) => a.at - b.at || b.length - a.length)
    .map(({ deed }) => deed)
}

/** "Don't delete", "never just drop", "somebody deleted": it is not to be done. */
const isOnlyTold = (before: readonly string[]): boolean =>
  things.has(before.at(-1) ?? '') ||
  before.some(one => denials.has(one)) ||
  (tellers.has(before.at(-1) ?? '') && !modals.has(before.at(-2) ?? ''))
/** "A lamp post", "the pin": a thing, and nothing to be done. */
const things: ReadonlySet<string> = new Set(stemsOf(words.things))
const tellers: ReadonlySet<string> = new Set(stemsOf(words.tellers))
const modals: ReadonlySet<string> = new Set(stemsOf(words.modals))
const denials: ReadonlySet<string> = new Set(stemsOf(words.denials))

const mostBetween = 6

/** Where the first of them stands that has the others somewhere behind it; below 0 where they do not stand so. */
function placeOf([first = '', ...others]: readonly string[], said: readonly string[]): number {
  const start = said.indexOf(first)
  if (start < 0) return -1
  let at = start
  for (const one of others) {
    const next = at < 0 ? at : said.indexOf(one, at + 1)
    at = next - at > mostBetween ? -1 : next
  }
  return at < 0 ? -1 : start
}
