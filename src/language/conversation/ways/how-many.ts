// "How many if I leave 20 %", "how many then", "how many at once", behind a question about what a source charges.

import { atOnce } from '../../reading/signs/said-of-it.ts'
import { asKept } from '../../reading/told/slots.ts'
import { namesPack } from '../../reading/told/told-pack.ts'
import type { Way } from '../behind/behind.ts'
import { choiceBy } from '../behind/choice-of.ts'
import { lentTo } from '../behind/lend.ts'

const counts =
  /^\W*(?:(?:and|so|then|ok|but) )*how many(?! (?:wh|watt\w*|volts?|amps?|mah|minutes?|hours?|cells?|times? (?:did|have)|per ?cent))\b/i

export const howMany: Way = ({ text, values, frame, vocabulary }) => {
  const of = frame.question.command
  const isAtOnce = atOnce.test(text)
  const command = vocabulary.find(({ name }) => name === (isAtOnce ? 'supply' : 'source'))
  const isOf = of === 'source' || (isAtOnce && of === 'supply' && frame.question.options.source !== undefined)
  if (!command || !isOf || frame.pending || values.some(namesPack) || !counts.test(text)) return undefined
  // A share that is left or kept is the source's.
  const others = values.map(value => (value.kind === 'state' && value.text.endsWith('%') ? asKept(value) : value))
  const lent = of === command.name ? { kept: frame.question.options } : lentTo(frame, command, text, others)
  return choiceBy(command, others, lent)
}
