// What is asked of an answer itself: its reasons, its figures, what to think of it, or to have it said shorter.

import { wordSet } from '../../../ground/word-set.ts'
import { lookedUp } from '../../model/words.ts'

export type OfAnswer = 'why' | 'figures' | 'short' | 'judged'

/** Words of each; where several stand the first decides. */
const askedBy: readonly (readonly [OfAnswer, ReadonlySet<string>])[] = [
  ['figures', wordSet('figures numbers details detail everything')],
  [
    'why',
    wordSet(
      'why working workings worked calculate calculated calculation math maths sum sums formula reason reasons reasoning reckoned explain explanation proof',
    ),
  ],
  [
    'short',
    wordSet(
      'short shorter shortly brief briefly simple simpler simply simplify plain plainer easy easier summary summarise summarize tldr sentence sentences line lines english shorten briefer fewer',
    ),
  ],
]
/** What somebody thinks of an answer: its reasons tell. */
const judging = wordSet(
  'bad good much little normal safe dangerous harmful harm harms fine high low fast slow worth mean means meaning hard gentle right wrong sure serious risky ok okay problem lot worse better healthy wise sensible exaggerated ages loads allowed permitted legal enough suffice carry carries hold holds manage manages cope copes',
)
const pointing = wordSet('it its this that thats these those they them car supply psu generator inverter brick')
/** Words that may stand beside these and tell nothing. */
const beside = wordSet(
  'a an the one is isnt are arent was be for in on of to with and but so or oh hm well please pls can could cant would will you u me i my we us say said show tell give put make do does dont did how what whats again then now just really very too more less bit kind pack packs battery batteries lipo lipos cell cells charger answer word words only get here from all your at not no',
)

/** Where an answer has its figures from. */
const asksSource =
  /^\W*(?:(?:and|ok|but|so|hm+|sorry|excuse me)\W+)*(?:where (?:do|did|have) you (?:get|got|take|have|find|read) (?:that|this|it|these|those|them)(?: figures?| numbers?)?(?: from)?|where (?:does|do|did) (?:that|this|it|these|those)(?: figures?| numbers?)? come from|says who|who says(?: so)?|according to (?:what|whom?)|what(?:'s| is| are) (?:your|the) sources?(?: for (?:that|this))?)\W*$/i

/** So few words that ask speak of what was said last. */
const few = 3
const letters = /\p{L}[\p{L}'’-]*/gu

/** Undefined where a word or a number tells of anything else. */
export function ofAnswer(text: string): OfAnswer | undefined {
  if (/\d/.test(text)) return undefined
  if (asksSource.test(text)) return 'why'
  const words = (text.match(letters) ?? []).map(lookedUp)
  const isPlain = (word: string) => pointing.has(word) || beside.has(word)
  const asked = askedBy.find(([, set]) => words.some(word => set.has(word)))
  const isOnly = (set: ReadonlySet<string>) => words.every(word => set.has(word) || isPlain(word))
  if (asked) return isOnly(asked[1]) ? asked[0] : undefined
  const isOfIt = words.some(word => pointing.has(word)) || (words.length <= few && text.includes('?'))
  const judges = words.some(word => judging.has(word)) && isOfIt
  return judges && isOnly(judging) && !words.includes('not') ? 'judged' : undefined
}
