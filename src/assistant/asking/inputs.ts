// From the words of a question to the typed inputs of its command, and back to words for the read-as line.

import { distance } from 'fastest-levenshtein'
import type { Locale, Said } from '../../ground/locale.ts'
import { attempt, Problem } from '../../ground/problem.ts'
import { joined, type Text } from '../../ground/text.ts'
import type { Earlier } from '../../language/kinds/value-kind.ts'
import { takingAll } from '../../language/sentence/option-pairs.ts'
import { unknownDetail } from '../../language/sentence/option-pairs.words.ts'
import { type Question, writeQuestion } from '../../language/sentence/question.ts'
import type { Entry, Option, OptionWords } from '../command.ts'
import { needed } from './asking.words.ts'

/** Throws a Problem where a required detail is missing or a value cannot be read. */
export function understand(command: Entry, options: Readonly<Record<string, string>>, locale: Locale) {
  refuseUnknown(command, options)
  const { own } = locale
  const described = command.words(locale).takes
  const inputs: Record<string, unknown> = {}
  const assumed: Said[] = []
  const canonical: Record<string, string> = {}
  const phrases: Text[] = []
  for (const [name, option] of Object.entries(command.takes)) {
    const text = options[name]?.trim()
    if (!text) {
      if (option.required) throw missing(name, described[name], command)
      continue
    }
    const read = readOption(name, option, text, inputs as Earlier, { command: command.name, options })
    inputs[name] = read.value
    assumed.push(...read.assumed)
    const written = option.kind.write(read.value)
    canonical[name] = written
    phrases.push(described[name]?.as?.(own(written)) ?? own(`${name} ${written}`))
  }
  const [open] = (command.anyOf ?? []).find(names => !names.some(name => name in inputs)) ?? []
  if (open !== undefined) throw missing(open, described[open], command)
  return {
    inputs,
    assumed,
    /** The question in canonical notation. */
    question: { command: command.name, options: textLast(canonical, command) },
    readAs: joined(phrases.length > 0 ? phrases : [own(command.name)], ', '),
  }
}

/** What takes all the words that follow is written behind the rest. */
function textLast(options: Readonly<Record<string, string>>, { takes }: Entry): Readonly<Record<string, string>> {
  const takesAll = (name: string) => Number(takingAll.has(takes[name]?.kind.name ?? ''))
  return Object.fromEntries(Object.entries(options).toSorted(([a], [b]) => takesAll(a) - takesAll(b)))
}

/** Throws a Problem that offers the asker's own question with a value that can be read. */
function readOption(name: string, { kind }: Option, text: string, earlier: Earlier, asked: Question) {
  try {
    return kind.read(text, earlier)
  } catch (error) {
    if (!(error instanceof Problem)) throw error
    const { token = text, example } = error.details
    const mend = [
      ...nearestTo(token, example).map(part => ({ mended: text.replace(token, part), instead: part })),
      // A word that is like none is not made into one: other cells are charged otherwise.
      ...(isWord.test(token) ? [] : [{ mended: kind.example, instead: undefined }]),
    ].find(({ mended }) => mended !== text && attempt(() => kind.read(mended, earlier)))
    if (mend === undefined || error.details.choices) throw error
    const question = writeQuestion({ ...asked, options: { ...asked.options, [name]: mend.mended } })
    throw error.offering([{ label: question, question, instead: mend.instead }])
  }
}

const isWord = /^\p{L}+$/u
const mostTypos = 2

/** The same number without its comma or with a unit, then what is most like it of what would do. */
function nearestTo(token: string, example: string): readonly string[] {
  const plain = token.replace(/(?<=\d),(?=\d{3}(?!\d))/g, '')
  const unit = /^[\d.,]+( ?[°\p{L}%]+)$/u.exec(example)?.[1] ?? ''
  const isLike = (part: string) => !isWord.test(token) || distance(part.toLowerCase(), token.toLowerCase()) <= mostTypos
  const parts = [...new Set([...example.split(' '), example])].filter(isLike)
  return [plain, `${plain}${unit}`, ...parts.toSorted((a, b) => distance(a, token) - distance(b, token))]
}

function refuseUnknown(command: Entry, options: Readonly<Record<string, string>>): void {
  const names = Object.keys(command.takes)
  const unknown = Object.keys(options).find(name => !names.includes(name))
  if (unknown === undefined) return
  const example = command.examples[0] ?? command.name
  throw unknownDetail(command.name, names, { typed: unknown, token: unknown, example })
}

/** Names of options that do not read as a thing. */
const prepositions: ReadonlySet<string> = new Set(['from', 'to', 'at', 'by', 'is'])

function missing(name: string, words: OptionWords | undefined, { examples, takes }: Entry): Problem {
  const about = words?.about ?? ''
  return new Problem({
    what: needed(name, about, !prepositions.has(name)),
    expected: ({ own }) => own(`${name}: ${about}`),
    example: examples[0] ?? `${name}: ${takes[name]?.kind.example}`,
  })
}
