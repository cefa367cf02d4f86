// What somebody says to a question that we asked back.

import { nearest } from '../../ground/nearest.ts'
import { bestCover, candidatesOf } from '../candidates/index.ts'
import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { Choice } from '../reading/choose.ts'
import { fitTo } from '../reading/fit.ts'
import { isNamedKind } from '../reading/free-words.ts'
import { toldBy } from '../reading/told-pack.ts'
import type { Vocabulary } from '../sentence/vocabulary.ts'
import { choiceOf } from './choice-of.ts'
import type { Frame } from './frame.ts'

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
  if (missing === 'capacity') {
    const bare = given.find(({ kind }) => kind === 'number')
    const capacity_Ah =
      given.map(value => toldBy(value)?.capacity_Ah).find(one => one !== undefined) ??
      (bare && Number(bare.text) >= 20 ? Number(bare.text) / 1000 : undefined)
    if (capacity_Ah === undefined) return undefined
    return choiceOf(fitTo(command, [], question.options, { ...told, capacity_Ah }), question.options)
  }
  if ('cells' in missing) {
    const bare = given.find(({ kind }) => kind === 'number' || kind === 'count')
    const series =
      given.map(value => toldBy(value)?.series).find(one => one !== undefined) ?? (bare && Number(bare.text))
    return series === undefined
      ? undefined
      : choiceOf(fitTo(command, [], question.options, { ...told, series }), question.options)
  }
  const free = command.options.find(({ name }) => name === missing.option)
  const word = free && isNamedKind(free.kind) ? (offered ?? wordsFor(text, choices)) : undefined
  if (word !== undefined) {
    const options = { ...question.options, [missing.option]: word }
    return choiceOf(fitTo(command, [], options), question.options)
  }
  const fitted = fitTo(command, given, question.options, told)
  const isFilled = fitted.options[missing.option] !== undefined
  return isFilled ? choiceOf(fitted, question.options) : undefined
}

const speaks = /\?|^\W*(?:it|its|it's|they|they're|that|that's|this|these|those|and|but|no)\b/i

/** A name or a title as somebody types it in answer: one of the choices, or few words that ask nothing. */
const wordsFor = (text: string, choices: readonly string[]): string | undefined =>
  nearest(text.trim(), choices) ??
  (text.trim().split(/\s+/).length <= 3 && !speaks.test(text) ? text.trim() : undefined)
