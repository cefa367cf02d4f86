// Plain words: fills the options of a command with what a sentence holds.

import { refuseUnsound } from './danger-words.ts'
import { refuseToIgnore, severalCurrents, twice } from './doubts.ts'
import { isFiller } from './filler-words.ts'
import { type Phrase, phrasesOf } from './phrases.ts'
import { refuseUntold } from './telling-words.ts'
import { shortened } from './text.ts'
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
  const { phrases, words } = phrasesOf(text)
  const options: Record<string, string> = {}
  const notUsed: string[] = []
  const asksWhether = words.some(word => /^(?:can|could|will|would|does)$/.test(word))
  for (const phrase of withRoles(phrases, asksWhether)) {
    if (phrase.kind === 'charger' && phrase.cue === 'at') throw severalCurrents(phrase)
    const option = optionFor(phrase, command)
    if (!option) {
      refuseToIgnore(phrase, command)
      notUsed.push(phrase.text)
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

/** The words that neither carry nothing nor belong to a command. */
function strangeAmong(words: readonly string[], vocabulary: Vocabulary): readonly string[] {
  const strange = words.filter(word => /[\p{L}\d]/u.test(word) && !isFiller(word))
  if (strange.length === 0) return []
  const spoken = vocabulary.flatMap(({ name, plainWords }) => [name, ...plainWords])
  const known = new Set(spoken.join(' ').split(' '))
  return strange.filter(word => !known.has(word))
}

const sourceCues = new Set(['from', 'off', 'on', 'using', 'out'])
const weakSourceCues = new Set(['with', 'by'])
const feeding = new Set('charge charges feed fill do power run carry handle give top'.split(' '))

/** A battery that feeds others is a source: told by the preposition before it or the verb behind it. */
function withRoles(phrases: readonly Phrase[], asksWhether: boolean): readonly Phrase[] {
  const packs = phrases.filter(({ kind }) => kind === 'pack')
  const feeds = ({ cue = '', next = '' }: Phrase) => sourceCues.has(cue) || (asksWhether && feeding.has(next))
  const weakly = ({ cue = '' }: Phrase) => packs.length > 1 && weakSourceCues.has(cue)
  const source = packs.find(feeds) ?? packs.find(weakly)
  return phrases.map(phrase => (phrase === source ? { ...phrase, kind: 'source' } : phrase))
}

/** By the preposition, then by name, then by kind. */
function optionFor({ kind, cue = '' }: Phrase, { options }: CommandWords): OptionWords | undefined {
  const named = (name: string) => options.find(option => option.name === name)
  const ofKind = (wanted: string) => options.find(option => option.kind === wanted && option.name !== 'until')
  const ends = cue === 'until' || cue === 'till'
  if (kind === 'level')
    return named(ends || cue === 'to' ? 'to' : 'from') ?? ofKind('from') ?? ofKind('voltage')
  const option = (ends ? named('until') : undefined) ?? named(kind) ?? ofKind(kind)
  // Volts or a percentage by themselves are clear only where a command knows one state, not a start and an end.
  const state = kind === 'voltage' || kind === 'percent'
  return option ?? (state && !named('to') ? ofKind('from') : undefined)
}
