// How long: "in 40 min", "an hour and a half", "1h20", "half an hour", "2 hrs 15".

import { writeDuration } from '../../quantities/duration.ts'
import { shiftedDecimal } from '../../scan/number.ts'
import type { Measure } from '../sentence/measures.ts'
import type { Family, Found, Sentence } from '../sentence/sentence.ts'
import { wordSet } from '../sentence/tokens.ts'

const longestWritten_s = 7 * 86_400
const timeAt = (sentence: Sentence, at: number): Measure | undefined =>
  sentence.measures[at]?.find(({ dimension }) => dimension === 'time')
const likelyMinutes = wordSet('in for takes take took after within another about only last every')

export const findDurations: Family = sentence => {
  const found: Found[] = []
  for (let first = 0; first < sentence.tokens.length; first += 1) {
    const measure = timeAt(sentence, first)
    if (!measure) continue
    // "A second charger": one more of them.
    if (measure.numeral.needsUnit && sentence.word(measure.after - 1) === 'second') continue
    const { value, after } = withMinutes(sentence, measure)
    if (value < 1) continue
    const text = value <= longestWritten_s ? writeDuration(value) : `${shiftedDecimal(value / 86_400, 0)} days`
    found.push({ kind: 'duration', text, first, after, score: scoreOf(sentence, measure) })
  }
  return found
}

/** "1h20", "1 hour 20 min", "an hour and 20 minutes". */
function withMinutes(sentence: Sentence, hours: Measure): { value: number; after: number } {
  const alone = { value: hours.value, after: hours.after }
  if (!/^(?:h|hr|hrs|hour|hours)$/.test(sentence.word(hours.after - 1))) return alone
  const at = sentence.word(hours.after) === 'and' ? hours.after + 1 : hours.after
  const minutes = timeAt(sentence, at)
  if (minutes && minutes.value < 3600) return { value: hours.value + minutes.value, after: minutes.after }
  const bare = sentence.glued(hours.after) ? sentence.numerals[hours.after] : undefined
  const fits = bare && Number.isInteger(bare.value) && bare.value < 60 && bare.after === hours.after + 1
  return fits ? { value: hours.value + bare.value * 60, after: bare.after } : alone
}

function scoreOf(sentence: Sentence, { first, after, sure, numeral }: Measure): number {
  const unit = sentence.word(after - 1)
  // "heures" and "h30" are read as a clock where the hour fits one.
  // "25 m" of lead, "6 s" of cells.
  if (unit === 'm' || unit === 's') return likelyMinutes.has(sentence.word(first - 1)) ? 0.6 : 0.2
  if (numeral.needsUnit && numeral.value === 1 && /^(?:minute|sec|day|week|month|year)s?$/.test(unit)) return 0.45
  return 0.85 * sure
}
