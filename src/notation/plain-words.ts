// Plain words: finds the command by the phrases that mean it and fills its options with what the sentence holds.

import { Problem } from '../assistant/problem.ts'
import { refuseUnsound } from './danger-words.ts'
import { isFiller } from './filler-words.ts'
import { type Phrase, phrasesOf } from './phrases.ts'
import { shortened } from './text.ts'
import type { CommandWords, OptionWords, Vocabulary } from './vocabulary.ts'

export interface PlainReading {
  readonly options: Readonly<Record<string, string>>
  /** Words and quantities of the sentence that the answer does not rest on. */
  readonly notUsed: readonly string[]
}

/** The command whose phrase is found in the text; the longest phrase wins, then the earlier one. */
export function commandMeant(text: string, vocabulary: Vocabulary): CommandWords | undefined {
  const spaced = ` ${text.toLowerCase().replace(/[^\p{L}\d']+/gu, ' ')} `
  let best: { command: CommandWords; length: number; index: number } | undefined
  for (const command of vocabulary) {
    for (const phrase of command.plainWords) {
      const index = spaced.indexOf(` ${phrase.toLowerCase()} `)
      if (index < 0) continue
      const longer = phrase.length - (best?.length ?? 0)
      if (longer > 0 || (longer === 0 && index < (best?.index ?? 0)))
        best = { command, length: phrase.length, index }
    }
  }
  return best?.command
}

/** Fills the options of `command`. Throws a Problem for a number that fits nowhere and for two of a kind. */
export function readPlainWords(text: string, command: CommandWords, vocabulary: Vocabulary): PlainReading {
  refuseUnsound(text)
  const { phrases, words } = phrasesOf(text)
  const options: Record<string, string> = {}
  const notUsed: string[] = []
  const asksWhether = words.some(word => /^(?:can|could|will|would|does)$/.test(word))
  for (const phrase of withRoles(phrases, asksWhether)) {
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
  const meant = new Set(
    vocabulary.flatMap(({ name, plainWords }) => [name, ...plainWords].flatMap(spoken => spoken.split(' '))),
  )
  notUsed.push(...words.filter(word => /\p{L}|\d/u.test(word) && !isFiller(word) && !meant.has(word)))
  return { options, notUsed: [...new Set(notUsed)].map(word => shortened(word)) }
}

const sourceCues = new Set(['from', 'off', 'on', 'using', 'out'])
const weakSourceCues = new Set(['with', 'by'])
const feeding = new Set([
  'charge',
  'charges',
  'feed',
  'fill',
  'do',
  'power',
  'run',
  'carry',
  'handle',
  'give',
  'top',
])

/** A battery that feeds others is a source: told by the preposition before it or the verb behind it. */
function withRoles(phrases: readonly Phrase[], asksWhether: boolean): readonly Phrase[] {
  const packs = phrases.filter(({ kind }) => kind === 'pack')
  const feeds = ({ cue, next }: Phrase) =>
    (cue !== undefined && sourceCues.has(cue)) || (asksWhether && next !== undefined && feeding.has(next))
  const source =
    packs.find(feeds) ??
    (packs.length > 1 ? packs.find(({ cue }) => cue !== undefined && weakSourceCues.has(cue)) : undefined)
  return phrases.map(phrase => (phrase === source ? { ...phrase, kind: 'source' } : phrase))
}

/** What may change the answer is not passed over, even out loud. */
function refuseToIgnore({ kind, text }: Phrase, { name, options }: CommandWords): void {
  const token = shortened(text)
  if (kind === 'count' && !/^(?:1|one)(?: ?x)?$/i.test(text)) {
    throw new Problem({
      what: `${name} is worked out for one pack.`,
      token,
      expected: 'one pack; several on one board, or one after the other, are questions of their own',
      example: `${name} pack: 3S 720 LiHV`,
    })
  }
  if (kind !== 'voltage' && kind !== 'percent' && kind !== 'level') return
  throw new Problem({
    what: `I cannot tell what ${token} is of.`,
    token,
    expected: options.some(option => option.name === 'from')
      ? '"from" or "to" before it, or the name of the detail'
      : 'the name of the detail before it',
    example: options.some(option => option.name === 'from')
      ? `from ${token}`
      : `${options[0]?.name ?? name}: ${token}`,
  })
}

function optionFor({ kind, cue }: Phrase, { options }: CommandWords): OptionWords | undefined {
  if (kind === 'level') {
    return (
      options.find(({ name }) => name === levelOption(cue)) ??
      options.find(option => option.kind === 'from') ??
      options.find(option => option.kind === 'voltage')
    )
  }
  if (cue === 'until' || cue === 'till') {
    const until = options.find(({ name }) => name === 'until')
    if (until) return until
  }
  return (
    options.find(({ name }) => name === kind) ??
    options.find(option => option.kind === kind && option.name !== 'until')
  )
}

const levelOption = (cue: string | undefined): string =>
  cue === 'to' || cue === 'until' || cue === 'till' ? 'to' : 'from'

function twice({ name, kind }: OptionWords, { text }: Phrase): Problem {
  const packs = kind === 'pack' || name === 'source'
  return new Problem({
    what: packs
      ? 'I cannot tell which of the two is charged and which feeds.'
      : `That gives two values for ${name}.`,
    token: shortened(text),
    expected: packs ? 'the names in front of them' : `one ${name}`,
    example: packs ? 'source pack: 3S 720 LiHV source: 4S 5000 Li-ion' : `${name}: ${shortened(text)}`,
  })
}
