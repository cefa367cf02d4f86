// What a plain sentence tells of a standard answer: its title, by likeness to those that are stored, and its words.

import { nearest } from '../../ground/nearest.ts'
import { commonplace, contentOf, familiesOfStem, stemsOf } from '../../handbook/search/words.ts'
import { quotesIn } from './quotes.ts'
import { besideDeeds } from './verbs.ts'

/** So much of the words of a title stands in a sentence that means it, and so much more than of any other. */
const enough = 0.5
const margin = 0.15
/** Shorter words are too near to others. */
const shortestSlip = 5

/** What its words are about; of packs and charging most titles are. */
function aboutOf(text: string): readonly string[] {
  const all = contentOf(stemsOf(text))
  const telling = all.filter(one => !familiesOfStem(one).some(family => commonplace.has(family)))
  return telling.length > 0 ? telling : all
}

/** How much of the title stands in the text, 0 to 1. */
function shareOf(title: string, said: readonly string[]): number {
  const all = aboutOf(title)
  const found = all.filter(
    one => said.includes(one) || (one.length >= shortestSlip && nearest(one, said.filter(isLong)) !== undefined),
  )
  return found.length / (all.length || 1)
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

interface ToldAnswer {
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
/** "Our answer on", of which the title is what follows. */
const answerOn =
  /^(?:(?:our|the|a|an|my|new|standard|standing|official|usual|club|fixed|final|pinned) )*(?:answer|reply|card|pin|faq|note|entry|rule)s?\b(?: (?:on|about|for|to|of|regarding))?[ :]*/iu
const onWhat = /\b(?:answer|reply|card|faq|note)s? (?:(?:on|about|regarding) |(?=[^:,.?!]{2,40}: ))/giu
/** What joins the title that something has to the one it gets. */
const becoming =
  /^["']?[ ,]*(?:(?:card|answer|pin|ought|should|shall|must|had|better|will|can|could|is|are|be|to|into|as|called|named|titled|call|rename|retitle|it|now|from|on|today|becomes?|gets|gets the|the(?= (?:new )?(?:title|name)\b)|new|title|name|->|=>|=|:)[ :]+)+/iu
/** What ends a title: a sign, or what is said for politeness. */
const titleEnd =
  /[:;,.?!"]|(?:^| )(?:please|pls|plz|thanks?|thx|ta|cheers|from now on|henceforth|would you|will you|could you|if you|for (?:everyone|everybody|all|us|the club)|so that|because|instead|ok|then|text)(?= |$)/iu
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

/** The title that a text begins with, as it would be written. */
function titleAt(text: string): string | undefined {
  const quote = /^ *["']([^"']+)["']/u.exec(text)?.[1]
  const bare = (text.replace(answerOn, '').trim() || text).replace(/^(?:the|a|an) (?=\p{L})/iu, '')
  const title = (quote ?? bare.slice(0, titleEnd.exec(bare)?.index)).trim().replace(/^'|'$/g, '')
  return /[\p{L}\d]/u.test(title) ? title.charAt(0).toUpperCase() + title.slice(1) : undefined
}

const behind = (plain: string, cue: RegExp): readonly string[] =>
  [...plain.matchAll(cue)].map(({ index, 0: found }) => plain.slice(index + found.length))

const headingIn = (plain: string): string | undefined =>
  [heading, onWhat].flatMap(cue => behind(plain, cue)).flatMap(text => titleAt(text) ?? [])[0]

const wordFor = (title: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\d])${RegExp.escape(title.toLowerCase())}(?![\\p{L}\\d])`, 'u')

export function answerTold(plain: string, titles: readonly string[]): ToldAnswer {
  const quotes = quotesIn(plain)
  const lower = plain.toLowerCase()
  const inWords = titles
    .filter(title => aboutOf(title).length > 0 && wordFor(title).test(lower))
    .toSorted((a, b) => b.length - a.length)[0]
  const verbatim = quotes.map(quote => nearest(quote, titles)).find(title => title !== undefined) ?? inWords
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
  const text = wording.exec(plain)?.[1] ?? (quoted === colon ? quoted : (colon ?? quoted))
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
