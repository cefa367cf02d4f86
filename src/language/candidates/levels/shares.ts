// Shares of what a pack holds: "30%", "from 30 to 80%", "70 % used", "2 of the 4 lights".

import { wordSet } from '../../../ground/word-set.ts'
import { measured } from '../../parts/draft.ts'
import { type Found, none, type Sentence } from '../sentence/sentence.ts'

/** Cues of a place on the way from empty to full. */
export const standing = wordSet(
  'from at is to until till reads reading sits rests resting stands down shows says claims shown now about around = @ on its',
)
export const percents = wordSet('% percent pct percentage full soc charged')

const lamps = wordSet('lights light leds led lamps bars bar dots')
/** Between "2" and "4 lights". */
const ofAll = wordSet('of the out its')

/** "2 of the 4 lights": a share, as packs with a button show it. */
export function lampsAt(sentence: Sentence, first: number): readonly Found[] {
  const lit = sentence.bareNumeral(first)
  if (!lit || !ofAll.has(sentence.word(lit.after))) return none
  let at = lit.after
  while (ofAll.has(sentence.word(at))) at += 1
  const all = sentence.bareNumeral(at)
  if (!all || !lamps.has(sentence.word(all.after)) || lit.value > all.value) return none
  const text = `${Math.round((100 * lit.value) / all.value)}%`
  return [{ kind: 'state', text, first, after: all.after + 1, score: 0.95 }]
}

const notCharge = wordSet('more less off out of higher lower worse better cheaper slower faster humidity')

export function shareAt(sentence: Sentence, first: number): readonly Found[] {
  const measure = measured(sentence, first, 'share')
  if (!measure || measure.numeral.needsUnit) return barePercent(sentence, first)
  const { decimal, value, after } = measure
  const used = value <= 100 ? usedSpan(sentence, first, after) : undefined
  const left = used ? Number((100 - Number(decimal)).toFixed(2)) : Number(decimal)
  const told = used ?? leftSpan(sentence, first, after)
  // Nothing left is no place to start from: how many volts are there must be asked.
  if (left === 0) return [{ kind: 'state', text: '', first, after, ...told, score: told ? 0.2 : 0 }]
  if (told) return [{ kind: 'state', text: `${left}%`, ...told, score: 0.9, remains: true }]
  const state = notCharge.has(sentence.word(after)) ? 0.3 : 0.8
  return [
    ...sharingPercent(sentence, first),
    { kind: 'state', text: `${decimal}%`, first, after, score: state },
    { kind: 'percent', text: `${decimal}%`, first, after, score: 0.5 },
  ]
}

const gone = wordSet('used gone spent consumed discharged drained depleted flown burned burnt empty emptied')
const using = wordSet('use used uses using consumed consumes spent drained discharged emptied empty burned burnt')
/** Of other things too: only where it is told of what. */
const taking = wordSet('took takes ate eats pulled pulls flew')
const ofWhat = wordSet('of out from')
const about = wordSet('about around roughly some only just nearly almost up like ~ is was are already')
const whole = wordSet('of the a my its it pack battery capacity charge')
const mostOfWhole = 4

/** "70 % used", "used about 60 percent of the pack": where so much is gone; what is left is where a pack stands. */
export function usedSpan(sentence: Sentence, first: number, after: number): Pick<Found, 'first' | 'after'> | undefined {
  let end = after
  while (end < after + mostOfWhole && (whole.has(sentence.word(end)) || about.has(sentence.word(end)))) end += 1
  const isDown = sentence.word(end) === 'down' && sentence.word(end + 1) !== 'to'
  if (isDown || gone.has(sentence.word(end))) return { first, after: end + 1 }
  let verb = first - 1
  while (about.has(sentence.word(verb))) verb -= 1
  const isTaken = taking.has(sentence.word(verb)) && ofWhat.has(sentence.word(after))
  const isUsed = using.has(sentence.word(verb)) && !rules.has(sentence.word(after))
  return isTaken || isUsed ? { first: verb, after } : undefined
}
/** "30 % left". */
const leftSpan = (sentence: Sentence, first: number, after: number): Pick<Found, 'first' | 'after'> | undefined =>
  /^(?:left|remain|remains|remaining)$/.test(sentence.word(after)) ? { first, after: after + 1 } : undefined
/** "I used the 80 % rule". */
const rules = wordSet('rule rules limit setting charged full')

/** "12, 34 and 60 percent": the unit is that of the numbers before it too. */
function sharingPercent(sentence: Sentence, last: number): readonly Found[] {
  const found: Found[] = []
  for (let at = last - 2; at >= 0 && /^(?:,|and|or|\/|to|-)$/.test(sentence.word(at + 1)); at -= 2) {
    const numeral = sentence.bareNumeral(at) ?? (sentence.word(at + 1) === '/' ? sentence.numerals[at] : undefined)
    if (!numeral || numeral.value < 1 || numeral.value > 100) break
    found.push({ kind: 'state', text: `${numeral.decimal}%`, first: at, after: numeral.after, score: 0.75 })
  }
  return found
}

/** "from 30 to 80%", "at 60": whole numbers where others are percentages, or nothing else is near. */
function barePercent(sentence: Sentence, first: number): readonly Found[] {
  const numeral = sentence.bareNumeral(first)
  if (!numeral || !Number.isInteger(numeral.value) || numeral.value < 5 || numeral.value > 100) return none
  if (!standing.has(sentence.word(first - 1)) || sentence.word(first).startsWith('0')) return none
  const score = sentence.mentions(percents) ? 0.55 : 0.2
  return [{ kind: 'state', text: `${numeral.decimal}%`, first, after: numeral.after, score }]
}
