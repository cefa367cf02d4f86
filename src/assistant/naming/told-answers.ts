// What a plain sentence tells of a standard answer: its title, and its words.

import { nearest } from '../../ground/nearest.ts'
import { quotesIn } from './quotes.ts'
import { titleAt } from './title-at.ts'
import { titlesLike, verbatimIn } from './titles.ts'
import { wordsIn } from './told-whole.ts'
import { besideDeeds } from './verbs.ts'

export interface ToldAnswer {
  /** One that is stored. */
  readonly title: string | undefined
  /** It stands in the sentence in its very words, or nearly so in quotes. */
  readonly isVerbatim: boolean
  /** What it is to bear from now on. */
  readonly newTitle: string | undefined
  /** What something new is to bear. */
  readonly heading: string | undefined
  readonly text: string | undefined
}

/** Behind it stands a title. */
const heading =
  /(?:\b(?:(?:call|title|name) (?:it|this|that|them)|as|under|titled?|headed|named?|called?)\b|->|=)(?: is| of| the name| the title| the heading)*[ :]+/giu
const onWhat = /\b(?:answer|reply|card|faq|note)s? (?:(?:on|about|regarding) |(?=[^:,.?!]{2,40}: ))/giu
/** What joins the title that something has to the one it gets. */
const becoming =
  /^["']?[ ,]*(?:(?:card|answer|pin|ought|should|shall|must|had|better|will|can|could|is|are|be|to|into|as|called|named|titled|call|rename|retitle|it|now|from|on|today|becomes?|gets|gets the|the(?= (?:new )?(?:title|name)\b)|new|title|name|->|=>|=|:)[ :]+)+/iu
const wording = /\b(?:text|say|says|saying|put|wording|words?)\b ?: ?(.+)$/iu
const says = /\b(?:says?|reads?|saying)\b:? (.+)$/iu
/** What is told to come instead are words, and no title. */
const saysText = /\b(?:re(?:word|writ|wrote)\w*|says?|text|wording|content)\b/iu
/** Words that somebody wants to stand among the rules or on the board. */
const rules = [
  /\b(?:write|put|add|note|enter|record|make|have|hang|new|rule)\b(?! (?:it|that|this)\b(?!.*:))[^:]*\b(?:rules?|rule ?book|(?:notice ?)?board)\b[^:]{0,20}?(?:(?<!\btitled?|\bnamed?|\bheading|\bcalled):|\bthat\b|(?<=for the \w+),) ?(.+)$/iu,
  /\b(?:rules?|board)\b (?:should|shall|must|has to|ought to) (?:say|read|have)\W+(.+)$/iu,
  /^\W*(?:(?:a|new|club|house|our) )*rule\b(?! \d)[^:]{0,30}: (.+)$/iu,
]
export const ruleIn = (plain: string): string | undefined =>
  rules.map(one => one.exec(plain)?.[1]).find(text => text !== undefined)

const behind = (plain: string, cue: RegExp): readonly string[] =>
  [...plain.matchAll(cue)].map(({ index, 0: found }) => plain.slice(index + found.length))

const headingIn = (plain: string): string | undefined =>
  [heading, onWhat].flatMap(cue => behind(plain, cue)).flatMap(text => titleAt(text) ?? [])[0]

export function answerTold(plain: string, titles: readonly string[]): ToldAnswer {
  const quotes = quotesIn(plain)
  const lower = plain.toLowerCase()
  const verbatim =
    quotes.map(quote => nearest(quote, titles)).find(title => title !== undefined) ?? verbatimIn(plain, titles)
  const title = verbatim ?? titlesLike(besideDeeds(plain), titles).meant
  const others = quotes.filter(quote => quote !== title && (!title || nearest(quote, [title]) === undefined))
  const colon = ruleIn(plain) ?? /(?<=[\p{L}\d"'])(?<!\b(?:titled?|named?|heading|called)): (.+)$/u.exec(plain)?.[1]
  const at = verbatim === undefined ? -1 : lower.lastIndexOf(verbatim.toLowerCase())
  const tail = at < 0 ? plain : plain.slice(at + (verbatim ?? '').length)
  const told = others[0] ?? becomes(tail, at >= 0)
  const renamed = title === undefined || saysText.test(plain) ? undefined : told
  const headed = headingIn(plain) ?? (verbatim === undefined ? others[0] : undefined)
  const [longest] = others.toSorted((a, b) => b.length - a.length)
  const quoted =
    others.length > 1 || [renamed, headed].some(one => one !== undefined && one !== longest) ? longest : undefined
  const text = wordsIn(wording.exec(plain)?.[1] ?? (quoted === colon ? quoted : (colon ?? quoted)))
  const [words, last] = [text?.toLowerCase(), renamed?.toLowerCase() ?? '']
  const isOnlyWords = renamed === undefined || words?.startsWith(last)
  // "Sand bucket: rename to fire bucket".
  const isName = !isOnlyWords && words?.endsWith(last)
  return {
    title,
    isVerbatim: verbatim !== undefined,
    newTitle: isOnlyWords ? undefined : renamed,
    heading: headed === text ? undefined : headed,
    text:
      (isName ? undefined : text?.trim()) ??
      (title !== undefined && saysText.test(plain) ? (says.exec(tail)?.[1] ?? told) : undefined),
  }
}

/** The title behind the one that stands before it, or behind what joins them. */
function becomes(tail: string, isBehind: boolean): string | undefined {
  if (isBehind) return becoming.test(tail) ? titleAt(tail.replace(becoming, '')) : undefined
  const joined = / (?:to|into|as|->|=>) (?=[^ ])/iu.exec(tail)
  return joined ? titleAt(tail.slice(joined.index + joined[0].length)) : undefined
}
