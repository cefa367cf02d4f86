// A question written in notation: `time pack: 3S 720 LiHV from: 3.7V`. Everything else is a plain sentence.

import { nearest } from '../../ground/nearest.ts'
import { plainText } from '../../ground/plain-text.ts'
import { attempt } from '../../ground/problem.ts'
import { wordSet } from '../../ground/word-set.ts'
import { readPairs, takingAll } from './option-pairs.ts'
import { type Question, withoutTold } from './question.ts'
import type { CommandWords, Vocabulary } from './vocabulary.ts'

export interface Typed {
  readonly question: Question
  readonly command: CommandWords
  /** Words between the command and its first detail: read as a plain sentence is. */
  readonly before: string
}

/**
 * Undefined where the text begins with no command, or goes on in plain words alone.
 * Throws a Problem for a detail that the command does not take, or takes twice.
 */
export function readTyped(text: string, vocabulary: Vocabulary): Typed | undefined {
  const whole = withoutMark(text)
  const command = commandAtStart(whole, vocabulary)
  if (!command) return undefined
  // What a detail takes in whole keeps its own.
  const { text: plain, told } = takesWhole(command) ? { text: whole, told: undefined } : withoutTold(whole)
  const rest = plain.slice(command.name.length)
  const { before, options } = readPairs(rest, command, !isDetail(/^ *(\p{L}[\p{L}\d_-]*) ?:/u.exec(rest)?.[1], command))
  const open = openOption(command, before)
  const question = (given: Question['options']) => ({ command: command.name, options: given, told })
  if (open) return { command, before: '', question: question({ [open]: before, ...options }) }
  const isTyped = before === '' || Object.keys(options).length > 0
  return isTyped ? { command, before, question: question(options) } : undefined
}

/** "Time left: 60 %" names no detail, nor a slip of one. */
const isDetail = (name: string | undefined, { options }: CommandWords): boolean =>
  name !== undefined &&
  nearest(
    name.toLowerCase(),
    options.map(one => one.name),
  ) !== undefined

/** Whether one of its details takes all that follows, whatever that is. */
export const takesWhole = ({ options }: CommandWords): boolean => options.some(({ kind }) => takingAll.has(kind))

/** Kinds of value that hold whatever somebody likes to write. */
const freeText = wordSet(
  'text, title, new title, question, lesson answer, kit name, new name, pack name, club words',
  ', ',
)

/** What somebody says of themselves: of a written question whose details are free text, what stands before them. */
export function spokenOf(text: string, vocabulary: Vocabulary): string {
  const typed = attempt(() => readTyped(text, vocabulary))
  if (!typed) return text
  const { before, question, command } = typed
  const isFree = command.options.some(({ name, kind }) => question.options[name] !== undefined && freeText.has(kind))
  return isFree ? before : text
}

/** Without the sign that some put before a command. */
const withoutMark = (text: string): string => plainText(text).replace(/^[/!] ?/, '')

/** The command that a text begins with, the longest name first. */
export function commandAtStart(plain: string, vocabulary: Vocabulary): CommandWords | undefined {
  const lower = plain.toLowerCase()
  return vocabulary
    .filter(({ name }) => lower.startsWith(name) && !/^[\p{L}\d_:'-]/u.test(lower.slice(name.length)))
    .sort((a, b) => b.name.length - a.name.length)[0]
}

/** What sets the entries of a list apart; without it a list is told in words: "4x wren on the flightbox". */
const listed = /[;|+]/

const listKinds: ReadonlySet<string> = new Set(['packs', 'session packs'])
/** Kinds of value that a plain sentence is searched for; words of any other kind belong to the detail as they stand. */
const sought: ReadonlySet<string> = new Set(
  'pack,chemistry,cells,charger,source,from,to,current,voltage,power,energy,capacity,duration,temperature,resistance,cell resistances,length,gauge,mass,count,cell volts,percent,rate,session chargers,session sources,matter'.split(
    ',',
  ),
)

/** The first detail, where all that follows the command belongs to it. */
function openOption({ options: [first] }: CommandWords, before: string): string | undefined {
  if (!first || before === '') return undefined
  // The name of a command is one word or two: more of them ask for help with something.
  if (first.kind === 'command' && before.split(' ').length > 2) return undefined
  // More than a name is a sentence.
  if (first.kind === 'pack name' && (before.split(' ').length > 3 || /\d ?m?ah\b/i.test(before))) return undefined
  if (listKinds.has(first.kind)) return listed.test(before) ? first.name : undefined
  return sought.has(first.kind) ? undefined : first.name
}
