// One way in, one way out: a question becomes a reply here, whatever happens on the way.

import { randomUUID } from 'node:crypto'
import type { Danger } from '../../charging/situation/dangers.ts'
import type { Doubt } from '../../charging/situation/doubts.ts'
import type { Locale, Said } from '../../ground/locale.ts'
import { Problem } from '../../ground/problem.ts'
import { joined, type Text } from '../../ground/text.ts'
import type { Frame } from '../../language/conversation/frame.ts'
import { type DangersIn, dangersIn } from '../../language/dangers/index.ts'
import { changesNothing } from '../../language/reading/assumed.words.ts'
import type { Understanding } from '../../language/reading/meant.ts'
import { apart, type Question, writeQuestion } from '../../language/sentence/question.ts'
import { spokenOf } from '../../language/sentence/typed.ts'
import type { KitEntry } from '../../memory/memory.ts'
import type { Context } from '../context.ts'
import type { FaultListener } from '../fault-listener.ts'
import { withNames, withSavedNames } from '../kit/kit-names.ts'
import type { Registry } from '../registry.ts'
import { completeReply, type Reply } from '../reply.ts'
import { alternatives } from './alternatives.ts'
import { askedBack, choicesFor, unclear } from './ask-back.ts'
import { dangerReply, dangersAt, urgentReply } from './danger-first.ts'
import { asTyped, faultReply, problemReply } from './failures.ts'
import { understand } from './inputs.ts'
import { hear } from './plainly.ts'
import { toldWith, withTold } from './told-with.ts'
import { readWritten } from './written.ts'

/** What was said before, and where what is said now is kept. */
export interface Conversation {
  readonly frame: Frame | undefined
  keep(frame: Frame): void
}

/** For whoever asks by themselves: nothing was said before. */
export const noConversation: Conversation = { frame: undefined, keep: () => {} }

/** A question with all that is known of it beyond its details. */
interface Known {
  readonly question: Question
  readonly used: readonly KitEntry[]
  readonly assumed: readonly Said[]
  readonly dangers: readonly Danger[]
  readonly doubts: readonly Doubt[]
  readonly understanding: Understanding | undefined
}

/** A question that comes as a command with its options tells nothing in words. */
const nothingHeard: DangersIn = { told: [], suspected: false }

/** All that stands around a question while it is answered. */
interface Around {
  readonly registry: Registry
  readonly context: Context
  /** The question as it was typed. */
  readonly typed: Text
  /** The dangers that its words tell. */
  readonly heard: DangersIn
  readonly conversation: Conversation
  readonly onFault: FaultListener
}

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
  const typed = asTyped(typeof asked === 'string' ? asked : writeQuestion(asked), locale)
  try {
    const heard = typeof asked === 'string' ? dangersIn(spokenOf(asked, registry.vocabulary)) : nothingHeard
    // An emergency waits for no memory.
    const urgent = urgentReply(heard, typed, locale)
    if (urgent) return urgent
    const context = await contextOf()
    locale = context.locale
    return await answerIn({ registry, context, typed, heard, conversation, onFault }, asked)
  } catch (error) {
    if (error instanceof Problem) return problemReply('', typed, error, locale)
    return told(onFault, error, '', typed, locale)
  }
}

function told(onFault: FaultListener, error: unknown, command: string, readAs: Text, locale: Locale): Reply {
  const reference = randomUUID().slice(0, 8)
  onFault(error, reference)
  return faultReply(command, readAs, reference, locale)
}

async function answerIn(around: Around, asked: string | Question): Promise<Reply> {
  const { registry, context } = around
  const written = typeof asked === 'string' ? readWritten(asked, registry.vocabulary) : { question: asked, spoken: '' }
  if (!written) return answerPlain(around, String(asked))
  const { question, used } = await withSavedNames(written.question, registry, context.memory.kit, context)
  const { notUsed, told: before = [] } = written.question
  const kept = apart(before)
  // What stands in notation is judged as values; only what is told in words beside it is heard.
  const { told, suspected } = dangersIn(written.spoken)
  return answerKnown(around, {
    question,
    used,
    assumed: notUsed ? [changesNothing(notUsed)] : [],
    dangers: [...kept.dangers, ...told.map(({ danger }) => danger)],
    doubts: [...kept.doubts, ...(suspected ? ['suspected' as const] : [])],
    understanding: undefined,
  })
}

async function answerPlain(around: Around, text: string): Promise<Reply> {
  const { registry, context, typed, conversation } = around
  const { locale } = context
  const { meant, dangers, suspected, about, used } = await hear(
    text,
    around.heard,
    registry,
    context,
    conversation.frame,
  )
  const { understanding } = meant
  const plain = { used, dangers, understanding, assumed: [], doubts: suspected ? (['suspected'] as const) : [] }
  const inHandbook = { ...plain, question: { command: 'handbook', options: { about: about ?? text } } }
  const unanswered = (command: string, problem: Problem): Reply => ({
    ...problemReply(command, typed, problem, locale),
    understood: understanding,
  })
  switch (meant.kind) {
    case 'question':
      return answerKnown(around, { ...plain, ...meant, doubts: [...plain.doubts, ...meant.doubts] })
    case 'smalltalk':
      return answerKnown(around, { ...plain, question: { command: 'hello', options: {} } })
  }
  if (dangers.length > 0) return dangerReply(dangers, typed, understanding, locale)
  switch (meant.kind) {
    case 'handbook':
      return answerKnown(around, inHandbook)
    case 'asks back': {
      // What somebody wants to know in words is not asked for in figures.
      if (meant.told === undefined && about !== undefined) return answerKnown(around, inHandbook)
      const command = registry.get(meant.question.command)
      const choices = choicesFor(meant, command)
      const { question, missing, told: pack } = meant
      conversation.keep({ question, pending: { missing, choices, told: pack }, doubts: [] })
      return unanswered(command.name, askedBack(meant, command, choices, locale))
    }
    case 'unclear':
    case 'notours':
      return about === undefined ? unanswered('', unclear(meant, registry)) : answerKnown(around, inHandbook)
  }
}

async function answerKnown(around: Around, known: Known): Promise<Reply> {
  const { registry, conversation, onFault } = around
  const { question, used, assumed, dangers, doubts, understanding } = known
  const context = { ...around.context, dangers, doubts }
  const { locale } = context
  const { command } = question
  let readAs = around.typed
  try {
    const definition = registry.get(command)
    const recalled = await definition.recall?.(question.options, used, context)
    const understood = understand(definition, { ...recalled?.options, ...question.options }, locale)
    readAs = withNames(understood.readAs, used, locale)
    const answer = await definition.answer(understood.inputs, context)
    const others = doubts.includes('chemistryAssumed')
      ? await alternatives(definition, understood.question, answer, context)
      : []
    const alsoAssumed = new Set([
      ...assumed.map(one => one(locale)),
      ...(recalled?.assumed ?? []),
      ...(answer.assumed ?? []),
    ])
    const said = new Set([...understood.assumed.map(one => one(locale)), ...alsoAssumed])
    const lines = [...(answer.lines ?? [answer.headline]), ...others] as unknown as Reply['lines']
    const told = toldWith(command, [...dangers, ...doubts], registry)
    conversation.keep({ question: understood.question, pending: undefined, doubts })
    const reply = completeReply(
      { command, readAs, question: writeQuestion({ ...understood.question, told }) },
      {
        ...answer,
        headline: joined(lines),
        lines,
        assumed: [...said],
        alsoAssumed: [...alsoAssumed],
        followUps: answer.followUps?.map(next => ({ ...next, question: withTold(next.question, told, registry) })),
      },
      locale,
    )
    return understanding ? { ...reply, understood: { ...understanding, dangers } } : reply
  } catch (error) {
    if (!(error instanceof Problem)) return told(onFault, error, command, readAs, locale)
    // A name that is to be kept tells nothing of a pack.
    const heard = registry.find(command)?.changes ? dangers : [...dangers, ...dangersAt(error)]
    if (heard.length > 0) return dangerReply(heard, readAs, understanding, locale)
    return { ...problemReply(command, readAs, error, locale), understood: understanding }
  }
}
