// What a question for the handbook comes to: its entry, or what lies nearest; and what of it is to be judged.

import { type Danger, emergencies } from '../charging/situation/dangers.ts'
import { handbook } from './entries.ts'
import type { HandbookEntry } from './entry.ts'
import { asksLeave } from './leave.ts'
import { entriesFor, type FoundEntry } from './search.ts'

export interface AskedOfHandbook {
  /** Absent where the handbook has none on it, or where it is not clear which of the nearest is asked for. */
  readonly entry: HandbookEntry | undefined
  /** Other entries that it may have meant, the nearest first, at most three. */
  readonly nearest: readonly HandbookEntry[]
  /** It is asked in very nearly its own words. */
  readonly isClose: boolean
  /** Found nearly as surely: it may as well be what is asked. */
  readonly rival: HandbookEntry | undefined
  /** 0 where it has none, 1 where it may be meant, above where it surely is: at most a third more. */
  readonly sureness: number
  /** What somebody asks leave for in nearly such words, and emergencies however they are asked about. */
  readonly dangers: readonly Danger[]
}

const most = 3
const fewWords = 8
/** So like is what is asked to a question of an entry where nine of ten mean just that. */
const [closely, veryClosely] = [0.45, 0.55]

/** Stands for a question that the handbook has nothing on, before the titles that lie near. */
const nothing = '?'
const between = '; '

const nothingFound: AskedOfHandbook = {
  entry: undefined,
  isClose: false,
  rival: undefined,
  nearest: [],
  sureness: 0,
  dangers: [],
}

export function askedOf(text: string): AskedOfHandbook {
  const [first, ...titles] = text.split(between)
  if (first === nothing) {
    const nearest = titles.flatMap(title => handbook.find(entry => entry.title === title) ?? [])
    return { ...nothingFound, nearest }
  }
  // Of smoke and injuries the dangers' own reader tells; here they are only what is asked in nearly such words.
  const found = entriesFor(text).filter(({ entry, nearest }) => nearest >= closely || !isEmergency(entry))
  const [best, ...others] = found
  const isFound = best !== undefined && best.share >= maybe
  if (!isFound || !isClear(best, text)) {
    const near = found.slice(0, most).filter(({ share }) => share >= hardly)
    return { ...nothingFound, nearest: near.map(one => one.entry), sureness: isFound ? 1 : 0 }
  }
  const { entry, share, nearest: like } = best
  const near = others.filter(other => other.share >= hardly).map(other => other.entry)
  const nearest = [...new Set([...near, ...besides(entry)])].slice(0, most)
  const { dangers = [] } = entry
  const judged = (asksLeave(text) && like >= closely) || isEmergency(entry) ? dangers : []
  const [second] = others
  const rival = second && second.share >= share * asSurely ? second.entry : undefined
  const sureness = Math.max(1, share / surely)
  return { entry, isClose: like >= veryClosely, rival, nearest, sureness, dangers: judged }
}

/** Where the second is so near, it is the one that was asked for in two of five. */
const asSurely = 0.4

/** Of the answers above it one of seventeen is wrong; below it the nearest are asked about. */
const clearly = 0.5
/** Below it the handbook has likely nothing on that. */
const maybe = 0.3
/** Below it an entry is not even asked about. */
const hardly = 0.08
const surely = 0.75

/** It stands out, or it is asked in very nearly its own words; an emergency may be told in very few: "it hisses". */
const isClear = ({ share, nearest, entry }: FoundEntry, text: string): boolean =>
  share >= clearly || nearest >= veryClosely || (isEmergency(entry) && text.trim().split(/\s+/).length <= fewWords)

/** What the handbook has on the first of these, nearest to the words that told it. */
export const entryOn = ([danger]: readonly Danger[], text: string): HandbookEntry | undefined =>
  danger && [...entriesFor(text).map(({ entry }) => entry), ...handbook].find(one => one.dangers?.includes(danger))

const isEmergency = ({ dangers = [] }: HandbookEntry): boolean => dangers.some(danger => emergencies.includes(danger))

type Worded = Pick<AskedOfHandbook, 'entry' | 'nearest' | 'dangers'>

/** The same question as the handbook words it: what a person wrote need not be kept to ask it again. */
export function wordedBy({ entry, nearest, dangers }: Worded): string {
  if (!entry) return [nothing, ...nearest.map(({ title }) => title)].join(between)
  return dangers.length > 0 ? (entry.questions.find(asksLeave) ?? entry.title) : entry.title
}

function besides(entry: HandbookEntry): readonly HandbookEntry[] {
  const at = handbook.indexOf(entry)
  return [handbook[at + 1], handbook[at - 1]].filter(one => one !== undefined)
}

/** Whether those words stand for a question that the handbook has nothing on. */
export const isNothing = (worded: string): boolean => worded.split(between)[0] === nothing
