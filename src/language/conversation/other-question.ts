// Another question about what was spoken of, where a sign tells which: to fly with it, what it draws or ends at.

import { chemistryNamed } from '../../charging/things/chemistries.ts'
import { conceptsIn } from '../model/concepts.ts'
import { writeQuantity } from '../quantities/quantity.ts'
import { fitTo, type Kept } from '../reading/fit.ts'
import { takenAlong } from '../reading/joined.ts'
import { toldIn } from '../reading/told/told-pack.ts'
import type { Behind, Way } from './behind.ts'
import { choiceOf } from './choice-of.ts'
import { countOf, isFewWords, isOnlyValues } from './follow-up.ts'
import { opensAsking } from './heard/asks-nothing.ts'
import { lentTo } from './lend.ts'

interface Sign {
  /** That of the question before where none is named. */
  readonly command?: string
  /** Details that it puts beside those that hold on; undefined where it is not asked. */
  puts(behind: Behind): Kept | undefined
  /** Details of the question before that do not hold on. */
  readonly without?: readonly string[]
  /** Its values are details, too. */
  readonly takesValues?: true
}

const givesUp = /\b(?:los[et]|losing|giv(?:e|ing) (?:away|up)|sacrifice|(?:how much|what) less|do without)\b/i
const asksAmps = /\b(?:amps?|amperes?|current|draws?|drawn|pulls?)\b/i
const fed = /\b(?:from|off|on|at|car|socket|supply|psu|battery|input|side)\b/i
/** Of what feeds chargers. */
const supplyVolts = /\b(?:1[1-5]|24|48)(?:\.\d)?V(?! per cell)/
const [lowestCell_V, highestCell_V] = [3, 4.4]

/** What volts stand for beside the end of a charge. */
const otherVolts = new Set(
  'storage cells apart supply down meter percent lead plug balance fly lies ok why wh'.split(' '),
)
/** Those that tell of volts by themselves, where the question before was of volts. */
const ofVolts: ReadonlySet<string> = new Set(['storage', 'trim', 'percent'])

/** As much as may be, or as soon. */
const utmost =
  /(?<!\bno )\b(?:hurry|rush|max(?:imum)?|most(?! of\b)|fastest|quickest|as (?:fast|quick|high|much) as)\b/i
const mostWords = 8

const signs: readonly Sign[] = [
  // "At most?", "in a hurry": the most that cells of this type take, of what was asked about a current.
  {
    puts: ({ text, values, frame: { question }, vocabulary }) => {
      const pack = toldIn(question.options.pack ?? '')
      const command = vocabulary.find(({ name }) => name === question.command)
      const isOfCurrent = command?.options.some(({ name }) => name === 'current') && question.command !== 'energy'
      if (!pack || !isOfCurrent || values.length > 0 || !utmost.test(text) || countOf(text) > mostWords)
        return undefined
      const rate_C = Math.max(pack.labelRate_C ?? 0, chemistryNamed(pack.chemistry ?? '')?.highestRate_C.value ?? 0)
      return { current: writeQuantity(rate_C * (pack.capacity_Ah ?? 0), 'current') }
    },
  },
  // "Can i take those on the plane".
  {
    command: 'travel',
    takesValues: true,
    puts: ({ text }) => (takenAlong.test(text) && opensAsking.test(text.replace(/^.*,/, '')) ? {} : undefined),
  },
  // "What do i lose at 4.1": how full it is there.
  {
    command: 'percent',
    puts: ({ text, values: [level, ...others] }) =>
      level?.kind === 'state' && others.length === 0 && givesUp.test(text) ? { at: level.text } : undefined,
  },
  // "How many amps is that from 12 V": whole volts are those of a supply, others may be where the pack stands.
  {
    command: 'supply',
    without: ['source'],
    puts: ({ text, values, frame: { question } }) => {
      const [value, ...others] = values
      const told = ['voltage', 'state', 'source'].includes(value?.kind ?? '') ? [value, ...(value?.parts ?? [])] : []
      const [volts] = supplyVolts.exec(told.map(one => one?.text).join(' ')) ?? []
      const isAsked = (asksAmps.test(text) && fed.test(text) && !/\bwh\b/i.test(text)) || isOnlyValues(text, values)
      if (volts === undefined || others.length > 0 || !isAsked || question.options.voltage) return undefined
      const perCell_V = Number.parseFloat(volts) / (toldIn(question.options.pack ?? '')?.series ?? 1)
      const mayBePacks = perCell_V > lowestCell_V && perCell_V < highestCell_V
      return mayBePacks && (volts.includes('.') || !asksAmps.test(text)) ? undefined : { voltage: volts }
    },
  },
  // "And volts", "and full?": those at the end of its charge; full alone only where volts were asked for before.
  {
    command: 'trim',
    without: ['source', 'to'],
    puts: ({ text, values, frame: { question, typed = '' } }) => {
      const concepts = conceptsIn(text)
      const isOfEnd = isFewWords(text) && values.every(value => value.text === 'full')
      if (!isOfEnd || concepts.some(concept => otherVolts.has(concept))) return undefined
      const isOfLevel = values.length > 0 && question.options.from === undefined
      const asked = !ofVolts.has(question.command) ? concepts : isOfLevel ? conceptsIn(typed) : []
      return asked.includes('volts') ? {} : undefined
    },
  },
]

/** Undefined where no sign of one is there, or what it lacks was not spoken of. */
export const otherQuestion: Way = (behind, { name: own }) => {
  const { text, values, frame, vocabulary } = behind
  for (const { command: name = own, puts, without = [], takesValues } of frame.pending ? [] : signs) {
    const command = vocabulary.find(one => one.name === name)
    const put = command && puts(behind)
    if (!put) continue
    const { kept, before } = lentTo(frame, command, text, values)
    const held = Object.fromEntries(Object.entries(kept).filter(([detail]) => !without.includes(detail)))
    const fitted = fitTo(command, takesValues ? values : [], { ...held, ...put }, before)
    const { pack, packs, chemistry } = fitted.options
    if (fitted.missing === undefined && (pack ?? packs ?? chemistry)) return choiceOf(fitted, held)
  }
  return undefined
}
