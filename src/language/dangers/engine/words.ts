// A text as words: folded, with where each stands, and where clauses and sentences end.

import { isGrouped } from '../../scan/number.ts'

export interface Word {
  /** In lower case, without accents and apostrophes; a number as typed, with a point. */
  readonly w: string
  readonly start: number
  readonly end: number
  /** Its value, of a number. */
  readonly value?: number
  /** What stands before it: 0 nothing, 1 the end of a clause, 2 the end of a sentence. */
  readonly cut: 0 | 1 | 2
  /** The end of the sentence before it was a question mark. */
  readonly asked?: boolean
}

const wordOrNumber = /\d+(?:[.,]\d+)*|[°º](?: ?[cC](?!\p{L}))?|[\p{L}\p{M}'’´`]+|[^\s]|\n/gu
/** A line may be wrapped within its sentence. */
const clauseEnd = /[,;:()[\]–—"“”|/*\n]/u
const sentenceEnd = /[.!?…]/u
const marks = /\p{M}/gu
const quotes = /['’´`]/gu

const special: Readonly<Record<string, string>> = { ß: 'ss', ø: 'o', ł: 'l', æ: 'ae', œ: 'oe' }
const plainLetters = /^[a-z]+$/

/** In lower case, without accents and apostrophes. */
function folded(word: string): string {
  // Some marks that stand for an apostrophe would come apart into a space and an accent.
  const low = word.toLowerCase().replace(quotes, '')
  if (plainLetters.test(low)) return low
  return low
    .normalize('NFKD')
    .replace(marks, '')
    .replace(/[ßøłæœ]/gu, letter => special[letter] ?? letter)
}

/** The words of a text; a unit that clings to its number is a word of its own. Linear in the text. */
export function wordsOf(text: string): readonly Word[] {
  const words: Word[] = []
  let cut: 0 | 1 | 2 = 2
  let asked = false
  for (const match of text.matchAll(wordOrNumber)) {
    const typed = match[0]
    const start = match.index
    const first = typed.codePointAt(0) ?? 0
    const isNumber = first >= 48 && first <= 57
    if (isNumber) {
      const value = isGrouped(text, start, start + typed.length) ? Number(typed.replace(',', '')) : numberOf(typed)
      if (isBelowZero(text, start)) {
        words.push({ w: 'minus', start: start - 1, end: start, cut, asked })
        cut = 0
        asked = false
      }
      words.push({ w: typed, start, end: start + typed.length, value, cut, asked })
    } else {
      // The letter of a temperature is no C rate.
      const sign = typed === '%' ? '%' : /^[°º]/u.test(typed) ? 'degrees' : undefined
      if (sign) {
        words.push({ w: sign, start, end: start + typed.length, cut, asked })
        cut = 0
        continue
      }
      const folds = folded(typed)
      const w = folds === 'c' && isOfWeather(text, words.at(-1), start) ? 'degrees' : folds
      if (w === 'minus' && isOfPack(text, start + typed.length)) continue
      if (!/^\p{L}/u.test(w)) {
        if (sentenceEnd.test(typed)) {
          cut = 2
          asked = typed === '?' || asked
        } else if (clauseEnd.test(typed) || (typed === '-' && text[start - 1] === ' ')) {
          cut = cut === 2 ? 2 : 1
        }
        continue
      }
      words.push({ w, start, end: start + typed.length, cut, asked })
    }
    cut = 0
    asked = false
  }
  return words
}

const weather = '(?:outside|outdoors|weather|ambient|shade|heat|heatwave|temperatures?|temp|forecast|sun|day)'
const weatherBehind = new RegExp(String.raw`^(?:[ -]\w+){0,2}?[ -]${weather}\b`, 'i')
const weatherBefore = new RegExp(String.raw`\b${weather}(?: (?:is|of|was|at|around|about|says))* ?$`, 'i')
const ofWeather_C = { least: 12, most: 60 } as const
const longestWeather = 24

/** "At 38C outside", "temperature is 30C": no rate either; "1C in the shade" is one. */
function isOfWeather(text: string, number: Word | undefined, at: number): boolean {
  const { value = 0, start = 0, end = 0 } = number ?? {}
  if (value < ofWeather_C.least || value > ofWeather_C.most || at > end + 1) return false
  return (
    weatherBehind.test(text.slice(at + 1, at + longestWeather)) ||
    weatherBefore.test(text.slice(Math.max(0, start - longestWeather), start))
  )
}

/** A sign that stands free before its number: "-6 last night", not "10-12". */
const isBelowZero = (text: string, start: number): boolean =>
  (text[start - 1] === '-' || text[start - 1] === '\u2212') &&
  (start < 2 || /[\s(]/u.test(text[start - 2] ?? '')) &&
  !isOfPack(text, start)

const ofPack = /^\s?(?:\d{3}|\d+(?:[.,]\d+)?\s?m?a(?:mps?|h)?(?!\p{L}))/iu
const longestOfPack = 12

/** Less than no current and no capacity is a slip, and nothing cold. */
const isOfPack = (text: string, at: number): boolean => ofPack.test(text.slice(at, at + longestOfPack))

function numberOf(typed: string): number {
  const comma = typed.includes('.') ? typed : typed.replace(',', '.')
  return Number.parseFloat(comma)
}

const inflected = /(?:ed|ing|[^s]s)$/
const endsInCvc = /^[^aeiou]*[aeiou][bdgmnprt]$/

/** A word of a list in its common forms; one that is inflected already stays as it is. */
export function formsOf(word: string): readonly string[] {
  if (word.length < 3 || inflected.test(word) || !plainLetters.test(word)) return [word]
  const short = endsInCvc.test(word) ? word + word.slice(-1) : word.endsWith('e') ? word.slice(0, -1) : word
  if (word.endsWith('ie')) return [word, `${word}s`]
  const plural = /(?:ch|sh|x|ss|z)$/.test(word) ? `${word}es` : `${word}s`
  const forms = [word, plural, `${short}ed`, `${short}ing`]
  if (/[^aeiou]y$/.test(word)) forms.push(`${word.slice(0, -1)}ies`, `${word.slice(0, -1)}ied`)
  return forms
}
