// What a plain sentence tells of a standard answer: its title, by likeness to those that are stored, and its words.

import { nearest } from '../../ground/nearest.ts'
import { contentOf, stemsOf } from '../../handbook/search/words.ts'
import { quotesIn } from './quotes.ts'

/** So much of the words of a title stands in a sentence that means it, and so much more than of any other. */
const enough = 0.5
const margin = 0.15
/** Shorter words are too near to others. */
const shortestSlip = 5

const aboutOf = (text: string): readonly string[] => contentOf(stemsOf(text))

/** How much of the title stands in the text, 0 to 1. */
function shareOf(title: string, said: readonly string[]): number {
  const wanted = aboutOf(title)
  const all = wanted.length > 0 ? wanted : stemsOf(title)
  const found = all.filter(
    one => said.includes(one) || (one.length >= shortestSlip && nearest(one, said.filter(isLong)) !== undefined),
  )
  return found.length / all.length
}

const isLong = (word: string): boolean => word.length >= shortestSlip

/** The stored titles most like the text first, and the one that is meant where that is clear. */
export function titlesLike(text: string, titles: readonly string[]) {
  const said = stemsOf(text)
  const ranked = titles
    .map(title => ({ title, share: shareOf(title, said) }))
    .toSorted((a, b) => b.share - a.share || b.title.length - a.title.length)
  const [best, next] = ranked
  const isClear = best && best.share >= enough && (!next || best.share - next.share >= margin || contains(best, next))
  return { meant: isClear ? best.title : undefined, ranked: ranked.map(({ title }) => title) }
}

/** "Cold packs at the field" told in full is not "Cold packs". */
const contains = (one: { title: string; share: number }, other: { title: string; share: number }): boolean =>
  one.share === 1 && other.share === 1 && aboutOf(other.title).every(word => aboutOf(one.title).includes(word))

export interface ToldAnswer {
  /** One that is stored. */
  readonly title: string | undefined
  readonly newTitle: string | undefined
  readonly text: string | undefined
}

const heading = /\b(?:title[d]?|headed|called|call it|under|named?)(?: is| of)?[ :,]+(?!["'])([^:;,."]+)/iu
/** Behind words that are quoted. */
const headingAs = /["'] (?:as|under) ([^:;,."]+)/iu
const wording = /\b(?:text|say|says|saying|put|wording|words?)\b ?: ?(.+)$/iu

export function answerTold(plain: string, titles: readonly string[]): ToldAnswer {
  const quotes = quotesIn(plain)
  const quotedTitle = quotes.map(quote => nearest(quote, titles)).find(title => title !== undefined)
  const title = quotedTitle ?? titlesLike(plain, titles).meant
  const others = quotes.filter(quote => quote !== title && (!title || nearest(quote, [title]) === undefined))
  const [longest] = others.toSorted((a, b) => b.length - a.length)
  const headed = (heading.exec(plain) ?? (longest ? headingAs.exec(plain) : null))?.[1]
    ?.replace(/,? text$/iu, '')
    .trim()
  const colon = /(?<=[\p{L}\d"']): (.+)$/u.exec(plain)?.[1]
  const quoted = others.length > 1 || headed ? longest : undefined
  const text = wording.exec(plain)?.[1] ?? (quoted === colon ? quoted : (colon ?? quoted))
  const newTitle = headed ?? others.find(quote => quote !== text)
  return { title, newTitle, text: text?.trim() || (title && newTitle !== longest ? longest : undefined) }
}
