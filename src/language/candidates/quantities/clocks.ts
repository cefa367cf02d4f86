// What o'clock: "by 3pm", "at 14:30", "half past two", "quarter to six", "9h30", "noon", and days by their names.

import { wordSet } from '../../../ground/word-set.ts'
import { clockOf, type Half, writeClock } from '../../quantities/clock.ts'
import type { Numeral } from '../../quantities/numerals.ts'
import { phraseSet } from '../../quantities/tokens.ts'
import type { Family, Found, Sentence } from '../sentence/sentence.ts'

interface Clock {
  readonly after: number
  readonly text: string
  readonly score: number
}

const cues = wordSet('by at before until till til from around about after since for')
const strongCues = wordSet('by before until till til around')
const days = wordSet(
  'monday tuesday wednesday thursday friday saturday sunday tomorrow tonight today tue tues thu thurs fri samstag sonntag samedi dimanche sábado domingo',
)
const named = phraseSet(
  'noon, midday, midnight, lunchtime, this morning, this evening, this afternoon, tomorrow morning',
)

export const findClocks: Family = sentence => {
  const found: Found[] = []
  for (let first = 0; first < sentence.tokens.length; first += 1) {
    // "How long for one": of them; "one by one": each after the other.
    const [before, earlier] = [sentence.word(first - 1), sentence.word(first - 2)]
    if (sentence.word(first) === 'one' && before === 'for') continue
    if (before === 'by' && earlier === sentence.word(first)) continue
    const clock = timeAt(sentence, first)
    if (clock) found.push({ kind: 'clock', first, ...clock })
    const day = days.has(sentence.word(first)) ? first : undefined
    if (day === undefined) continue
    found.push({ kind: 'clock', text: sentence.typed(first, first + 1), first, after: first + 1, score: 0.7 })
    const at = sentence.word(first + 1) === 'at' ? first + 2 : first + 1
    const of = timeAt(sentence, at)
    if (of && of.score > 0.3) {
      const text = `${sentence.typed(first, first + 1)} ${of.text}`
      found.push({ kind: 'clock', text, first, after: of.after, score: 0.85 })
    }
  }
  return found
}

const starting = wordSet('start started starting begin began plug plugged connect connected put arrive come')
const fromThen = wordSet('since from')
const ending = wordSet(
  'by before until till til to ready done finished finish full fly flying flies leave leaves starts begins must over go goes going home ends',
)
const mostBefore = 10

/** Whether something begins then or is to be over by then, by the nearest word that tells; "its five", "12:40 here" is now. */
export function roleOf(sentence: Sentence, first: number, after: number): 'now' | 'start' | 'by' | undefined {
  const [before, earlier] = [sentence.word(first - 1), sentence.word(first - 2)]
  if (/^(?:its|it's|now)$/.test(before) || (before === 'is' && /^(?:it|time|now)$/.test(earlier))) return 'now'
  if (!cues.has(before) && /^(?:now|here)$/.test(sentence.word(after))) return 'now'
  for (let at = first - 1; at >= 0 && at >= first - mostBefore; at -= 1) {
    const word = sentence.word(at)
    if (/^[.?!]$/.test(word)) return undefined
    if (starting.has(word) || (fromThen.has(word) && at >= first - 2 && !ending.has(sentence.word(at - 1))))
      return 'start'
    if (ending.has(word)) return 'by'
  }
  return undefined
}

const timeAt = (sentence: Sentence, first: number): Clock | undefined =>
  namedAt(sentence, first) ?? saidAt(sentence, first) ?? digitalAt(sentence, first) ?? hourAt(sentence, first)

function namedAt(sentence: Sentence, first: number): Clock | undefined {
  const after = sentence.phraseEnd(first, named)
  if (after === undefined) return undefined
  const typed = sentence.typed(first, after)
  const noon = typed === 'noon' || typed === 'midday'
  const text = noon ? written('12', 0, 'pm') : typed === 'midnight' ? written('0', 0) : typed
  return { after, text, score: 0.8 }
}

/** The hour, and what is said behind it: "pm", "in the morning", "o'clock", "Uhr", "h". */
interface Behind {
  readonly after: number
  readonly half?: Half
  readonly oclock?: true
}

const morning = phraseSet('am, a . m ., a . m, in the morning, in morning, this morning, tomorrow morning, morning')
const evening = phraseSet(
  'pm, p . m ., p . m, in the evening, in the afternoon, this afternoon, this evening, tonight, in evening, at night, in the night',
)
const oclock = phraseSet("o'clock, oclock, o ' clock, uhr, heures, 時, o clock")

function halfAt(sentence: Sentence, at: number): Behind {
  const am = sentence.phraseEnd(at, morning)
  if (am !== undefined) return { after: am, half: 'am' }
  const pm = sentence.phraseEnd(at, evening)
  if (pm !== undefined) return { after: pm, half: 'pm' }
  const clock = sentence.phraseEnd(at, oclock)
  return clock === undefined ? { after: at } : { ...halfAt(sentence, clock), oclock: true }
}

const written = (hour: number | string, minute: number, half?: Half): string =>
  writeClock(clockOf(`${hour}`, minute, half))

/** "half past two", "half 3", "twenty to six", "quarter past seven". */
function saidAt(sentence: Sentence, first: number): Clock | undefined {
  const word = sentence.word(first)
  const article = word === 'a' && sentence.word(first + 1) === 'quarter' ? first + 1 : first
  const start = sentence.numerals[first]
  const isHalf = word === 'half'
  const isQuarter = sentence.word(article) === 'quarter'
  const minutes = isHalf ? 30 : isQuarter ? 15 : start && !start.needsUnit ? start.value : Number.NaN
  const at = isHalf ? first + 1 : isQuarter ? article + 1 : (start?.after ?? first)
  if (!Number.isInteger(minutes) || minutes < 1 || minutes > 30) return undefined
  const skipped = /^(?:min|minutes)$/.test(sentence.word(at)) ? at + 1 : at
  const side = sentence.word(skipped)
  // "From 10 to 4": both are hours.
  const isRange = side === 'to' && !isQuarter && /^(?:from|between)$/.test(sentence.word(first - 1))
  const related = side === 'past' || (side === 'to' && !isRange)
  if (!related && !isHalf) return undefined
  const hour = sentence.wholeNumeral(related ? skipped + 1 : skipped, 0, 24)
  if (!hour || sentence.isStuck(hour.after)) return undefined
  if (sentence.measures[hour.first]?.length) return undefined
  if (!isHalf && !isQuarter && (minutes % 5 !== 0 || side === 'to')) {
    if (minutes % 5 !== 0 || !cues.has(sentence.word(first - 1)) || hour.value > 12) return undefined
  }
  const { after, half } = halfAt(sentence, hour.after)
  const text =
    side === 'to'
      ? written(hour.value === 1 ? 12 : hour.value - 1, 60 - minutes, half)
      : written(hour.value, minutes, half)
  return { after, text, score: related ? 0.9 : 0.7 }
}

const reminders = wordSet('remind reminder nudge ping alarm timer alert')

const isHour = (value: number): boolean => Number.isInteger(value) && value >= 0 && value <= 24

/** "14:30", "9.30pm", "9h30", "0940". */
function digitalAt(sentence: Sentence, first: number): Clock | undefined {
  const [typed, sign, minute] = [sentence.word(first), sentence.word(first + 1), sentence.word(first + 2)]
  if (sentence.tokens[first]?.kind !== 'number') return undefined
  if (/^\d\d?$/.test(typed) && /^[:h]$/.test(sign) && /^[0-5]\d$/.test(minute) && isHour(Number(typed))) {
    if (!sentence.glued(first + 1) || !sentence.glued(first + 2)) return undefined
    const { after, half } = halfAt(sentence, first + 3)
    const cued = cues.has(sentence.word(first - 1))
    return {
      after,
      text: written(typed, Number(minute), half),
      score: sign === ':' ? 0.92 : cued && Number(typed) > 5 ? 0.9 : 0.4,
    }
  }
  const [hours = '', minutes = ''] = typed.split(/[.,]/)
  const { after, half } = halfAt(sentence, first + 1)
  const parted = /^\d\d?[.,][0-5]\d$/.test(typed) && isHour(Number(hours))
  // "Remind me at 9.30", which no volts are.
  const isReminder = sentence.word(first - 1) === 'at' && Number(hours) > 5 && sentence.mentions(reminders)
  const isTime = parted && (half !== undefined || (isReminder && !sentence.measures[first]?.length))
  return isTime ? { after, text: written(hours, Number(minutes), half), score: 0.9 } : undefined
}

const errands = wordSet(
  'start starts starting begin begins finals final race meeting dinner doors heat school work bed home tomorrow tonight finish finished done ready flying opens come comes leave',
)

function bareHour(sentence: Sentence, { spelled, value }: Numeral, strong: boolean): number {
  if (spelled && (value > 12 || value === 1)) return 0.2
  if (strong) return spelled ? 0.66 : 0.5
  return sentence.mentions(errands) ? 0.45 : 0.3
}

/** "3pm", "8 in the morning", "10 o'clock", "22 Uhr", "9h", and the bare hour behind "by". */
function hourAt(sentence: Sentence, first: number): Clock | undefined {
  const numeral = sentence.wholeNumeral(first, 0, 24)
  if (!numeral) return undefined
  const { after, half, oclock: whole } = halfAt(sentence, numeral.after)
  if (after > numeral.after) return { after, text: written(numeral.value, 0, half), score: whole || half ? 0.88 : 0.6 }
  const cue = sentence.word(first - 1)
  const units = sentence.measures[first]?.length ?? 0
  const ends = (cue === 'to' || cue === 'and') && /^(?:from|between)$/.test(sentence.word(first - 3))
  if (units > 0 || numeral.value < 1 || !(cues.has(cue) || ends)) return undefined
  if (sentence.isStuck(numeral.after)) return undefined
  const strong = strongCues.has(cue) || (numeral.spelled && cue === 'at')
  return { after: numeral.after, text: written(numeral.value, 0), score: bareHour(sentence, numeral, strong) }
}
