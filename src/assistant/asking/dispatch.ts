// One way in, one way out: a question becomes a reply here, whatever happens on the way.

import { maybe } from '../../charging/situation/doubts.ts'
import type { Locale } from '../../ground/locale.ts'
import { Problem } from '../../ground/problem.ts'
import { bestCover, candidatesOf } from '../../language/candidates/index.ts'
import { dangersIn } from '../../language/dangers/index.ts'
import { changesNothing } from '../../language/reading/told/assumed.words.ts'
import { spansOf, wordsLeft } from '../../language/reading/words-left.ts'
import { idleOpening, withoutOpening } from '../../language/sentence/opening.ts'
import { apart, type Question, withoutTold, writeQuestion } from '../../language/sentence/question.ts'
import { languageOf } from '../../language/tongues/tongue.ts'
import type { Context } from '../context.ts'
import type { FaultListener } from '../fault-listener.ts'
import { withSavedNames } from '../kit/kit-names.ts'
import type { Registry } from '../registry.ts'
import type { Reply } from '../reply.ts'
import { type Around, type Conversation, noConversation } from './around.ts'
import { heardIn, nothingHeard, urgentReply } from './danger-first.ts'
import { asTyped, problemReply } from './failures.ts'
import { answerKnown, faultOf } from './known.ts'
import { notLookedUp } from './lookup.words.ts'
import { answerPlain } from './plain.ts'
import { remember } from './remembering.ts'
import { tappable } from './tappable.ts'
import { inTongue } from './tongue/in-tongue.ts'
import { readWritten } from './written.ts'

/**
 * Answers one question: text to be read, or a command with its options already apart. Never throws: a
 * Problem (the asker can mend it) and a fault (only we can) each become one reply, so that nothing is lost
 * and no stack trace reaches a chat. Before the club is known what goes wrong is said in `unknownClub`.
 */
export async function dispatch(
  registry: Registry,
  asked: string | Question,
  contextOf: () => Promise<Context>,
  onFault: FaultListener,
  unknownClub: Locale,
  conversation: Conversation = noConversation,
): Promise<Reply> {
  let locale = unknownClub
  const typed = asTyped(writtenOf(asked), locale)
  try {
    const heard = heardIn(asked, registry.vocabulary)
    // An emergency waits for no memory.
    const urgent = urgentReply(heard, typed, locale)
    // What an earlier question told is not told anew by asking on.
    const before = new Set<string>(withoutTold(writtenOf(asked)).told)
    const tells = heard.told.map(({ danger }) => danger).filter(danger => !before.has(danger))
    const language = typeof asked === 'string' ? languageOf(asked.slice(idleOpening(asked))) : 'en'
    if (urgent) {
      remember(conversation, writtenOf(asked), heard.told, [])
      return { ...inTongue(urgent, language, heard.told), tells }
    }
    const context = await contextOf()
    locale = context.locale
    const around = { registry, context, typed, language, heard, conversation, onFault }
    const answered = await answerIn(around, asked)
    const reply = tells.length > 0 ? { ...answered, tells } : answered
    // Of a refusal no rule of the club could make a go.
    const isLooser = context.lookup.missed() && reply.verdict !== 'do not charge'
    return isLooser ? { ...reply, cautions: [notLookedUp(locale), ...reply.cautions] } : reply
  } catch (error) {
    if (error instanceof Problem) return problemReply('', typed, tappable(error, '', registry, locale), locale)
    return faultOf(onFault, error, registry, '', typed, locale)
  }
}

const writtenOf = (asked: string | Question): string => (typeof asked === 'string' ? asked : writeQuestion(asked))

async function answerIn(around: Around, asked: string | Question): Promise<Reply> {
  const { registry, context } = around
  const written = typeof asked === 'string' ? writtenIn(asked, registry) : { question: asked, spoken: '' }
  if (!written) return inTongue(await answerOpened(around, String(asked)), around.language, around.heard.told)
  const { question, used } = await withSavedNames(written.question, registry, context.lookup.memory.kit, context)
  const { notUsed, told: before = [] } = written.question
  const again = apart(before)
  // What stands in notation is judged as values; only what is told in words beside it is heard.
  const { spoken } = written
  const { told, suspected } = spoken === '' ? nothingHeard : dangersIn(spoken)
  const stays = [...again.dangers.map(danger => ({ danger, typed: danger })), ...told]
  const { kept } = remember(around.conversation, writeQuestion({ ...question, told: [] }), stays, used)
  return answerKnown(around, {
    question,
    used,
    assumed: notUsed ? [changesNothing(notUsed)] : [],
    dangers: [...again.dangers, ...told.map(({ danger }) => danger)],
    doubts: [...again.doubts, ...suspected.map(maybe), ...(isAllKnown(spoken) ? [] : ['notUnderstood' as const])],
    kept,
    understanding: undefined,
  })
}

const writtenIn = (text: string, { vocabulary }: Registry) =>
  readWritten(text, vocabulary) ?? readWritten(withoutOpening(text), vocabulary)

/** What is asked, behind words that only open it; values stand where they were typed. */
async function answerOpened(around: Around, text: string): Promise<Reply> {
  const idle = idleOpening(text)
  if (idle === 0) return answerPlain(around, text)
  const moved = <S extends { readonly start: number; readonly end: number }>(by: number, spans: readonly S[]) =>
    spans.map(span => ({ ...span, start: Math.max(0, span.start + by), end: Math.max(0, span.end + by) }))
  const heard = { ...around.heard, told: moved(-idle, around.heard.told) }
  const reply = await answerPlain({ ...around, heard }, text.slice(idle))
  const { understood } = reply
  return understood ? { ...reply, understood: { ...understood, values: moved(idle, understood.values) } } : reply
}

/** Words between a command and its details are values or known, else they may matter. */
const isAllKnown = (spoken: string): boolean => wordsLeft(spoken, spansOf(bestCover(candidatesOf(spoken)))).length === 0
