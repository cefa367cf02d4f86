// Plain words: fills the options of a command with what a sentence holds.

import { shortened, spaced } from '../../ground/plain-text.ts'
import { refuseUnsound } from '../scan/danger-words.ts'
import { refuseToIgnore, severalCurrents, supplyOrLabel, twice } from './doubts.ts'
import { isFiller } from './filler-words.ts'
import { refuseForeign } from './foreign-words.ts'
import { gathered } from './gathered.ts'
import { type Phrase, phrasesOf } from './phrases.ts'
import { withRoles } from './roles.ts'
import { refuseUntold } from './telling-words.ts'
import type { CommandWords, OptionWords, Vocabulary } from './vocabulary.ts'

export interface PlainReading {
  readonly options: Readonly<Record<string, string>>
  /** Words and quantities of the sentence that the answer does not rest on. */
  readonly notUsed: readonly string[]
}

/**
 * Values go to the option of their kind as typed. Throws a Problem for a number that fits nowhere, for what
 * could mean two things, and for words that say the pack is unsound.
 */
export function readPlainWords(text: string, command: CommandWords, vocabulary: Vocabulary): PlainReading {
  refuseUnsound(text)
  refuseForeign(text)
  const sentence = phrasesOf(text)
  const { words } = sentence
  const options = spokenValues(text, command)
  const notUsed: string[] = []
  for (const phrase of gathered(takesSource(command) ? withRoles(sentence) : sentence.phrases, command)) {
    if (phrase.kind === 'charger' && phrase.cue === 'at') throw severalCurrents(phrase)
    if (phrase.kind === 'source' && phrase.afterPack && / at /i.test(phrase.text)) throw supplyOrLabel(phrase)
    if (isSaidBy(command, phrase)) continue
    const option = optionFor(phrase, command)
    if (!option) {
      refuseToIgnore(phrase, command)
      notUsed.push(phrase.text)
    } else if (options[option.name] !== undefined && option.kind === 'pack' && phrase.kind !== 'pack') {
      refuseToIgnore(phrase, command)
    } else if (options[option.name] === undefined) {
      options[option.name] = phrase.text
    } else {
      throw twice(option, phrase)
    }
  }
  refuseUntold(words, command, options)
  notUsed.push(...strangeAmong(words, vocabulary))
  return { options, notUsed: [...new Set(notUsed)].map(word => shortened(word)) }
}

const takesSource = ({ options }: CommandWords): boolean =>
  options.some(({ kind }) => kind === 'source' || kind === 'session sources')

/** The values that phrases of the sentence stand for: the longest phrase for each option. */
function spokenValues(text: string, { options }: CommandWords): Record<string, string> {
  const said = spaced(text)
  const found = options.flatMap(({ name, spoken = {} }) => {
    const [longest] = Object.keys(spoken)
      .filter(phrase => said.includes(` ${phrase} `))
      .sort((a, b) => b.length - a.length)
    return longest === undefined ? [] : [[name, spoken[longest] as string] as const]
  })
  return Object.fromEntries(found)
}

/** "Put it to storage", "which usb supply": the words that ask for the command are no value of it. */
function isSaidBy({ name, options, plainWords }: CommandWords, { kind, text, cue = '' }: Phrase): boolean {
  const word = text.toLowerCase()
  if (kind === 'source') return !/\d/.test(word) && plainWords.some(phrase => phrase.includes(word))
  // "At full" is taken already, as what the phrase stands for.
  if (kind === 'level' && options.some(({ spoken = {} }) => word in spoken)) return true
  const isGoal = ['to', 'into', 'is'].includes(cue) && !options.some(option => option.name === 'to')
  return kind === 'level' && isGoal && word.startsWith(name)
}

/** The words that neither carry nothing nor belong to a command. */
function strangeAmong(words: readonly string[], vocabulary: Vocabulary): readonly string[] {
  const strange = words.filter(word => /[\p{L}\d]/u.test(word) && !isFiller(word))
  if (strange.length === 0) return []
  const phrases = vocabulary.flatMap(({ name, options, plainWords }) => [
    name,
    ...plainWords,
    ...options.flatMap(({ spoken = {} }) => Object.keys(spoken)),
  ])
  const known = new Set(phrases.join(' ').split(' '))
  return strange.filter(word => !known.has(word))
}

/** Where a command has no option of a kind, one of these kinds reads its words too. */
const widerKinds: Readonly<Record<string, readonly string[]>> = {
  chemistry: ['cells', 'pack'],
  cells: ['pack'],
  series: ['pack'],
  charger: ['session chargers'],
  source: ['session sources'],
}

const readingCues = new Set(['says', 'reads', 'measures'])

/** By the preposition, then by name, then by kind. */
function optionFor({ kind, cue = '' }: Phrase, { options }: CommandWords): OptionWords | undefined {
  const named = (name: string) => options.find(option => option.name === name)
  const ofKind = (wanted: string) => options.find(option => option.kind === wanted && option.name !== 'until')
  const ends = cue === 'until' || cue === 'till'
  if (kind === 'level' && (ends || cue === 'to')) return named('to')
  if (kind === 'level' && cue === 'shows') return named('shown') ?? named('from') ?? ofKind('from')
  if (kind === 'level' && readingCues.has(cue)) return named('measured') ?? named('from') ?? ofKind('from')
  // What is neither shown nor measured is the cutoff itself.
  if (kind === 'level' && named('shown')) return named('to')
  if (kind === 'level') return named('from') ?? ofKind('from') ?? ofKind('voltage')
  const option =
    (ends && kind === 'current' ? named('until') : undefined) ??
    named(kind) ??
    ofKind(kind) ??
    (widerKinds[kind] ?? []).map(ofKind).find(Boolean)
  // Volts or a percentage by themselves are clear only where a command knows one state, not a start and an end.
  const state = kind === 'voltage' || kind === 'percent'
  return option ?? (state && !named('to') ? ofKind('from') : undefined)
}
