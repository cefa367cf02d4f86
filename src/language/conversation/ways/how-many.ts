// "How many if I leave 20 %", "how many then", behind a question about how many packs something charges.

import { fitTo } from '../../reading/fit.ts'
import { namesPack } from '../../reading/told/told-pack.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'

const counts =
  /^\W*(?:(?:and|so|then|ok|but) )*how many(?! (?:wh|watt\w*|volts?|amps?|mah|minutes?|hours?|cells?|times? (?:did|have)|per ?cent))\b/i

export const howMany: Way = ({ text, values, frame, vocabulary }) => {
  const command = vocabulary.find(({ name }) => name === 'source')
  const isOf = frame.question.command === command?.name && !frame.pending && !values.some(namesPack)
  if (!command || !isOf || !counts.test(text)) return undefined
  // A share that is left or kept is the source's: it goes no lower than it may anyway.
  const others = values.filter(({ kind, text: of }) => !(kind === 'state' && of.endsWith('%')))
  return choiceOf(fitTo(command, others, frame.question.options), frame.question.options)
}
