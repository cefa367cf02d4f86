// "And volts", "and full?": those at the end of the charge that was spoken of.

import { conceptsIn } from '../model/concepts.ts'
import { fitTo } from '../reading/fit.ts'
import type { Way } from './behind.ts'
import { choiceOf } from './choice-of.ts'
import { isFewWords } from './follow-up.ts'
import { lentTo } from './lend.ts'

/** What volts stand for beside the end of a charge. */
const otherVolts = new Set(
  'storage cells apart supply down meter percent lead plug balance fly lies ok why wh'.split(' '),
)
/** Those that tell of volts by themselves, where the question before was of volts. */
const ofVolts: ReadonlySet<string> = new Set(['storage', 'trim', 'percent'])

export const asksVolts: Way = ({ text, values, frame, vocabulary }) => {
  const command = vocabulary.find(({ name }) => name === 'trim')
  const concepts = conceptsIn(text)
  const isOfEnd = isFewWords(text) && values.every(value => value.text === 'full')
  if (!command || frame.pending || !isOfEnd || concepts.some(concept => otherVolts.has(concept))) return undefined
  const { question, typed = '' } = frame
  const isOfLevel = values.length > 0 && question.options.from === undefined
  const asked = !ofVolts.has(question.command) ? concepts : isOfLevel ? conceptsIn(typed) : []
  if (!asked.includes('volts')) return undefined
  const { kept, before } = lentTo(frame, command, text, values)
  const { source: _, to: __, ...held } = kept
  const fitted = fitTo(command, [], held, before)
  return fitted.missing === undefined ? choiceOf(fitted, held) : undefined
}
