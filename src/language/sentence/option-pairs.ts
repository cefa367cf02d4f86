// The `name: value` pairs of a question, in any order, each value running to the next name; a text, to the end.

import { nearest } from '../../ground/nearest.ts'
import { shortened } from '../../ground/plain-text.ts'
import type { Problem } from '../../ground/problem.ts'
import { saidTwice, unknownDetail } from './option-pairs.words.ts'
import type { CommandWords } from './vocabulary.ts'

/** Kinds of value that may hold `name:` themselves, so they take all that follows. */
export const takingAll: ReadonlySet<string> = new Set(['question', 'text'])
const optionName = /(?:^|[ ,;])(\p{L}[\p{L}\d_-]{0,31}) ?: ?/gu

/**
 * What stands before the first name, and the value of each. Throws a Problem for a name said twice and, unless `inSentence`, for one that the command does not have,
 * saying which it probably was: in a sentence a colon may follow any word.
 */
export function readPairs(text: string, command: CommandWords, inSentence = false) {
  const known = (name: string) => command.options.some(option => option.name === name.toLowerCase())
  const all = [...text.matchAll(optionName)].filter(([, name = '']) => !inSentence || known(name))
  const last = all.findIndex(([, name = '']) => takesAll(name.toLowerCase(), command))
  const found = last < 0 ? all : all.slice(0, last + 1)
  const options: Record<string, string> = {}
  for (const [index, match] of found.entries()) {
    const typed = match[1] ?? ''
    const name = typed.toLowerCase()
    if (!known(name)) throw unknownOption(typed, text, command)
    if (Object.hasOwn(options, name)) {
      throw saidTwice(typed, `${command.name} ${text.slice(0, match.index).trim()}`)
    }
    const value = text.slice(match.index + match[0].length, found[index + 1]?.index)
    options[name] = value.replace(/[ ,;]+$/, '')
  }
  return { before: text.slice(0, found[0]?.index).trim(), options }
}

const takesAll = (name: string, { options }: CommandWords): boolean =>
  options.some(option => option.name === name && takingAll.has(option.kind))

function unknownOption(typed: string, text: string, { name, options }: CommandWords): Problem {
  const names = options.map(option => option.name)
  const near = nearest(typed.toLowerCase(), names)
  const mended = near && `${name} ${text.replace(typed, near).trim()}`
  const problem = unknownDetail(name, names, {
    typed: shortened(typed),
    near,
    token: `${shortened(typed)}:`,
    example: mended ?? name,
  })
  return mended === undefined ? problem : problem.offering([{ label: mended, question: mended }])
}
