// Names for the kit: short, plain words that mean nothing else in a question.

import { plainText, problemAt, unquoted } from '../../ground/plain-text.ts'
import { attempt, type Choice } from '../../ground/problem.ts'
import { candidatesOf } from '../../language/candidates/index.ts'
import { dangersIn } from '../../language/dangers/index.ts'
import { wordsKind } from '../../language/kinds/value-kind.ts'
import { readChemistry } from '../../language/parts/chemistry.ts'
import { dimensions } from '../../language/quantities/dimensions.ts'
import type { Vocabulary } from '../../language/sentence/vocabulary.ts'
import { readState } from '../../language/things/state.ts'
import { freeNameWanted, nameTaken, nameWanted, noName } from './kit.words.ts'
import { isQuestionWord } from './question-words.ts'

export const longestName = 32
export const mostNameWords = 3
const nameWord = /^\p{L}[\p{L}\p{M}\p{N}'-]*$/u
const wanted = { expected: nameWanted(mostNameWords, longestName), example: 'wren-1' }

/** A name in the one form in which it is stored and looked up: lower case, single spaces. */
export const nameForm = (text: string): string => plainText(text).normalize('NFC').toLowerCase()

export const isNameShaped = (name: string): boolean =>
  name.length <= longestName &&
  name.split(' ').length <= mostNameWords &&
  name.split(' ').every(word => nameWord.test(word))

export const kitNameKind = wordsKind({
  name: 'kit name',
  example: 'wren',
  read: text => {
    const name = unquoted(nameForm(text))
    if (isNameShaped(name)) return name
    throw problemAt(text, noName, wanted)
  },
})

/** Of a pack: it stays a name, where a pack would become what the name stands for. */
export const packNameKind = { ...kitNameKind, name: 'pack name' }

/** For a name that is not saved yet, so that none is offered. */
export const newNameKind = { ...kitNameKind, name: 'new name' }

/** Throws a Problem for a name that a question would take for something else; `instead` offers one that is free. */
export function refuseTakenName(name: string, vocabulary: Vocabulary, instead?: (free: string) => Choice): void {
  const by = readsAsNotation(name) ? 'value' : isReserved(name, vocabulary) ? 'words' : undefined
  if (!by) return
  const example = `my-${name.replaceAll(' ', '-')}`
  const problem = problemAt(name, nameTaken(name, by), { expected: freeNameWanted, example })
  throw instead && !readsAsNotation(example) ? problem.offering([instead(example)]) : problem
}

/** True where every word of the name has a meaning of its own in questions. */
export function isReserved(name: string, vocabulary: Vocabulary): boolean {
  const known = wordsOf(vocabulary)
  return name.split(' ').every(word => isQuestionWord(word) || known.has(word) || isNotation(word))
}

const units = new Set(Object.values(dimensions).flatMap(({ units: names }) => Object.keys(names)))

/** From here a value is read where a name was meant. */
const clear = 0.4

const isNotation = (word: string): boolean => units.has(word) || attempt(() => readChemistry(word)) !== undefined

function readsAsNotation(name: string): boolean {
  if (name.split(' ').some(isNotation) || attempt(() => readState(name))) return true
  return (
    dangersIn(name).told.length > 0 ||
    candidatesOf(name).some(value => value.score > clear && value.end - value.start === name.length)
  )
}

const wordsByVocabulary = new WeakMap<Vocabulary, ReadonlySet<string>>()

function wordsOf(vocabulary: Vocabulary): ReadonlySet<string> {
  const earlier = wordsByVocabulary.get(vocabulary)
  if (earlier) return earlier
  const phrases = vocabulary.flatMap(({ name, options }) => [name, ...options.map(option => option.name)])
  const words = new Set(phrases.flatMap(phrase => phrase.toLowerCase().split(/[^\p{L}\p{N}-]+/u)))
  wordsByVocabulary.set(vocabulary, words)
  return words
}
