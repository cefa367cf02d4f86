// A question: a command and its details, as `time pack: 3S 720 LiHV from: 3.7V` has them.

import { type Danger, dangers } from '../../charging/situation/dangers.ts'
import { type Doubt, doubts } from '../../charging/situation/doubts.ts'

/** The options hold text as typed; the command's own readers make values of it. */
export interface Question {
  readonly command: string
  readonly options: Readonly<Record<string, string>>
  /** Words of a question that the answer does not rest on, to be said out loud. */
  readonly notUsed?: readonly string[] | undefined
  /** What its words told of dangers, and what was only assumed: asked again, it is judged with them. */
  readonly told?: readonly (Danger | Doubt)[] | undefined
}

/** Canonical text; reading it gives the same question, where no value has the form of `name: value` itself. */
export function writeQuestion({ command, options, told = [] }: Question): string {
  const pairs = Object.entries(options).map(([name, value]) => `${name}: ${value}`)
  return [command, ...pairs, ...(told.length > 0 ? [`told: ${told.join(', ')}`] : [])].join(' ')
}

const tail = / told: ([a-z]+(?:, [a-z]+)*)$/i

/** The text before what was told with it, and that, where the text ends in it. */
export function withoutTold(text: string): { readonly text: string; readonly told: readonly (Danger | Doubt)[] } {
  const found = tail.exec(text)
  const told = (found?.[1] ?? '').split(', ')
  if (!found || !told.every(isTold)) return { text, told: [] }
  return { text: text.slice(0, found.index), told }
}

const isTold = (key: string): key is Danger | Doubt => Object.hasOwn(dangers, key) || Object.hasOwn(doubts, key)

/** The dangers among what was told, and the doubts. */
export const apart = (told: readonly (Danger | Doubt)[]) => ({
  dangers: told.filter((key): key is Danger => Object.hasOwn(dangers, key)),
  doubts: told.filter((key): key is Doubt => Object.hasOwn(doubts, key)),
})

/** In canonical notation, but what was asked as a rate stays one: for another pack it is another current. */
export function withRates(canonical: Question, { options: asked }: Question): Question {
  const rates = Object.entries(asked).filter(
    ([name, text]) => canonical.options[name] !== undefined && isRate.test(text),
  )
  return { ...canonical, options: { ...canonical.options, ...Object.fromEntries(rates) } }
}

const isRate = /^(?:[\d.,]+ ?C|C ?\/ ?\d+)$/
