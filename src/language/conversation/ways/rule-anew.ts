// A rule of the club that was just told, with another value: "make that 1.5C", "6, sorry".

import { fitTo, type Kept } from '../../reading/fit.ts'
import type { CommandWords } from '../../sentence/vocabulary.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'
import { goesOn, isFewWords } from '../behind/follow-up.ts'
import { onlyNumber } from '../behind/number-behind.ts'

const number = /\d+(?:[.,]\d+)?/

/** What it tells of the rules that the command sets. */
export const rulesTold = ({ options }: CommandWords, told: Kept): Kept =>
  Object.fromEntries(
    options.flatMap(({ name, kind }) => (kind === 'club rule' && told[name] !== undefined ? [[name, told[name]]] : [])),
  )

export const ruleAnew: Way = ({ text, values, frame: { question }, readBy }, command) => {
  const rules = command.options.filter(({ kind }) => kind === 'club rule').map(({ name }) => name)
  if (rules.length === 0 || text.includes('?') || !(goesOn.test(text) || isFewWords(text))) return undefined
  const { free, values: others } = readBy(command)
  const told = rulesTold(command, free)
  const [set, ...more] = rules.filter(name => number.test(question.options[name] ?? ''))
  const [bare] = values.filter(({ typed }) => onlyNumber.test(typed))
  const renewed =
    Object.keys(told).length > 0 || set === undefined || more.length > 0 || !bare
      ? told
      : { [set]: (question.options[set] ?? '').replace(number, bare.typed.replace(',', '.')) }
  if (Object.keys(renewed).length === 0) return undefined
  const { chemistry } = question.options
  return choiceOf(fitTo(command, others, chemistry === undefined ? renewed : { chemistry, ...renewed }), {})
}
