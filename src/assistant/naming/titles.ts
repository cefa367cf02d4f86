// The titles of standard answers that a text may mean, by likeness.

import { nearest } from '../../ground/nearest.ts'
import { commonplace, contentOf, familiesOfStem, stemsOf } from '../../handbook/search/words.ts'
import type { StandardAnswer } from '../../memory/standard-answer.ts'

/** So much of the words of a title stands in a sentence that means it, and so much more than of any other. */
const enough = 0.5
const margin = 0.15
/** Shorter words are too near to others. */
const shortestSlip = 5

/** What its words are about; of packs and charging most titles are. */
export function aboutOf(text: string): readonly string[] {
  const all = contentOf(stemsOf(text))
  const telling = all.filter(one => !familiesOfStem(one).some(family => commonplace.has(family)))
  return telling.length > 0 ? telling : all
}

/** How much of the title stands in the text, 0 to 1. */
function shareOf(title: string, said: readonly string[]): number {
  const all = aboutOf(title)
  return all.filter(one => isIn(one, said)).length / (all.length || 1)
}

/** As it is, or with a slip. */
export const isIn = (stem: string, said: readonly string[]): boolean =>
  said.includes(stem) || (isLong(stem) && nearest(stem, said.filter(isLong)) !== undefined)

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

/** The longest that stands in the text in its very words. */
export function verbatimIn(plain: string, titles: readonly string[]): string | undefined {
  const lower = plain.toLowerCase()
  return titles
    .filter(title => aboutOf(title).length > 0 && wordFor(title).test(lower))
    .toSorted((a, b) => b.length - a.length)[0]
}

const wordFor = (title: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\d])${RegExp.escape(title.toLowerCase())}(?![\\p{L}\\d])`, 'u')

/** Words that an answer and a sentence share: fewer may be chance. */
const fewest = 2

/** The title of the one answer whose words the sentence takes up: "the notice about the last member". */
export function titleHolding(text: string, answers: readonly Pick<StandardAnswer, 'title' | 'content'>[]) {
  const said = stemsOf(text)
  const sharedBy = (content: string) => new Set(aboutOf(content).filter(one => isIn(one, said))).size
  const [best, next] = answers
    .map(({ title, content }) => ({ title, shared: sharedBy(content) }))
    .toSorted((a, b) => b.shared - a.shared)
  return best && best.shared >= fewest && best.shared > (next?.shared ?? 0) ? best.title : undefined
}
