// The standard answer that a sentence speaks of, and what is said before and behind it.

import { contentOf, stemsOf } from '../../handbook/search/words.ts'
import { aboutOf, isIn, verbatimIn } from './titles.ts'

export interface SpokenOf {
  /** Of one that is stored. */
  readonly title: string | undefined
  /** What it is called in the sentence. */
  readonly called: string
  /** Whatever it is about, an answer is meant: it is called so, or "the one about …". */
  readonly isAnswer: boolean
  readonly head: string
  readonly tail: string
}

const [sure, loose] = ['answers?|reply|replies|faq', 'one|cards?|notes?|notice|entry|pin|text']
/** Behind it begins what is said of it. */
const end =
  /(?=[,.;:?!]|$| (?:should|could|shall|must|may|might|can|would|will|is|are|has|have|had|ought|needs?|now|says?|reads?|so|to|as|from|instead|please|pls|in|here|and|it|any|with|into|->|=>|wrong|text|new)(?:[ ,.;:?!]|$))/u
const inQuotes = /"[^"]+"|'(?:[^']|(?<=\p{L})'(?=\p{L}))+'/u
const question = /(?:wh\w+|how) [^,.;:?!]+?(?=[,.;:?!]|$| (?:should|shall|must|now) )/u
const onWhat = new RegExp(
  String.raw`\b(?:(?:the|our|that|this|an?) )?(?:(?:\w+ )?(${sure})(?: ready)?|(?:${loose})) (?:on|about|for|to|of|regarding|titled|called|named)(?: the (?:title|name|question))? (${inQuotes.source}|${question.source}|[^,.;:?!]+?${end.source})`,
  'iu',
)
const words = String.raw`((?:(?!(?:of|to|on|for|about|as|that|this|the|our|any|an?) )[\p{L}\d'-]+ ){1,4}?)(?:(${sure})|(?:${loose}))\b(?! (?:on|about|for|of) )`
const ofWhat = new RegExp(String.raw`(?:\b(?:the|our|that|this) |^\W*)${words}`, 'giu')
const determiner = /\b(?:the|our|that|this) $/iu
const aboutOne = /\bone (?:about|regarding) \D+$/iu
const pronoun = /\b(?:its?|(?:that|this) (?:one|answer|reply|note|card|entry))\b/iu

/** `last` is the title of the one that was spoken of before. */
export function spokenOf(plain: string, titles: readonly string[], last: string | undefined): readonly SpokenOf[] {
  const named = (called: string, isAnswer: boolean, start: number, end: number): SpokenOf => ({
    title: titles.find(title => title === called) ?? titleCalled(called, titles),
    called,
    isAnswer,
    head: plain.slice(0, start).replace(determiner, ''),
    tail: plain.slice(end),
  })
  const found: SpokenOf[] = []
  const about = onWhat.exec(plain)
  if (about) {
    const [whole, isAnswer, called = ''] = about
    found.push(named(called, isAnswer !== undefined || aboutOne.test(whole), about.index, about.index + whole.length))
  }
  for (const { 0: whole, 1: called = '', 2: isAnswer, index } of plain.matchAll(ofWhat))
    found.push(named(called, isAnswer !== undefined, index + whole.lastIndexOf(called), index + whole.length))
  const verbatim = verbatimIn(plain, titles)
  if (verbatim !== undefined) {
    const at = plain.toLowerCase().indexOf(verbatim.toLowerCase())
    found.push(named(verbatim, false, at, at + verbatim.length))
  }
  const it = pronoun.exec(plain)
  if (it && last !== undefined && titles.includes(last))
    found.push(named(last, false, it.index, it.index + it[0].length))
  return found
}

/** The only one, or the shortest, that has all words that it is called by. */
export function titleCalled(called: string, titles: readonly string[]): string | undefined {
  const said = contentOf(stemsOf(called))
  const [best, next] = titles
    .filter(title => said.length > 0 && said.every(word => isIn(word, stemsOf(title))))
    .map(title => ({ title, more: aboutOf(title).length }))
    .toSorted((a, b) => a.more - b.more)
  return best && best.more !== next?.more ? best.title : undefined
}
