// Words of a question as the search sees them: without endings, with the family of words that mean nearly the same.

import { remembered } from '../../ground/remembered.ts'
import families from './families.json' with { type: 'json' }

/** As many words as the handbook has, and more. */
const mostRemembered = 20_000
/** Packs and amounts are all alike, but volts, C figures and single cells are asked about by their number. */
export const stem = remembered(mostRemembered, stemAnew)

/** Words that any question may hold. They find nothing, but they tell questions of like form from others. */
const common: ReadonlySet<string> = new Set(
  [
    'a an the this that these those my your our his her its their i me we us you he she it they them one',
    'somebody someone people what whats which who where when why how is are am was were be been do does did done',
    'doing can could may might must should shall will would have has had of for to in on at by with from and or but',
    'if then than as so too not no yes ok okay please just only really any some there here with about into out up',
    'difference between versus vs compared plain simple simply explain worth really true correct believe claim reckon',
    'down help need want get gets got use used using now put take tell mean means meaning good bad normal allowed possible happen usually actually exactly',
  ]
    .join(' ')
    .split(' ')
    .map(stem),
)

export const isCommon = (stem: string): boolean => common.has(stem) || stem === aNumber

const measures: ReadonlySet<string> = new Set(['long', 'much', 'many', 'far', 'often'].map(stem))

/** A word, or a pair of words, that tells only what kind of question it is. */
export const isOfForm = (term: string): boolean => term.split(' ').every(one => isCommon(one) || measures.has(one))

export const isAmount = (stem: string): boolean => stem === aPack || stem === aNumber

const aPack = '#s'
const aNumber = '#'

const family: ReadonlyMap<string, readonly string[]> = familiesOf(families)

function familiesOf(lines: readonly string[]): Map<string, string[]> {
  const found = new Map<string, string[]>()
  for (const [index, line] of lines.entries()) {
    for (const one of new Set(line.split(' ').map(stem))) {
      found.set(one, [...(found.get(one) ?? []), `~${index}`])
    }
  }
  return found
}

/** Of packs, of charging, of amps and of volts: the first families of the list; and the charger, which is in none. */
export const commonplace: ReadonlySet<string> = new Set(['~0', '~1', '~2', '~3', stem('charger')])

/** The families that a stem belongs to, marked so that they are no word. */
export const familiesOfStem = (of: string): readonly string[] => family.get(of) ?? []

export const isFamily = (term: string): boolean => term.startsWith('~')

/** In lower case, without accents and apostrophes; numbers keep the unit that is written to them. */
export const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replace(/[\p{M}'’]/gu, '')
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/(\d) (?=(?:s|c|v|volts?|m?ah?)\b)/g, '$1')
    .match(/\d+(?:\.\d+)?[a-z]*|[a-z]+/g) ?? []

/** C figures above it are those of discharge. */
const mostCharge_C = 5

function stemAnew(word: string): string {
  if (/^\d+s(?:\d+p)?$/.test(word)) return word === '1s' ? word : aPack
  if (/^\d+(?:\.\d+)?c$/.test(word)) return word === '1c' ? word : Number.parseFloat(word) > mostCharge_C ? '#C' : '#c'
  if (/^\d+p$/.test(word)) return '#p'
  // Three digits and more are a capacity, or minutes.
  if (/^\d/.test(word)) return /^\d{0,2}(?:\.\d+)?(?:v|volts?)?$/.test(word) ? String(Number.parseFloat(word)) : aNumber
  return word
    .replace(/(?<=..)ies$/, 'y')
    .replace(/(?<=...)(?:ing|ed|es|s)$/, '')
    .replace(/(?<=..)(.)\1$/, '$1')
    .replace(/(?<=...)e$/, '')
}

export const stemsOf = (text: string): readonly string[] => wordsOf(text).map(stem)

/** What says what a text is about, each once. */
export const contentOf = (stems: readonly string[]): readonly string[] =>
  [...new Set(stems)].filter(one => !isCommon(one))
