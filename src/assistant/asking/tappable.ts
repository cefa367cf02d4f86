// What is wrong with a question, with something to tap: the asker's own words mended, or questions that the command answers.

import type { Locale } from '../../ground/locale.ts'
import { nearest } from '../../ground/nearest.ts'
import type { Problem } from '../../ground/problem.ts'
import { bestCover, candidatesOf } from '../../language/candidates/index.ts'
import type { Understanding } from '../../language/reading/meant.ts'
import type { KitEntry } from '../../memory/kit.ts'
import type { Registry } from '../registry.ts'

const mostSamples = 3

/** As it was typed, or pointing at no word at all: what was read for it was not typed so. */
export function pointed(told: Problem, typed: string, values: Understanding['values'] = []): Problem {
  const { token, choices } = told.details
  if (!token) return told
  const word = wordFor(token, typed, values)
  const mended = choices?.map(({ instead, ...choice }) =>
    instead === undefined || !word ? choice : { ...choice, label: typed.replace(word, instead) },
  )
  return told.with({ token: word, choices: mended })
}

/** Empty where no word was typed for it. */
function wordFor(token: string, typed: string, values: Understanding['values']): string {
  const number = /^-?[\d.]+/.exec(token)?.[0]
  const at = [token, number].flatMap(one => (one ? (spaced(one).exec(typed)?.[0] ?? []) : []))[0]
  if (at !== undefined) return at
  const value = values.find(({ text }) => bestCover(candidatesOf(text)).some(one => one.text === token))
  return value && typed.includes(value.text) ? value.text : ''
}

/** However it is spaced, and not as a part of a longer number. */
function spaced(token: string): RegExp {
  const signs = [...token.replace(/\s/g, '')].map(RegExp.escape)
  return new RegExp(`(?<![\\d.])${signs.join('\\s?')}(?!\\d)`, 'i')
}

/** With the saved name in place of a word that is nearly it. */
export function withNearestName(told: Problem, typed: string, saved: readonly KitEntry[]): Problem {
  const { token = '' } = told.details
  const names = saved.map(({ name }) => name)
  const near = /^\p{L}[\p{L}\d-]+$/u.test(token) ? nearest(token.toLowerCase(), names) : undefined
  const question = near && typed.replace(token, near)
  return question === undefined || question === typed ? told : told.offering([{ label: question, question }])
}

/** Nothing is changed by a tap: where the answer stands, else how the command is asked, else its help. */
export function tappable(told: Problem, command: string, { find }: Registry, locale: Locale): Problem {
  const { choices, example, final } = told.details
  if (choices?.length) return told
  const look = find(example)
  const entry = find(command) ?? look
  const asks = entry && !entry.changes ? (entry.words(locale).asks ?? []) : []
  const isWhole = final || (look?.examples.includes(example) && !look.changes)
  const samples = isWhole ? [example] : asks.slice(0, mostSamples)
  const questions = samples.length > 0 ? samples : [entry ? `help ${entry.name}` : 'help']
  return told.offering(questions.map(question => ({ label: question, question })))
}
