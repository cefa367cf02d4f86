// A question: a command and its options, written as `time pack: 3S 720 LiHV from: 3.7V` or asked in plain words.

import { nearest } from '../../ground/nearest.ts'
import { plainText, quoted, shortened, spaced } from '../../ground/plain-text.ts'
import { Problem } from '../../ground/problem.ts'
import { refuseUnsound } from '../scan/danger-words.ts'
import { commandMeant } from './command-meant.ts'
import { isFiller } from './filler-words.ts'
import { refuseForeign } from './foreign-words.ts'
import { listKinds } from './gathered.ts'
import { readPairs } from './option-pairs.ts'
import { nounKinds } from './phrases.ts'
import { readPlainWords } from './plain-words.ts'
import type { CommandWords, Vocabulary } from './vocabulary.ts'

/** The options hold text as typed; the command's own readers make values of it. */
export interface Question {
  readonly command: string
  readonly options: Readonly<Record<string, string>>
  /** Words of a plain question that the answer does not rest on, to be said out loud. */
  readonly notUsed?: readonly string[]
}

/**
 * Reads a question in notation, in plain words, or begun in one and ended in the other.
 * Throws a Problem where no command is meant, and for names, numbers and words that fit nowhere.
 */
export function readQuestion(text: string, vocabulary: Vocabulary): Question {
  const whole = plainText(text)
  const plain = whole.replace(/^[/!] ?/, '')
  const asked = spaced(plain).trim()
  const exact = vocabulary.find(({ plainWords }) => plainWords.includes(asked))
  if (exact) return { command: exact.name, options: {} }
  const named = commandNamed(plain, vocabulary)
  // A danger is answered before anything that is only not understood.
  if (!named) refuseUnsound(whole)
  if (!named) refuseForeign(whole)
  const command = named ?? commandMeant(plain, vocabulary)
  if (!command) throw noCommand(whole, vocabulary)
  const { before, options } = readPairs(named ? plain.slice(named.name.length) : plain, command, !named)
  if (!before) return { command: command.name, options }
  const open = openOption(command, before)
  if (named && open) return { command: command.name, options: merged({ [open]: before }, options) }
  const { options: meant, notUsed } = readPlainWords(before, command, vocabulary)
  return {
    command: command.name,
    options: merged(meant, options),
    ...(notUsed.length > 0 && { notUsed }),
  }
}

/** Canonical text; reading it gives the same question, where no value has the form of `name: value` itself. */
export function writeQuestion({ command, options }: Question): string {
  return [command, ...Object.entries(options).map(([name, value]) => `${name}: ${value}`)].join(' ')
}

/** The earlier question with what `text` says changed: "at 2A", "from 3.6V", "to storage", "on PD 45W". */
export function amendQuestion(earlier: Question, text: string, vocabulary: Vocabulary): Question {
  const command = vocabulary.find(({ name }) => name === earlier.command)
  const plain = plainText(text)
  if (!command) throw noCommand(earlier.command, vocabulary)
  const { before, options } = readPairs(plain, command)
  const { options: meant, notUsed } = readPlainWords(before.replace(loneLevel, 'to $1'), command, vocabulary)
  const changes = merged(meant, options)
  if (Object.keys(changes).length === 0) {
    throw new Problem({
      what: 'I do not see what to change.',
      ...quoted(plain),
      expected: `a new value for one of: ${command.options.map(({ name }) => name).join(', ')}`,
      example: 'at 2A',
    })
  }
  return {
    command: earlier.command,
    options: { ...keptWith(changes, earlier.options), ...changes },
    ...(notUsed.length > 0 && { notUsed }),
  }
}

/** What was measured of a pack does not hold for another one. */
function keptWith(
  changes: Readonly<Record<string, string>>,
  options: Question['options'],
): Question['options'] {
  if (changes.pack === undefined) return options
  const { capacity: _, resistance: __, ...kept } = options
  return kept
}

const loneLevel = /^(?:(?:and|or|now|what about|how about|make it)[ ,]+){0,2}(full|storage)[ ?!.]*$/i

function commandNamed(plain: string, vocabulary: Vocabulary): CommandWords | undefined {
  const lower = plain.toLowerCase()
  return vocabulary
    .filter(({ name }) => lower.startsWith(name) && !/^[\p{L}\d_:'-]/u.test(lower.slice(name.length)))
    .sort((a, b) => b.name.length - a.name.length)[0]
}

/** The kinds of value that plain words are searched for; a first option of another kind takes the words as they are. */
const soughtKinds: ReadonlySet<string> = new Set([...nounKinds, 'from', 'to', 'percent'])

/** What sets the entries of a list apart; without it a list is told in words: "4x wren on the flightbox". */
const listed = /[;|+]| vs\.? | versus /i

function openOption({ options: [first] }: CommandWords, before: string): string | undefined {
  if (!first || soughtKinds.has(first.kind)) return undefined
  return listKinds.has(first.kind) && !listed.test(before) ? undefined : first.name
}

function merged(
  meant: Readonly<Record<string, string>>,
  named: Readonly<Record<string, string>>,
): Record<string, string> {
  const both = Object.keys(meant).find(name => Object.hasOwn(named, name))
  if (both === undefined) return { ...meant, ...named }
  throw new Problem({
    what: `That gives two values for ${both}.`,
    token: shortened(meant[both] ?? both),
    expected: `${both} once`,
    example: `${both}: ${named[both]}`,
  })
}

function noCommand(plain: string, vocabulary: Vocabulary): Problem {
  const names = vocabulary.map(({ name }) => name)
  const first = /\p{L}+/u.exec(plain)?.[0] ?? ''
  const near = isFiller(first.toLowerCase()) ? undefined : nearest(first.toLowerCase(), names)
  return new Problem({
    what: near
      ? `I know no "${shortened(first)}". Did you mean "${near}"?`
      : 'I do not see what you want to know.',
    ...quoted(near ? first : plain),
    expected: `a question that starts with a command (${names.slice(0, 6).join(', ')}${names.length > 6 ? ', …; help lists all' : ''}), or plain words such as what current, how long, how many`,
    example: 'what current for a 3S 720 LiHV on a 0.5/1/2/4A charger',
  })
}
