// In which tongue a text is written.

import { longestText } from '../../ground/plain-text.ts'
import { knownShare } from '../model/index.ts'
import { glossaryOf, type Tongue, typedWords, wordsOfTongues } from './glossaries.ts'

/** `other`: neither English nor one that is read in part. */
export type Language = Tongue | 'en' | 'other'

/** Less of the words known than this, and no tongue that speaks for it: it is none that is read. */
const leastKnown = 0.5
/** So much of the words known, English stands where another tongue has as many signs. */
const surelyKnown = 0.75
/** What cells are of is of no tongue. */
const parted = /\bli[- ](?:ion|po|poly|fe|hv)\b/gi
const latin = /\p{Script=Latin}/gu
const letters = /\p{L}/gu

/** By the commonest words of each tongue: borrowed ones ("akku", "lader") do not outweigh the English around them. */
export function languageOf(text: string): Language {
  const read = text.slice(0, longestText)
  if (countOf(read, latin) * 2 < countOf(read, letters)) return 'other'
  const words = typedWords(read.replace(parted, '')).filter(({ word }) => word.length > 1)
  const signs = (tongue: string) => words.filter(({ word }) => wordsOfTongues.get(tongue)?.has(word)).length
  const english = signs('en')
  const [best = 'en', most = 0] = [...wordsOfTongues.keys()]
    .filter(tongue => tongue !== 'en')
    .map(tongue => [tongue, signs(tongue)] as const)
    .reduce((one, other) => (other[1] > one[1] ? other : one))
  if (most > english || (most > 0 && most === english && knownShare(read) < surelyKnown))
    return isReadInPart(best as Language) ? (best as Tongue) : 'other'
  return english === 0 && words.length > 1 && knownShare(read) < leastKnown ? 'other' : 'en'
}

export const isReadInPart = (language: Language): language is Tongue => language in glossaryOf

const countOf = (text: string, sign: RegExp): number => text.match(sign)?.length ?? 0
