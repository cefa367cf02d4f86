// Words for how full a pack is: "full", "half full", "two thirds", "just landed", "nearly empty"; and "dead", which names none.

import { wordSet } from '../../../ground/word-set.ts'
import { levelNamed } from '../../parts/level-words.ts'
import type { Found, Sentence } from '../sentence/sentence.ts'
import { usedSpan } from './shares.ts'

const cues = wordSet('from to at is are till until its was now came be them it all up down "s and or')
/** Behind these words a full or flat thing is another one. */
const otherThing = wordSet(
  'throttle sun size speed power stop of screen time moon day days bag bags box boxes room shelf unit tin cupboard bench surface spot tyre battery curve hour an a the year house container bunker drawer case rack out',
)
const doing = wordSet('with at by from to through using via the my a it them this these our his her')
const ofMotion = wordSet('speed throttle power whack tilt blast steam rate size')
const weak = wordSet('half charged filled landed flown store zero 0 dead drained discharged plein')

export function findStateWords(sentence: Sentence): readonly Found[] {
  const found: Found[] = []
  let inside = 0
  for (let first = 0; first < sentence.tokens.length; first += 1) {
    const level = levelNamed(sentence, first)
    // "How full": what is asked, and nothing told.
    if (level === undefined || first < inside || sentence.word(first - 1) === 'how') continue
    const { text, after } = level
    // "Two thirds gone"; of a half as much is left.
    const used = text.endsWith('%') && text !== '50%' ? usedSpan(sentence, first, after) : undefined
    // "We use half throttle", "use a third charger".
    const isOther = used?.after === after && !/^(?:of|out|from|[.,;:?!]|)$/.test(sentence.word(after))
    if (used && !isOther) {
      found.push({ kind: 'state', text: `${100 - Number.parseInt(text, 10)}%`, ...used, score: 0.9, remains: true })
      inside = used.after
      continue
    }
    const words = sentence.tokens.slice(first, after).map(({ word }) => word)
    const phrase = words.join(' ')
    // "A third charger", "a third at 3.8": one more of them.
    if (/third$/.test(phrase) && /^(?!(?:of|or|and|then|now|to|in)$)[a-z]/.test(sentence.word(after))) continue
    // "Flown to 3.5 a cell": the figure tells.
    if (text === 'empty' && sentence.word(after) === 'to' && sentence.numerals[after + 1]) continue
    if (phrase === 'full' && ofMotion.has(sentence.word(after))) continue
    // "Charged with 900 mAh", "charged it at noon": somebody did.
    if (phrase === 'charged' && doing.has(sentence.word(after))) continue
    if (phrase === 'half' && otherThing.has(sentence.word(after))) continue
    if (phrase === '0' && (sentence.glued(after) || sentence.glued(first))) continue
    if (/^(?:to full|the top|to the top)$/.test(phrase) && words[0] !== 'to' && text === 'full') continue
    if (text === '' && words.length === 1 && !endsClause(sentence, after)) continue
    const offset = phrase === 'to full' ? 1 : 0
    const score = text === '' ? 0 : scoreOf(sentence, first, after, words.length)
    found.push({ kind: 'state', text, first: first + offset, after, score })
    inside = after
  }
  return found
}

/** "It is dead simple", "zero idea", "a dead cell": said of what follows, and of no pack. */
const endsClause = (sentence: Sentence, after: number): boolean =>
  sentence.tokens[after]?.kind !== 'word' || goesOn.has(sentence.word(after))
const goesOn = wordSet(
  'now and but so or after when since again flat pack packs lipo lipos lihv life li battery batteries what how can should is are to left',
)

function scoreOf(sentence: Sentence, first: number, after: number, length: number): number {
  if (otherThing.has(sentence.word(after)) && length === 1) return 0.15
  if (sentence.word(after) === '-' && sentence.glued(after)) return 0.3
  if (length > 1) return 0.85
  const likely = cues.has(sentence.word(first - 1)) ? 0.9 : 0.6
  return weak.has(sentence.word(first)) ? likely - 0.25 : likely
}
