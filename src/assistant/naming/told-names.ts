// The names that a plain sentence gives: of something saved, and of something that is to be saved.

import { type Candidate, candidatesOf } from '../../language/candidates/index.ts'
import { spansOf, wordsLeft } from '../../language/reading/words-left.ts'
import { isNameShaped, nameForm } from '../kit/kit-name.ts'
import { isQuestionWord } from '../kit/question-words.ts'
import { joints, nameAt, quotesIn } from './quotes.ts'

interface ToldNames {
  readonly name: string | undefined
  /** The same where it was said to be a name, not only a word that nothing else accounts for. */
  readonly given: string | undefined
  /** Of what is called otherwise from now on. */
  readonly to: string | undefined
}

/** Stands for a value while the words around it are looked at. */
const aValue = '\u25a1'

/** What something is called by, with the name behind it. */
const naming =
  /\b(?:as(?! (?:i|we|you|he|she|it|they|people) )|called|named|call (?:it|them|this|that|him|her)|under(?: the)? name|under|(?:with|by) the name(?: of)?|name(?: it)?)[ :]+/giu
const callingIt = new RegExp(`\\bcall .*?(?:\\bone|\\bpack|\\bbattery|\\bcharger|\\bsupply|${aValue}) `, 'giu')
const isCalled = new RegExp(`([^${aValue}]+?) ?[=:]+ ?(?:(?:a|an|my|the) )?${aValue}`, 'iu')
const saving = new RegExp(`\\b(?:save|store|add|keep|enter|register)[ :]+([^${aValue},.]+?)[,:]? ${aValue}`, 'iu')
/** What joins the name that something has to the one it gets. */
const becoming =
  /^(?:'s)?[ ,]*(?:(?:should|shall|must|had|better|will|can|is|are|be|to|into|as|called|named|call|rename|now|from|on|henceforth|today|becomes?|gets|the|new|name|->|=>|=)[ :]+)+/iu
const renaming = /\b(?:rename|change|make|call) (.+?) (?:to|into|from now on) /iu

/** `saved` are the saved names in it, as typed. */
export function namesTold(plain: string, values: readonly Candidate[], saved: readonly string[]): ToldNames {
  const masked = maskedIn(plain, values)
  const [known] = saved
  const own = quotesIn(plain).map(nameForm).filter(isNameShaped)
  const at = known === undefined ? -1 : plain.toLowerCase().indexOf(known)
  const behind = at < 0 ? undefined : plain.slice(at + (known ?? '').length)
  const renamed = renaming.exec(plain)
  const before = known ?? (renamed ? nameAt(renamed[1] ?? '') : undefined)
  const rest = behind ?? (renamed ? plain.slice(renamed.index + renamed[0].length) : becomes(plain))
  const to = own.find(name => name !== known) ?? (rest && nameAt(rest.replace(becoming, '')))
  const given = before ?? own[0] ?? nameGiven(masked)
  const name =
    given ?? strangeIn(plain, values) ?? nameGiven(plain) ?? (values.some(isCapacity) ? spokenOf(plain) : undefined)
  return { name, given: quotedName(plain) ?? given ?? nameGiven(plain), to: to === name ? undefined : to }
}

/** What stands between quotes and is no value is the name, whether or not it can be one. */
const quotedName = (plain: string): string | undefined =>
  quotesIn(plain)
    .map(nameForm)
    .find(one => !candidatesOf(one).some(({ start, end }) => end - start === one.length))

const maskedIn = (plain: string, values: readonly Candidate[]): string =>
  values
    .filter(({ kind, end }) => kind !== 'count' && kind !== 'number' && !isNamed(plain.slice(end)))
    .toReversed()
    .reduce((text, { start, end }) => text.slice(0, start) + aValue + text.slice(end), plain)

/** What it stands for follows: "storage = 3S 2200 LiPo". */
const isNamed = (behind: string): boolean => /^ ?=/.test(behind)

/** "Magpie" of "save the red one as magpie", "magpie = 3S 2200 LiPo", "save magpie 3S 2200 LiPo". */
function nameGiven(masked: string): string | undefined {
  const given = [naming, callingIt].flatMap(cue =>
    [...masked.matchAll(cue)].map(({ index, 0: found }) => masked.slice(index + found.length)),
  )
  const before = [saving, isCalled].flatMap(pattern => lastWords(pattern.exec(masked)?.[1] ?? ''))
  return [...given, ...before].map(nameAt).find(name => name !== undefined)
}

/** "Save: Kestrel" of which Kestrel alone is the name. */
const lastWords = (text: string): readonly string[] => {
  const words = text
    .replace(/^.*[:,]/u, '')
    .replace(/^\W*(?:please |pls )?(?:save|store|add|keep|enter|log(?:ged)?|charged|note|record|put) /iu, '')
    .trim()
  return words === '' ? [] : [words]
}

/** Behind the first words that join a name to another. */
function becomes(plain: string): string | undefined {
  const found = /(?:^|\s)(?:should be|shall be|must be|is called|to be called|is now|becomes) /iu.exec(plain)
  return found ? plain.slice(found.index + found[0].length) : undefined
}

/** Charges are noted with what went in. */
const isCapacity = ({ kind, pack }: Candidate): boolean => kind === 'capacity' || pack?.capacity_Ah !== undefined

/** "Charged sparrow today": a word that no question is asked with, where the name of a pack would stand. */
function spokenOf(plain: string): string | undefined {
  const words = [...plain.matchAll(charging)].map(([, word = '']) => nameForm(word))
  return words.find(word => !isQuestionWord(word) && !joints.has(word) && isNameShaped(word))
}
const charging =
  /\b(?:charged|log|logged|into|in|for|of|that|record|recorded|noted?)(?: (?:my|our|the|a|that|charge|of|for))* (?=\p{L})([\p{L}\d'-]+)/giu

/** A word that nothing else accounts for, where a name would stand: first of all, or behind "of", "into" and the like. */
function strangeIn(plain: string, values: readonly Candidate[]): string | undefined {
  const isPlace = (at: number) =>
    /(?:^|[.!?:]|\b(?:of|for|from|into|in|on|with|has|have|show|the|log|remove|delete|pack)) *$/i.test(
      plain.slice(0, at),
    )
  const word = wordsLeft(plain, spansOf(values)).find(one => isPlace(plain.indexOf(one)))
  return word === undefined
    ? undefined
    : nameAt(
        plain.slice(plain.indexOf(word), plain.indexOf(word) + word.length + 3).replace(/(?<=\S{2}) (?!\d+$).*$/, ''),
      )
}
