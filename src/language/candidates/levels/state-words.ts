// Words for how full a pack is: "full", "half full", "two thirds", "just landed", "nearly empty"; and "dead", which names none.

import { wordSet } from '../../../ground/word-set.ts'
import type { Found, Sentence } from '../sentence/sentence.ts'
import { phrasesOf } from '../sentence/tokens.ts'

/** By what they are written as; of phrases that begin alike the longest counts. */
const named: ReadonlyMap<string, string> = new Map(
  (
    [
      [
        'full',
        'full, fully charged, full charge, fully full, completely full, charged, filled, freshly charged, topped up, topped off, to the top, the top, voll, plein, lleno, full up, to full',
      ],
      [
        'storage',
        'storage, storage voltage, storage level, storage charge, storage volts, storage mode, store, lager, lagerspannung, storage point',
      ],
      [
        'empty',
        'empty, flat, nearly empty, almost empty, quite empty, pretty empty, fully empty, completely empty, near empty, discharged, flown, flown down, flown out, just flown, just landed, just down, landed, after landing, on landing, straight from a flight, straight after a flight, fresh from a flight, ran down, run down, used up, flat - ish, flatish, leer, leergeflogen, vide, drained',
      ],
      [
        '50%',
        'half, half full, half charged, half empty, half way, halfway, half gone, half left, half charge, about half, 50 / 50, half capacity',
      ],
      ['25%', 'quarter full, a quarter full, a quarter, a quarter left, quarter left, quarter charge'],
      [
        '75%',
        'three quarters, three quarters full, 3 quarters, 3 quarters full, 3 / 4, 3 / 4 full, three quarter full',
      ],
      ['33%', 'third full, a third full, a third, about a third, one third, third left, a third left'],
      ['67%', 'two thirds, two thirds full, two third'],
      ['', 'dead, stone dead, dead flat, completely dead, totally dead, zero, nothing left, 0'],
    ] as const
  ).flatMap(([text, phrases]) => phrases.split(', ').map(phrase => [phrase, text] as const)),
)
const phrases = phrasesOf(named.keys())
const cues = wordSet('from to at is are till until its was now came be them it all up down "s and or')
/** Behind these words a full or flat thing is another one. */
const otherThing = wordSet(
  'throttle sun size speed power stop of screen time moon day days bag bags box boxes room shelf unit tin cupboard bench surface spot tyre battery curve hour an a the year house container bunker drawer case rack out',
)
const ofMotion = wordSet('speed throttle power whack tilt blast steam rate size')
const weak = wordSet('half charged filled landed flown store zero 0 dead drained discharged plein')

export function findStateWords(sentence: Sentence): readonly Found[] {
  const found: Found[] = []
  let inside = 0
  for (let first = 0; first < sentence.tokens.length; first += 1) {
    const after = sentence.phraseEnd(first, phrases)
    // "How full": what is asked, and nothing told.
    if (after === undefined || first < inside || sentence.word(first - 1) === 'how') continue
    const words = sentence.tokens.slice(first, after).map(({ word }) => word)
    const phrase = words.join(' ')
    const text = named.get(phrase) ?? ''
    // "A third charger", "a third at 3.8": one more of them.
    if (/third$/.test(phrase) && /^(?!(?:of|or|and|then|now|to|in)$)[a-z]/.test(sentence.word(after))) continue
    // "Flown to 3.5 a cell": the figure tells.
    if (text === 'empty' && sentence.word(after) === 'to' && sentence.numerals[after + 1]) continue
    if (phrase === 'full' && ofMotion.has(sentence.word(after))) continue
    if (phrase === 'half' && otherThing.has(sentence.word(after))) continue
    if (phrase === '0' && (sentence.glued(after) || sentence.glued(first))) continue
    if (/^(?:to full|the top|to the top)$/.test(phrase) && words[0] !== 'to' && text === 'full') continue
    const offset = phrase === 'to full' ? 1 : 0
    const score = text === '' ? 0 : scoreOf(sentence, first, after, words.length)
    found.push({ kind: 'state', text, first: first + offset, after, score })
    inside = after
  }
  return found
}

function scoreOf(sentence: Sentence, first: number, after: number, length: number): number {
  if (otherThing.has(sentence.word(after)) && length === 1) return 0.15
  if (sentence.word(after) === '-' && sentence.glued(after)) return 0.3
  if (length > 1) return 0.85
  const likely = cues.has(sentence.word(first - 1)) ? 0.9 : 0.6
  return weak.has(sentence.word(first)) ? likely - 0.25 : likely
}
