// What a question for the handbook comes to: its entry, or what lies nearest; and what of it is to be judged.

import { type Danger, emergencies } from '../charging/situation/dangers.ts'
import { handbook } from './entries.ts'
import type { HandbookEntry } from './entry.ts'
import { asksLeave } from './leave.ts'
import { entriesFor, type FoundEntry, leastScore } from './search.ts'

export interface AskedOfHandbook {
  /** Absent where the handbook has none on it, or where it is not clear which of the nearest is asked for. */
  readonly entry: HandbookEntry | undefined
  /** Other entries that it may have meant, the nearest first, at most three. */
  readonly nearest: readonly HandbookEntry[]
  /** It is asked in very nearly its own words. */
  readonly isClose: boolean
  /** Found nearly as surely: it may as well be what is asked. */
  readonly rival: HandbookEntry | undefined
  /** How far above the least that will do one was found; 0 where it has none. */
  readonly sureness: number
  /** What somebody asks leave for in nearly such words, and emergencies however they are asked about. */
  readonly dangers: readonly Danger[]
}

const most = 3
const fewWords = 8
/** So like is what is asked to a question of an entry where nine of ten mean just that. */
const [closely, veryClosely] = [0.45, 0.55]
/** So high a score is well above the least that will do. */
const surely = 6.5

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
  // An emergency may be told in very few words: "it hisses".
  const isShort = text.trim().split(/\s+/).length <= fewWords
  const least = best && isEmergency(best.entry) && isShort ? leastScore / 3 : leastScore
  const [second] = others
  const isFound = best !== undefined && best.score >= least
  if (!isFound || !isClear(best, second)) {
    const near = found.slice(0, most).filter(({ score }) => score >= leastOfNearest)
    return { ...nothingFound, nearest: near.map(one => one.entry), sureness: isFound ? 1 : 0 }
  }
  const { entry, score, nearest: like } = best
  const near = others.filter(other => other.score >= score / 2).map(other => other.entry)
  const nearest = [...new Set([...near, ...besides(entry)])].slice(0, most)
  const { dangers = [] } = entry
  const judged = (asksLeave(text) && like >= closely) || isEmergency(entry) ? dangers : []
  const rival = second && second.score >= score * asSurely ? second.entry : undefined
  const sureness = Math.max(1, score / surely)
  return { entry, isClose: like >= veryClosely, rival, nearest, sureness, dangers: judged }
}

/** Where the second is so near, it is the one that was asked for in one of five. */
const asSurely = 0.75

/** Below it the nearest have nothing to do with what is asked. */
const leastOfNearest = 0.6 * leastScore

/** Of the answers that this leaves one of ten is wrong, of all that are found one of five. */
const clearly = 8

/** It stands out from the second, the more the less surely it was found; or it is asked in very nearly its own words. */
const isClear = ({ score, nearest, entry }: FoundEntry, second: FoundEntry | undefined): boolean =>
  nearest >= veryClosely || isEmergency(entry) || score ** 2 >= clearly * (second?.score ?? 0)

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
