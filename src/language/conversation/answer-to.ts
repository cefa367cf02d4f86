// What somebody says to a question that we asked back.

import { nearest } from '../../ground/nearest.ts'
import { bestCover, candidatesOf } from '../candidates/index.ts'
import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { Frame } from '../frames/frame.ts'
import type { Choice } from '../reading/choose.ts'
import { fitTo } from '../reading/fit.ts'
import { isNamedKind } from '../reading/free-words.ts'
import { toldBy } from '../reading/told-pack.ts'
import type { Vocabulary } from '../sentence/vocabulary.ts'
import { choiceOf } from './choice-of.ts'
import { namesPack, namesWanted } from './follow-up.ts'

/** "2", "lihv" or "1300" to a question that we asked back; undefined where it is no answer to that. */
export function answerTo(
  text: string,
  values: readonly Candidate[],
  { question, pending }: Frame,
  vocabulary: Vocabulary,
): Choice | undefined {
  const command = vocabulary.find(({ name }) => name === question.command)
  if (!command || !pending) return undefined
  const { missing, choices, told } = pending
  const chosen = /^\W*([1-9])\W*$/.exec(text)?.[1]
  const offered = chosen === undefined ? undefined : choices[Number(chosen) - 1]
  const given = offered === undefined ? values : bestCover(candidatesOf(offered))
  if (missing === 'capacity' || 'cells' in missing) {
    const part = missing === 'capacity' ? 'capacity_Ah' : 'series'
    // A question of its own that tells the whole pack is none of ours.
    if (given.some(namesPack) && namesWanted(text, given)) return undefined
    const telling = given.map(value => asPart(value, part))
    return telling.some(value => toldBy(value)?.[part] !== undefined)
      ? choiceOf(fitTo(command, telling, question.options, told), question.options)
      : undefined
  }
  const free = command.options.find(({ name }) => name === missing.option)
  const word =
    free && isNamedKind(free.kind)
      ? (offered ?? wordsFor(text, choices, free.kind === 'new title' ? mostOfTitle : mostOfName))
      : undefined
  if (word !== undefined) {
    const options = { ...question.options, [missing.option]: word }
    return choiceOf(fitTo(command, [], options), question.options)
  }
  const fitted = fitTo(command, given, question.options, told)
  const isFilled = fitted.options[missing.option] !== undefined
  return isFilled ? choiceOf(fitted, question.options) : undefined
}

/** A bare number, or a capacity that a command may take for a measured one, is the part of the pack that was asked for. */
function asPart(value: Candidate, part: 'capacity_Ah' | 'series'): Candidate {
  const { kind, text } = value
  const isBare = kind === 'number' || kind === 'count'
  const number = Number(text)
  if (part === 'series') return isBare ? { ...value, kind: 'pack', pack: { series: number } } : value
  const capacity_Ah = isBare && number >= leastBare_mAh ? number / 1000 : toldBy(value)?.capacity_Ah
  return kind === 'pack' || capacity_Ah === undefined ? value : { ...value, kind: 'pack', pack: { capacity_Ah } }
}

const leastBare_mAh = 20

const [mostOfName, mostOfTitle] = [3, 8]
const speaks = /\?|^\W*(?:(?:what|how|can|is) |(?:it|its|it's|they|they're|that|that's|this|these|those|and|but|no)\b)/i

/** A name or a title as somebody types it in answer: one of the choices, or few words that ask nothing. */
const wordsFor = (text: string, choices: readonly string[], most: number): string | undefined =>
  nearest(text.trim(), choices) ??
  (text.trim().split(/\s+/).length <= most && !speaks.test(text) ? text.trim() : undefined)
