// The words for how full a pack is, and for what volts are of.

import { chemistries } from '../../charging/things/chemistries.ts'
import type { Sentence } from '../candidates/sentence/sentence.ts'
import { phraseSet, phrasesOf } from '../quantities/tokens.ts'

/** No cell of a known chemistry rests higher, also where it is overcharged a little. */
export const highestCell_V = Number((Math.max(...chemistries.map(({ full_V }) => full_V.value)) + 0.15).toFixed(2))

/** What each is written as, empty where it names no level; of phrases that begin alike the longest counts. */
const written: ReadonlyMap<string, string> = new Map(
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
        'half, half full, 1 / 2 full, half charged, half empty, half way, halfway, half gone, half left, half charge, about half, 50 / 50, half capacity',
      ],
      ['25%', 'quarter full, 1 / 4 full, a quarter full, a quarter, a quarter left, quarter left, quarter charge'],
      [
        '75%',
        'three quarters, three quarters full, 3 quarters, 3 quarters full, 3 / 4, 3 / 4 full, three quarter full',
      ],
      ['33%', 'third full, 1 / 3 full, a third full, a third, about a third, one third, third left, a third left'],
      ['67%', 'two thirds, 2 / 3 full, two thirds full, two third'],
      ['', 'dead, stone dead, dead flat, completely dead, totally dead, zero, nothing left, 0'],
    ] as const
  ).flatMap(([text, phrases]) => phrases.split(', ').map(phrase => [phrase, text] as const)),
)
const phrases = phrasesOf(written.keys())

export function levelNamed(sentence: Sentence, first: number): { text: string; after: number } | undefined {
  const after = sentence.phraseEnd(first, phrases)
  if (after === undefined) return undefined
  const words = sentence.tokens.slice(first, after).map(({ word }) => word)
  return { text: written.get(words.join(' ')) ?? '', after }
}

export const ofCell = phraseSet(
  'per cell, a cell, each cell, each, / cell, cell, on cell, by cell, per zelle, par élément, apiece, on each cell, in each cell, every cell, cells',
)
export const ofPack = phraseSet(
  'pack, total, in total, for the pack, of the pack, in the pack, for the whole pack, the whole pack, whole pack, all together, altogether, on the pack, insgesamt, across the pack, overall',
)
