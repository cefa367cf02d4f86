// The dangers that a text tells, heard as one of a conversation: a car that feeds is no leaving, and who leaves leaves a charge.

import type { Danger } from '../../charging/situation/dangers.ts'
import { bestCover, candidatesOf } from '../candidates/index.ts'
import { type DangersIn, dangersIn } from '../dangers/index.ts'
import { opensAsking } from './asks-nothing.ts'
import type { Talk } from './frame.ts'

const speaker = /\b(?:i|we|i'?m|i'?ll|we'?re)\b/i

/** "From the car instead", behind a question, tells what feeds, and of nobody who is away. */
export function besidesSource(heard: DangersIn, text: string, { frame }: Talk): DangersIn {
  const source = frame && bestCover(candidatesOf(text)).find(({ kind }) => kind === 'source')
  const isAway = (danger: Danger) => danger === 'unattended'
  if (!source || speaker.test(text) || ![...heard.told.map(({ danger }) => danger), ...heard.suspected].some(isAway))
    return heard
  const rest = dangersIn(`${text.slice(0, source.start)}a supply${text.slice(source.end)}`)
  if (rest.told.some(({ danger }) => isAway(danger))) return heard
  return {
    told: heard.told.filter(({ danger }) => !isAway(danger)),
    suspected: heard.suspected.filter(danger => !isAway(danger) || rest.suspected.includes(danger)),
  }
}

const goodNight = /\bbed ?time\b|\b(?:to|into|for) bed\b|\b(?:good ?)?night\b(?! flights?\b)|\bsleep/i

/** Behind a question about a charge, what is only said of a leaving or of sleep is said of that charge. */
export function inCharge(heard: DangersIn, text: string, { frame }: Talk): DangersIn {
  const charges = frame && (frame.question.options.pack ?? frame.question.options.packs) !== undefined
  if (!charges || opensAsking.test(text) || heard.told.some(({ danger }) => danger === 'unattended')) return heard
  const [told] = heard.suspected.includes('unattended')
    ? dangersIn(`my pack is charging, ${text}`).told.filter(({ danger }) => danger === 'unattended')
    : []
  const others = heard.suspected.filter(danger => danger !== 'unattended')
  if (told) return { told: [...heard.told, { ...told, typed: text }], suspected: others }
  return goodNight.test(text) ? { ...heard, suspected: [...others, 'unattended'] } : heard
}
