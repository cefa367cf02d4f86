// What a question for the handbook comes to: its entry, or what lies nearest; and what of it is to be judged.

import { type Danger, emergencies } from '../charging/situation/dangers.ts'
import { handbook } from './entries.ts'
import type { HandbookEntry } from './entry.ts'
import { asksLeave } from './leave.ts'
import { entriesFor, type FoundEntry, leastScore } from './search.ts'

export interface AskedOfHandbook {
  /** Absent where the handbook has none on it. */
  readonly entry: HandbookEntry | undefined
  /** Where it has none: the one that lies nearest, if that stands out from the others. */
  readonly guess: HandbookEntry | undefined
  /** Other entries that it may have meant, the nearest first, at most three. */
  readonly nearest: readonly HandbookEntry[]
  /** It is asked in very nearly its own words. */
  readonly isClose: boolean
  /** Found nearly as surely: it may as well be what is asked. */
  readonly rival: HandbookEntry | undefined
  /** How far above the least that will do it was found; 0 where it has none. */
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
  guess: undefined,
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
  if (!best || best.score < least) {
    const near = found.slice(0, most).filter(({ score }) => score >= leastScore / 2)
    return { ...nothingFound, guess: standingOut(found), nearest: near.map(one => one.entry) }
  }
  const { entry, score, nearest: like } = best
  const near = others.filter(other => other.score >= score / 2).map(other => other.entry)
  const nearest = [...new Set([...near, ...besides(entry)])].slice(0, most)
  const { dangers = [] } = entry
  const judged = (asksLeave(text) && like >= closely) || isEmergency(entry) ? dangers : []
  const [second] = others
  const rival = second && second.score >= score * asSurely ? second.entry : undefined
  const sureness = Math.max(1, score / surely)
  return { entry, guess: undefined, isClose: like >= veryClosely, rival, nearest, sureness, dangers: judged }
}

/** Where the second is so near, it is the one that was asked for in one of four. */
const asSurely = 0.8

/** Of people's questions that were too unlike any entry, seven of eight of those that passed were meant so. */
const [leastOfGuess, standsOut] = [0.6 * leastScore, 1.25]

function standingOut([first, second]: readonly FoundEntry[]): HandbookEntry | undefined {
  if (!first || first.score < leastOfGuess || first.score < standsOut * (second?.score ?? 0)) return undefined
  return first.entry
}

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
