// Numbers as people write and say them: "2.2", "3,7", "1.500", "two point two", "fifteen hundred", "one and a half".

import { isGrouped, shiftedDecimal } from '../scan/number.ts'
import type { Tokens } from './tokens.ts'

export interface Numeral {
  readonly first: number
  readonly after: number
  /** With a decimal point, ready for an exact power of ten behind it. */
  readonly decimal: string
  readonly value: number
  readonly spelled: boolean
  /** Only a number where a unit follows: "half an", "a". */
  readonly needsUnit?: true
  /** The other reading, where the separator could mark thousands ("1.500"). */
  readonly thousands?: string | undefined
}

const small = new Map<string, number>([
  ...'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'
    .split(' ')
    .map((word, value) => [word, value] as const),
  ...'twenty thirty forty fifty sixty seventy eighty ninety'
    .split(' ')
    .map((word, tens) => [word, tens * 10 + 20] as const),
  // What members of other tongues fall back on, mostly for counts.
  ...Object.entries({ ein: 1, zwei: 2, drei: 3, vier: 4, fünf: 5, sechs: 6, acht: 8, neun: 9, zehn: 10 }),
  ...Object.entries({ deux: 2, trois: 3, quatre: 4, cinq: 5, dos: 2, tres: 3, cuatro: 4, dwa: 2, trzy: 3 }),
])
const fractions = new Map([
  ['half', 0.5],
  ['quarter', 0.25],
  ['third', 0.333],
  ['fifth', 0.2],
  ['tenth', 0.1],
  ['hundredth', 0.01],
])
const ambiguous = /^[1-9]\d{0,2}[.,]\d{3}$/

/** The numeral that begins at this token, as long as it goes; in talk a name may end in digits. */
export function numeralAt(sentence: Tokens, first: number, isTalk = true): Numeral | undefined {
  const whole = digitsAt(sentence, first, isTalk) ?? spelledAt(sentence, first)
  if (!whole) return fractionAt(sentence, first)
  const half = halfEnd(sentence, whole.after)
  if (half === undefined || !Number.isInteger(whole.value)) return whole
  return { ...whole, after: half, value: whole.value + 0.5, decimal: `${whole.decimal}.5` }
}

function digitsAt(sentence: Tokens, first: number, isTalk: boolean): Numeral | undefined {
  const token = sentence.tokens[first]
  if (token?.kind !== 'number' || (isTalk && isName(sentence, first))) return undefined
  const share = isTalk ? shareAt(sentence, first) : undefined
  if (share) return share
  if (isTalk && isGrouped(sentence.text, token.start, token.end))
    return plain(first, first + 1, token.word.replace(',', ''))
  const decimal = token.word.replace(',', '.').replace(/^\./, '0.')
  // "20k": thousands.
  if (sentence.word(first + 1) === 'k' && sentence.glued(first + 1))
    return plain(first, first + 2, shiftedDecimal(Number(decimal), 3))
  const numeral = plain(first, first + 1, decimal)
  return ambiguous.test(token.word)
    ? { ...numeral, thousands: token.word.replace(/[.,]/, '') }
    : (spacedThousands(sentence, first) ?? numeral)
}

/** "1/2C", "3/4 h": a share of one, where amps would be the steps of a charger. */
function shareAt(sentence: Tokens, first: number): Numeral | undefined {
  const [over, under] = [sentence.word(first), sentence.word(first + 2)]
  const isGlued = sentence.glued(first + 1) && sentence.glued(first + 2)
  const isShare = isGlued && sentence.word(first + 1) === '/' && sentence.word(first - 1) !== '/'
  const share = /^[1-9]$/.test(over) && /^(?:[2-9]|10|20)$/.test(under) ? Number(over) / Number(under) : 1
  return isShare && share < 1 && /^(?:c|h|hr|hours?)$/.test(sentence.word(first + 3))
    ? { ...plain(first, first + 3, String(Number(share.toPrecision(3)))), needsUnit: true }
    : undefined
}

const unitLike = /^(?:awg|gauge|x|pd|v|a|s|p|h|c|usb|ir|lipo|lihv|liion|life|hv|ion|cell|cells|lifepo|steps?|charger)$/

/** "A1", "gate4", "SE5": a name's own digits. */
function isName(sentence: Tokens, first: number): boolean {
  const before = sentence.tokens[first - 1]
  if (!sentence.glued(first) || before?.kind !== 'word' || before.glued) return false
  return !unitLike.test(before.word) || (before.word.length === 1 && /^[a-c]$/.test(before.word))
}

/** "5 000 mAh": only before the unit of a capacity, which is never that small. */
function spacedThousands(sentence: Tokens, first: number): Numeral | undefined {
  const [whole = '', rest = ''] = [sentence.word(first), sentence.word(first + 1)]
  if (!/^[1-9]\d?$/.test(whole) || !/^\d{3}$/.test(rest) || sentence.glued(first + 1)) return undefined
  return sentence.word(first + 2) === 'mah' ? plain(first, first + 2, whole + rest) : undefined
}

const plain = (first: number, after: number, decimal: string, spelled = false): Numeral => ({
  first,
  after,
  decimal,
  value: Number(decimal),
  spelled,
})

function spelledAt(sentence: Tokens, first: number): Numeral | undefined {
  if (sentence.word(first) === 'point') {
    const digits = decimalsAt(sentence, first + 1)
    return digits && plain(first, digits.after, `0.${digits.text}`, true)
  }
  const whole = wholeAt(sentence, first)
  if (!whole) return undefined
  const digits = sentence.word(whole.after) === 'point' ? decimalsAt(sentence, whole.after + 1) : undefined
  if (digits) return plain(first, digits.after, `${whole.value}.${digits.text}`, true)
  return plain(first, whole.after, String(whole.value), true)
}

function decimalsAt(sentence: Tokens, first: number): { text: string; after: number } | undefined {
  let text = ''
  let after = first
  while (text.length < 3) {
    const digit = small.get(sentence.word(after))
    if (digit === undefined || digit > 9) break
    text += digit
    after += 1
  }
  return text === '' ? undefined : { text, after }
}

function wholeAt(sentence: Tokens, first: number): { value: number; after: number } | undefined {
  let at = first
  if (sentence.word(at) === 'a' && /^(?:hundred|thousand)$/.test(sentence.word(at + 1))) at += 1
  let [thousands, part, last] = [0, 0, 0]
  let after = first
  for (; after < first + 12; at += 1) {
    const word = sentence.word(at)
    const value = small.get(word)
    if (value !== undefined) {
      // "fifteen hundred four cell": the cells are another number.
      const ofCells = last === 100 && /^(?:cells?|s)$/.test(sentence.word(at + 1))
      const fits = part === 0 || (last === 100 && value < 100) || (last >= 20 && last < 100 && value < 10)
      if (!fits || ofCells || (last > 0 && value === 0)) break
      part += value
      last = value || 1
      after = at + 1
      if (value === 0) break
    } else if (word === 'hundred' && part < 100) {
      part = (part || 1) * 100
      last = 100
      after = at + 1
    } else if (word === 'thousand' && thousands === 0) {
      thousands = (part || 1) * 1000
      part = 0
      last = 100
      after = at + 1
    } else if (!(last === 100 && word === 'and') && !(last >= 20 && word === '-')) break
  }
  return after > first ? { value: thousands + part, after } : undefined
}

/** Behind a whole number: "and a half". */
export function halfEnd(sentence: Tokens, at: number): number | undefined {
  const skipped = sentence.word(at) === '-' ? at + 1 : at
  if (sentence.word(skipped) !== 'and') return undefined
  const article = /^(?:-|a)$/.test(sentence.word(skipped + 1)) ? skipped + 2 : skipped + 1
  const half = /^(?:-|a)$/.test(sentence.word(article)) ? article + 1 : article
  return sentence.word(half) === 'half' ? half + 1 : undefined
}

/** "half an", "a quarter of an", "three quarters of an", "a", "an". */
function fractionAt(sentence: Tokens, first: number): Numeral | undefined {
  const word = sentence.word(first)
  const isArticle = word === 'a' || word === 'an'
  const at = isArticle ? first + 1 : first
  const share = fractions.get(sentence.word(at))
  if (share !== undefined) {
    const of = sentence.word(at + 1) === 'of' ? at + 2 : at + 1
    const after = /^(?:an?|the)$/.test(sentence.word(of)) ? of + 1 : of
    return { ...plain(first, after, String(share), true), needsUnit: true }
  }
  return isArticle ? { ...plain(first, first + 1, '1', true), needsUnit: true } : undefined
}
