// Replies that speak of a danger alone: an emergency, and a danger in a question that is not understood otherwise.

import { judge } from '../../charging/envelope/judge.ts'
import { reasonsOf, settle } from '../../charging/envelope/settle.ts'
import { type Danger, dangers, isEmergency } from '../../charging/situation/dangers.ts'
import { type Around as DangersAround, situationOf } from '../../charging/situation/situation.ts'
import type { Locale } from '../../ground/locale.ts'
import type { Problem } from '../../ground/problem.ts'
import type { Text } from '../../ground/text.ts'
import { type DangersIn, dangersIn } from '../../language/dangers/index.ts'
import type { Understanding } from '../../language/reading/meant.ts'
import type { Question } from '../../language/sentence/question.ts'
import { spokenOf } from '../../language/sentence/typed.ts'
import type { Vocabulary } from '../../language/sentence/vocabulary.ts'
import { completeReply, inLines, type Reply } from '../reply.ts'
import { cautionsOf, leadOf, refusalOf, sourcesOf } from '../verdict.words.ts'

/** A question that comes as a command with its options tells nothing in words. */
export const nothingHeard: DangersIn = { told: [], suspected: [] }
export const heardIn = (asked: string | Question, vocabulary: Vocabulary): DangersIn =>
  typeof asked === 'string' ? dangersIn(spokenOf(asked, vocabulary)) : nothingHeard
export const tellsAny = (asked: string | Question, vocabulary: Vocabulary): boolean =>
  heardIn(asked, vocabulary).told.length > 0

/** Smoke, fire or an injury: needs no memory, and is answered before anything else is looked at. */
export function urgentReply({ told: found }: DangersIn, readAs: Text, locale: Locale): Reply | undefined {
  if (!found.some(isEmergency)) return undefined
  return dangerReply({ dangers: found.map(({ danger }) => danger) }, readAs, undefined, locale)
}

export const tellsEmergency = (words: string): boolean => dangersIn(words).told.some(isEmergency)

const refuses = (danger: Danger): boolean => dangers[danger].weight === 'refuse'
/** Of what forbids to use a pack, an emergency among it. */
export const tellsDanger = (words: string): boolean => dangersIn(words).told.some(({ danger }) => refuses(danger))

/** What forbids to use a pack, of the word that no value could be read from: "3S 720 LiHV swollen". */
export function dangersAt(problem: Problem): readonly Danger[] {
  const { token = '' } = problem.details
  if (!/^\p{L}[\p{L} -]*$/u.test(token)) return []
  const told = dangersIn(`my pack is ${token}`).told.map(({ danger }) => danger)
  return told.filter(refuses)
}

/** What is told of those dangers, where nothing else of the question is answered. */
export function dangerReply(
  { dangers = [], doubts = [], kept = [] }: Partial<Omit<DangersAround, 'house'>>,
  readAs: Text,
  understanding: Understanding | undefined,
  locale: Locale,
): Reply {
  const around = { house: {}, dangers, doubts, kept }
  const settled = settle([judge({ ...situationOf({ act: 'look' }, around), kept })], [])
  const lines = settled.verdict === 'do not charge' ? refusalOf(settled, locale) : leadOf(settled, locale)
  const reply = completeReply(
    { command: 'handbook', readAs },
    {
      verdict: settled.verdict,
      ...inLines(lines),
      leads: lines.length,
      working: sourcesOf(settled, locale),
      cautions: cautionsOf(settled, locale),
      reasons: reasonsOf(settled),
    },
    locale,
  )
  return { ...reply, understood: understanding && { ...understanding, dangers } }
}

/** "My wren is on the sofa": a name is nobody's, until it is known to be a pack's. */
export function withThoseOf(named: DangersIn['told'], heard: DangersIn, text: string): DangersIn {
  const others = named.filter(({ danger }) => heard.told.every(one => one.danger !== danger))
  const told = others.map(({ danger }) => ({ danger, start: 0, end: text.length, typed: text }))
  return {
    told: [...heard.told, ...told],
    suspected: heard.suspected.filter(one => told.every(({ danger }) => danger !== one)),
  }
}
