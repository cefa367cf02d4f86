// What somebody says to a question that we asked back: "2", "lihv" or "1300".

import { nearest } from '../../../ground/nearest.ts'
import type { Candidate } from '../../candidates/sentence/candidate.ts'
import { fitTo } from '../../reading/fit.ts'
import { isNamedKind } from '../../reading/free-words.ts'
import { capacityTold_Ah, namesPack, toldBy } from '../../reading/told/told-pack.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'

export const answerTo: Way = ({ text, values, frame: { question, pending } }, command) => {
  if (!pending) return undefined
  const { missing, choices, told } = pending
  const by = (given: readonly Candidate[], kept = question.options) =>
    choiceOf(fitTo(command, given, kept, told), question.options)
  if (missing === 'capacity' || 'cells' in missing) {
    const part = missing === 'capacity' ? 'capacity_Ah' : 'series'
    const telling = values.map(value => asPart(value, part))
    return telling.some(value => toldBy(value)?.[part] !== undefined) ? by(telling) : undefined
  }
  const { kind = '' } = command.options.find(({ name }) => name === missing.option) ?? {}
  const word =
    isNamedKind(kind) && !values.some(namesPack)
      ? wordsFor(text, choices, kind === 'new title' && values.length === 0 ? mostOfTitle : mostOfName)
      : undefined
  if (word !== undefined) return by([], { ...question.options, [missing.option]: word })
  const choice = by(values)
  return choice.fitted?.options[missing.option] === undefined ? undefined : choice
}

/** A bare number, or a capacity that a command may take for a measured one, is the part of the pack that was asked for. */
function asPart(value: Candidate, part: 'capacity_Ah' | 'series'): Candidate {
  const { kind, text } = value
  const number = kind === 'number' || kind === 'count' ? Number(text) : 0
  if (part === 'series') return number > 0 ? { ...value, kind: 'pack', pack: { series: number } } : value
  const capacity_Ah = capacityTold_Ah(value)
  return kind === 'pack' || capacity_Ah === undefined ? value : { ...value, kind: 'pack', pack: { capacity_Ah } }
}

const [mostOfName, mostOfTitle] = [3, 8]
const speaks = /\?|^\W*(?:(?:what|how|can|is) |(?:it|they|that|this|these|those|and|but|no)\b)/i

/** A name or a title as somebody types it in answer: one of the choices, or few words that ask nothing. */
const wordsFor = (text: string, choices: readonly string[], most: number): string | undefined =>
  nearest(text.trim(), choices) ??
  (text.trim().split(/\s+/).length <= most && !speaks.test(text) ? text.trim() : undefined)
