// The last question of an asker in a place, for half an hour: what a short answer amends.

import type { Danger } from '../../charging/situation/dangers.ts'
import type { Doubt } from '../../charging/situation/doubts.ts'
import type { Missing } from '../reading/fit.ts'
import type { PackTold } from '../reading/told/told-pack.ts'
import type { Question } from '../sentence/question.ts'
import type { StayingDanger } from './staying.ts'

interface Pending {
  readonly missing: Missing
  /** What was offered, in notation. */
  readonly choices: readonly string[]
  readonly told: PackTold | undefined
}

/** A figure of an answer, in base units. */
interface FigureSaid {
  readonly key: string
  readonly value: number
  readonly unit: string
}

export interface Frame {
  readonly question: Question
  /** What was asked back, where something was, with the choices that were offered. */
  readonly pending: Pending | undefined
  /** What was only assumed of the pack. */
  readonly doubts: readonly Doubt[]
  /** The names in the kit of the packs that it is about. */
  readonly names: readonly string[]
  /** The words that it was asked in. */
  readonly typed?: string
  /** What its answer named. */
  readonly figures?: readonly FigureSaid[]
  /** The question that was asked before it, and so on. */
  readonly before?: Frame | undefined
  /** It is to be answered once somebody has said yes. */
  readonly waits?: boolean
}

/** The words of a question and of those before it. */
export const typedIn = ({ typed = '', before }: Frame): string => (before ? `${typedIn(before)}\n${typed}` : typed)

/** What was said: the last question with details, what the handbook was asked since, and dangers that stay. */
export interface Talk {
  readonly frame: Frame | undefined
  readonly about: string | undefined
  readonly told: readonly StayingDanger[]
  /** The last question that was answered, in notation, where its answer can be kept. */
  readonly answered?: string | undefined
  /** Questions that the last reply offered, by the number or the words that it showed. */
  readonly offered: readonly Offer[]
  /** Where the last reply refused: the dangers that it spoke of. */
  readonly refused?: readonly Danger[] | undefined
}

export const noTalk: Talk = { frame: undefined, about: undefined, told: [], offered: [] }

export interface Offer {
  readonly as: string
  readonly question: string
}

export interface Frames {
  get(asker: string, place: string, now_ms: number): Talk
  set(asker: string, place: string, talk: Partial<Talk>, now_ms: number): void
  /** All of one person's. */
  forget(asker: string): void
}

const keeps_ms = 30 * 60_000
/** So many at most: the oldest go first. */
const mostFrames = 20_000

/** So many questions back can be asked again. */
const mostBefore = 5

/** The chain of questions behind one: what was only asked back, and the same once more, is none of its own. */
function beforeIt(frame: Frame, last: Frame | undefined): Frame | undefined {
  const isSame = last && JSON.stringify(last.question) === JSON.stringify(frame.question)
  return isSame || last?.pending ? last.before : shortened(last, mostBefore)
}

const shortened = (frame: Frame | undefined, most: number): Frame | undefined =>
  most === 0 || !frame ? undefined : { ...frame, before: shortened(frame.before, most - 1) }

/** Kept in the working memory alone, and no longer than their half hour. */
export function createFrames(): Frames {
  const frames = new Map<string, { readonly talk: Talk; readonly asker: string; readonly at: number }>()
  const key = (asker: string, place: string) => `${asker}\n${place}`
  const drop = (now_ms: number) => {
    for (const [id, { at }] of frames) {
      if (now_ms - at <= keeps_ms && frames.size <= mostFrames) break
      frames.delete(id)
    }
  }
  const get = (asker: string, place: string, now_ms: number): Talk => {
    drop(now_ms)
    return frames.get(key(asker, place))?.talk ?? noTalk
  }
  return {
    get,
    set: (asker, place, said, now_ms) => {
      const last = get(asker, place, now_ms)
      const frame = said.frame && { ...said.frame, before: beforeIt(said.frame, last.frame) }
      const talk = { ...last, ...said, ...(frame && { frame }) }
      // Set anew it stands last: the map is in the order of age.
      frames.delete(key(asker, place))
      frames.set(key(asker, place), { talk, asker, at: now_ms })
    },
    forget: asker => {
      for (const [id, kept] of frames) if (kept.asker === asker) frames.delete(id)
    },
  }
}
