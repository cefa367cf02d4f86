// Another quantity of the pack that was spoken of: "and volts", "where does it stop?", "and in Wh?".

import { wordSet } from '../../../ground/word-set.ts'
import type { Frame } from '../../frames/frame.ts'
import { conceptsIn } from '../../model/concepts.ts'
import { fitTo } from '../../reading/fit.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'
import { goesOn, isFewWords } from '../behind/follow-up.ts'
import { isOfPack, lentTo, ofEnergy } from '../behind/lend.ts'
import { countOf } from '../heard/words-beside.ts'
import { asksWhatItIs } from './change.ts'
import { goesIn } from './stay.ts'

interface Quantity {
  readonly command: string
  readonly asks: (text: string, concepts: readonly string[], isOfLevel: boolean, frame: Frame) => boolean
  /** What the words stand for beside another thing. */
  readonly unless: ReadonlySet<string>
}

/** Those that tell of volts by themselves, where the question before was of volts. */
const ofVolts = wordSet('storage trim percent')
const endsAt =
  /\b(?:where|(?:at )?(?:what|which) (?:point|level|number|reading|figure|value|mark))\b.*\b(?:stop|end|cut|finish|quit)(?:s|es)?\b|\b(?:to|until|till|up to) (?:what|which|how many) volt|\bvolt\w*\b.*\b(?:at the end|when (?:it'?s |it is )?(?:full|done|finished|ready))\b/i
const chargeTime = /\b(?:(?:total|whole|charg\w+) (?:\w+ )?(?:time|duration)|time (?:in|to charge|to full))\b/i
const inWatts = /\b(?:in|as|how many) (?:watts|W)\b/i

const other = wordSet('volts cutoff long')
const quantities: readonly Quantity[] = [
  {
    command: 'current',
    asks: (_, concepts) => concepts.includes('amps') && concepts.some(concept => other.has(concept)),
    unless: wordSet('storage cells apart supply meter percent lead plug fly why wh'),
  },
  {
    command: 'trim',
    asks: (text, concepts, isOfLevel, { question, typed = '' }) =>
      (endsAt.test(text) && question.command !== 'source') ||
      (ofVolts.has(question.command) ? (isOfLevel ? conceptsIn(typed) : []) : concepts).includes('volts'),
    unless: wordSet('storage cells apart supply down meter percent lead plug balance fly lies ok why wh amps long'),
  },
  {
    command: 'energy',
    asks: text => ofEnergy.test(text),
    unless: wordSet('plane supply usb sourceBattery generator enough why ok may log percent amps long'),
  },
  {
    command: 'time',
    asks: text => chargeTime.test(text),
    unless: wordSet('fly supply usb sourceBattery generator enough why ok may log remind'),
  },
  {
    command: 'supply',
    asks: text => inWatts.test(text),
    unless: wordSet('plane usb sourceBattery generator enough why ok may log percent amps long fly'),
  },
]

/** So many words may stand beside it, where they go on from what was said. */
const many = 9

export const asksQuantity: Way = ({ text, values, frame, vocabulary }) => {
  const isShort = isFewWords(text) || endsAt.test(text) || (goesOn.test(text) && countOf(text) <= many)
  if (frame.pending || !isShort || !isOfPack(values) || asksWhatItIs.test(text) || goesIn.test(text)) return undefined
  const concepts = conceptsIn(text)
  const isOfLevel = values.some(value => value.text === 'full') && frame.question.options.from === undefined
  const asked = quantities.find(
    ({ asks, unless }) => asks(text, concepts, isOfLevel, frame) && !concepts.some(concept => unless.has(concept)),
  )
  const command = vocabulary.find(one => one.name === asked?.command)
  if (!command) return undefined
  const { kept, before } = lentTo(frame, command, text, values)
  const { source: _, to: __, ...held } = kept
  const fitted = fitTo(command, [], held, before)
  return fitted.missing === undefined ? choiceOf(fitted, held) : undefined
}
