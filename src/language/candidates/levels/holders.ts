// How many packs stand at a level: "five at 3.65 and one 3.98", "all between 3.63 and 3.66", "the other 3.8".

import { wordSet } from '../../../ground/word-set.ts'
import type { Holders } from '../sentence/candidate.ts'
import type { Sentence } from '../sentence/sentence.ts'

const every = wordSet('all both each every everything everyone alle toutes todos')
/** The highest of cells or packs stands for all that are not told of: so they lie as far apart as they can. */
const others = wordSet('others rest remaining highest strongest best')
const another = wordSet('other another')
const parting = wordSet('and or but n if')
const mostBetween = 5
const mostPacks = 60

/** What the words right before the level say of that; undefined where they say nothing. */
export function holdersBefore(sentence: Sentence, first: number): Holders | undefined {
  for (let at = first - 1; at >= 0 && at >= first - mostBetween; at -= 1) {
    const word = sentence.word(at)
    if (every.has(word)) return 'all'
    if (others.has(word)) return 'rest'
    const numeral = sentence.numerals[at]
    if (numeral) return isCount(sentence, at) ? numeral.value : undefined
    if (another.has(word)) return 1
    if (sentence.tokens[at]?.kind !== 'word' || parting.has(word)) return undefined
  }
  return undefined
}

/** Not the capacity of a pack, not another level, and no place: "on one board at 3.8". */
function isCount(sentence: Sentence, at: number): boolean {
  const numeral = sentence.wholeNumeral(at, 1, mostPacks)
  return (
    numeral !== undefined &&
    !sentence.isStuck(numeral.after) &&
    sentence.measures[at]?.length === 0 &&
    !/^(?:s|cells?|on|in|from|off|via)$/.test(sentence.word(at - 1))
  )
}
