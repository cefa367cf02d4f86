// Plain quantities: currents, rates, power, energy, temperatures, lengths, masses and wires.

import { plugNames } from '../../../charging/leads/plug.ts'
import { wordSet } from '../../../ground/word-set.ts'
import type { Measure } from '../../quantities/measures.ts'
import { type Family, type Found, none, type Sentence } from '../sentence/sentence.ts'
import { decimalText } from '../sentence/written.ts'
import { priceAt } from './prices.ts'
import { ownWarmth } from './warmths.ts'

interface Form {
  readonly kind: Found['kind']
  /** In the notation of the kind; undefined where no such thing can be. */
  write(measure: Measure): string | undefined
  readonly score: number
}

const within = (min: number, max: number, write: (measure: Measure) => string) => (measure: Measure) =>
  measure.value >= min && measure.value <= max ? write(measure) : undefined

/** Less is the size of a plug: "4 mm bullets". */
const leastLead_m = 0.015

const forms: Readonly<Partial<Record<Measure['dimension'], Form>>> = {
  current: { kind: 'current', score: 0.8, write: ({ value }) => `${decimalText(value)}A` },
  power: { kind: 'power', score: 0.6, write: ({ value }) => `${decimalText(value)}W` },
  energy: { kind: 'energy', score: 0.75, write: ({ value }) => `${decimalText(value)}Wh` },
  fahrenheit: { kind: 'temperature', score: 0.85, write: ({ decimal }) => `${decimal}°F` },
  length: { kind: 'length', score: 0.7, write: within(leastLead_m, 1000, ({ value }) => `${decimalText(value)}m`) },
  mass: { kind: 'mass', score: 0.8, write: within(0.0001, 50, ({ value }) => `${decimalText(value, 3)}g`) },
  gauge: { kind: 'gauge', score: 0.95, write: within(0, 40, ({ decimal }) => `AWG ${decimal}`) },
  area: { kind: 'gauge', score: 0.9, write: within(0.02, 120, ({ decimal }) => `${decimal}mm²`) },
}

export const findQuantities: Family = (sentence, before) => {
  const weather = sentence.mentions(weatherWords)
  const wire = sentence.mentions(wireWords)
  const found: Found[] = []
  for (let first = 0; first < sentence.tokens.length; first += 1) {
    for (const measure of sentence.measures[first] ?? []) {
      const form = forms[measure.dimension]
      const text = form?.write(measure)
      const wireSize = measure.dimension === 'length' ? sizeOfWire(sentence, measure) : undefined
      if (wireSize !== undefined) found.push(foundOf(measure, 'gauge', wireSize, 0.9))
      // "It shows 0 A" asks for nothing of that.
      const isShown = measure.value === 0 && !setting.has(sentence.word(first - 1))
      if (!form || text === undefined || isShown) continue
      const one = foundOf(measure, form.kind, text, form.score)
      // Less than nothing is for the reader to refuse.
      const sign = form.kind === 'current' ? sentence.minusBefore(first) : undefined
      found.push(sign === undefined ? one : { ...one, first: sign, text: `-${text}` })
    }
    found.push(...degreesOrRate(sentence, first, weather), ...bareTemperature(sentence, first, weather))
    found.push(...gaugeBefore(sentence, first), ...wireMillimetres(sentence, first, wire))
    found.push(...bareCurrent(sentence, first, before), ...priceAt(sentence, first), ...plugAt(sentence, first))
    found.push(...saidRate(sentence, first))
  }
  return ownWarmth(sentence, [...before, ...found]).slice(before.length)
}

const foundOf = (measure: Measure, kind: Found['kind'], text: string, score: number): Found => ({
  kind,
  text,
  first: measure.first,
  after: measure.after,
  score: score * measure.sure,
})

const weatherWords = wordSet(
  'weather thermometer hallway cellar warmer cooler cold hot warm cool outside outdoors garage shed landing landed wait degree degrees sun shade winter summer frost freezing frozen infrared temperature temp heat fridge freezer balcony heated room workshop hangar °',
)

/** "50C": a rate beside a pack or a charge, degrees beside words of weather or heat. */
function degreesOrRate(sentence: Sentence, first: number, weather: boolean): readonly Found[] {
  const measures = sentence.measures[first] ?? []
  const degrees = measures.find(({ dimension }) => dimension === 'temperature')
  const rate = measures.find(({ dimension }) => dimension === 'rate')
  if (!degrees) return rate ? [rateOf(rate, 0.8)] : none
  const belowEnd = belowZero(sentence, degrees.after)
  const signed = sentence.minusBefore(first)
  const negative = belowEnd !== undefined || signed !== undefined
  const sign = negative ? '-' : ''
  const isNamed = namesWarmth(sentence, first) || /^(?:outside|outdoors|ambient)$/.test(sentence.word(degrees.after))
  const score = rate ? (negative || isNamed ? 0.9 : weather && degrees.value > 5 ? 0.75 : 0.2) : 0.85
  const found = foundOf(degrees, 'temperature', `${sign}${degrees.decimal}°C`, score)
  const temperature: Found =
    belowEnd === undefined ? { ...found, first: signed ?? first } : { ...found, after: belowEnd }
  if (!rate || negative) return [temperature]
  return [temperature, rateOf(rate, weather && rate.value > 5 ? 0.4 : 0.8)]
}

/** "Temp 3c", "the temperature is 4c". */
const namesWarmth = (sentence: Sentence, first: number): boolean =>
  /^temp(?:erature)?s?$/.test(
    sentence.word(/^(?:is|was|of|at|=|:)$/.test(sentence.word(first - 1)) ? first - 2 : first - 1),
  )

const rateOf = (measure: Measure, score: number): Found => foundOf(measure, 'rate', `${measure.decimal}C`, score)

/** "Six below zero", "3 degrees below freezing": the token behind it. */
const belowZero = (sentence: Sentence, after: number): number | undefined =>
  /^(?:below|under)$/.test(sentence.word(after)) && zero.has(sentence.word(after + 1)) ? after + 2 : undefined
const zero = wordSet('zero freezing nought null 0')

const placeBehind = wordSet(
  'in outside inside indoors here by on under overnight today this and , . ? ! when but with so c',
)

/** "minus five", "-6", and "34 in the garage": a number without a unit. */
function bareTemperature(sentence: Sentence, first: number, weather: boolean): readonly Found[] {
  const numeral = sentence.bareNumeral(first)
  if (!numeral) return none
  if (!Number.isInteger(numeral.value) || numeral.value > 80) return none
  const after = belowZero(sentence, numeral.after)
  if (after !== undefined) return [{ kind: 'temperature', text: `-${numeral.decimal}°C`, first, after, score: 0.85 }]
  const negative = sentence.minusBefore(first)
  const text = `${negative === undefined ? '' : '-'}${numeral.decimal}°C`
  if (negative !== undefined) return [{ kind: 'temperature', text, first: negative, after: numeral.after, score: 0.8 }]
  // A dash with spaces about it may be a minus: neither sign is sure.
  if (!weather || numeral.value < 1 || sentence.word(first - 1) === '-') return none
  if (/^(?:plus|\+)$/.test(sentence.word(first - 1))) {
    return [{ kind: 'temperature', text, first: first - 1, after: numeral.after, score: 0.7 }]
  }
  const likely = placeBehind.has(sentence.word(numeral.after)) && numeral.value > 12 ? 0.4 : 0.25
  return [{ kind: 'temperature', text, first, after: numeral.after, score: likely }]
}

/** "AWG 16", "awg16". */
function gaugeBefore(sentence: Sentence, first: number): readonly Found[] {
  if (!/^(?:awg|gauge)$/.test(sentence.word(first))) return none
  const hyphen = /^[-#]$/.test(sentence.word(first + 1)) ? first + 2 : first + 1
  const numeral = sentence.wholeNumeral(hyphen, 0, 40)
  return numeral ? [{ kind: 'gauge', text: `AWG ${numeral.decimal}`, first, after: numeral.after, score: 0.95 }] : none
}

const wireWords = wordSet(
  'csa flex drum reel rated strand extension nickel wire wires cable lead leads silicone mm2 cross section awg gauge thickness core thin thick square',
)

/** "14 cable", "2.5 silicone wire": a gauge or a cross-section. */
function wireMillimetres(sentence: Sentence, first: number, wire: boolean): readonly Found[] {
  const numeral = sentence.numerals[first]
  if (!wire || !numeral || numeral.needsUnit || numeral.value > 50 || numeral.value < 0.1) return none
  if (!sentence.bareNumeral(first)) return none
  const gauge = Number.isInteger(numeral.value) && numeral.value >= 8
  const text = gauge ? `AWG ${numeral.decimal}` : `${numeral.decimal}mm²`
  return [{ kind: 'gauge', text, first, after: numeral.after, score: 0.25 }]
}

/** "1.5 mm speaker cable", "4 mm wire": people leave the square off. */
const sizeOfWire = (sentence: Sentence, { value, first, after }: Measure): string | undefined =>
  value < leastLead_m && [first - 1, after, after + 1].some(at => strands.test(sentence.word(at)))
    ? `${decimalText(value, 3)}mm²`
    : undefined
const strands = /^(?:wires?|cables?|flex|cord|cores?|strands?)$/

const [leastMilli, asked] = [100, /^(?:at|set|use|with|@|give)$/]
const setting = wordSet('at with on set use using give run put to of than = @ by try choose below above max only')

/** "charge it at 2", "set 1.3", "3S 2200 at 2200": amperes, or milliamperes, are what people leave the unit off. */
function bareCurrent(sentence: Sentence, first: number, found: readonly Found[]): readonly Found[] {
  const numeral = sentence.bareNumeral(first)
  if (!numeral) return none
  const fromMilli_A = numeral.value / 1000
  const isUsualFor = ({ pack, after }: Found) =>
    pack?.capacity_Ah !== undefined &&
    after <= first &&
    fromMilli_A >= 0.2 * pack.capacity_Ah &&
    fromMilli_A <= 3 * pack.capacity_Ah
  if (numeral.value >= leastMilli && asked.test(sentence.word(first - 1)) && found.some(isUsualFor))
    return [{ kind: 'current', text: `${decimalText(fromMilli_A)}A`, first, after: numeral.after, score: 0.6 }]
  if (numeral.value < 0.05 || numeral.value > 40 || numeral.decimal.split('.')[1]?.length === 3) return none
  if ((sentence.word(first - 1) === ':' && sentence.glued(first)) || sentence.minusBefore(first) !== undefined)
    return none
  const fraction = numeral.decimal.includes('.')
  const cued = setting.has(sentence.word(first - 1))
  if (!cued && !fraction) return none
  const low = numeral.value < 3
  const score = fraction ? (low ? 0.45 : 0.25) + (cued ? 0.15 : 0) : numeral.value <= 20 ? 0.4 : 0.2
  return [{ kind: 'current', text: `${numeral.decimal}A`, first, after: numeral.after, score }]
}

/** "XT60", "ec 5", "a jst". */
function plugAt(sentence: Sentence, first: number): readonly Found[] {
  const [word, size] = [sentence.word(first), sentence.word(first + 1)]
  const name = plugNames.find(plug => [word, word + size].includes(plug.toLowerCase()))
  const after = name?.length === word.length ? first + 1 : first + 2
  return name ? [{ kind: 'plug', text: name, first, after, score: 0.9 }] : none
}

/** "C/2". */
function saidRate(sentence: Sentence, first: number): readonly Found[] {
  const isShare = sentence.word(first) === 'c' && sentence.word(first + 1) === '/'
  const numeral = isShare ? sentence.wholeNumeral(first + 2, 1, 100) : undefined
  return numeral ? [{ kind: 'rate', text: `C/${numeral.value}`, first, after: numeral.after, score: 0.9 }] : none
}
