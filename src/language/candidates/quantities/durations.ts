// How long: "in 40 min", "an hour and a half", "1h20", "half an hour", "2 hrs 15".

import { wordSet } from '../../../ground/word-set.ts'
import { formats } from '../../parts/round-cells.ts'
import { writeDuration } from '../../quantities/duration.ts'
import type { Measure } from '../../quantities/measures.ts'
import { shiftedDecimal } from '../../scan/number.ts'
import type { Family, Sentence } from '../sentence/sentence.ts'

const longestWritten_s = 7 * 86_400
const timeAt = (sentence: Sentence, at: number): Measure | undefined =>
  sentence.measures[at]?.find(({ dimension }) => dimension === 'time')
const likelyMinutes = wordSet('in for takes take took after within another about only last every')

export const findDurations: Family = sentence =>
  sentence.tokens.flatMap((_, first) => {
    const measure = timeAt(sentence, first)
    // "18650s" are round cells.
    if (!measure || formats.has(sentence.word(first))) return []
    // "A second charger": one more of them.
    if (measure.numeral.needsUnit && sentence.word(measure.after - 1) === 'second') return []
    const minutes = minutesBefore(sentence, measure)
    const { value, after } = minutes ?? withMinutes(sentence, measure)
    const text = value <= longestWritten_s ? writeDuration(value) : `${shiftedDecimal(value / 86_400, 0)} days`
    return value < 1
      ? []
      : { kind: 'duration', text, first: minutes ? first - 2 : first, after, score: scoreOf(sentence, measure) }
  })

const smaller: readonly (readonly [unit: RegExp, most_s: number, each_s: number])[] = [
  [/^(?:h|hr|hrs|hour|hours)$/, 3600, 60],
  [/^(?:min|mins|minute|minutes)$/, 60, 1],
]
/** Behind "7 min 30" stands nothing that 30 would count. */
const counted = /^(?:packs?|batter(?:y|ies)|lipos?|lihvs?|cells?|times?|more|x|p|s|[a-z]*amps?|[cvw]|mah|\d.*)$/

/** "6:30 min": as a stopwatch shows it. */
function minutesBefore(sentence: Sentence, { first, after, numeral }: Measure) {
  const isShown = /^\d\d?$/.test(sentence.word(first - 2)) && sentence.word(first - 1) === ':' && sentence.glued(first)
  const isOfMinutes = /^min/.test(sentence.word(after - 1)) && /^[0-5]\d$/.test(numeral.decimal)
  return isShown && isOfMinutes ? { value: Number(sentence.word(first - 2)) * 60 + numeral.value, after } : undefined
}

/** "1h20", "an hour and 20 minutes", "7 min 30". */
function withMinutes(sentence: Sentence, whole: Measure): { value: number; after: number } {
  const alone = { value: whole.value, after: whole.after }
  const [, most_s, each_s] = smaller.find(([unit]) => unit.test(sentence.word(whole.after - 1))) ?? []
  if (!most_s || !each_s) return alone
  const at = sentence.word(whole.after) === 'and' ? whole.after + 1 : whole.after
  const part = timeAt(sentence, at)
  if (part && part.value < most_s) return { value: whole.value + part.value, after: part.after }
  const bare = each_s === 1 ? sentence.bareNumeral(at) : sentence.glued(at) ? sentence.numerals[at] : undefined
  const fits = bare && Number.isInteger(bare.value) && bare.value < 60 && bare.after === at + 1
  const isEnd = each_s > 1 || (sentence.word(at).length === 2 && !counted.test(sentence.word(at + 1)))
  return fits && isEnd ? { value: whole.value + bare.value * each_s, after: bare.after } : alone
}

function scoreOf(sentence: Sentence, { first, after, sure, numeral }: Measure): number {
  const unit = sentence.word(after - 1)
  // "heures" and "h30" are read as a clock where the hour fits one.
  // "25 m" of lead, "6 s" of cells.
  if (unit === 'm' || unit === 's') return likelyMinutes.has(sentence.word(first - 1)) ? 0.6 : 0.2
  if (numeral.needsUnit && numeral.value === 1 && /^(?:minute|sec|day|week|month|year)s?$/.test(unit)) return 0.45
  return 0.85 * sure
}
