// The assistant as a surface sees it: ask, and get a reply; and what a surface must be.

import { randomInt } from 'node:crypto'
import type { FieldPlan, FieldSession } from '../../charging/plan/field.ts'
import { planField } from '../../charging/plan/plan.ts'
import { createInFlight } from '../../ground/in-flight.ts'
import { english, type Locale } from '../../ground/locale.ts'
import type { DecimalMark } from '../../ground/show.ts'
import { createFrames } from '../../language/frames/frame.ts'
import type { Question } from '../../language/sentence/question.ts'
import type { Memory } from '../../memory/memory.ts'
import type { Conversation } from '../asking/around.ts'
import { tellsAny } from '../asking/danger-first.ts'
import { dispatch } from '../asking/dispatch.ts'
import { lateness, saidLate } from '../asking/late.ts'
import { createNoticeboards, type Noticeboards } from '../cards/noticeboard.ts'
import { createTurnstile } from '../cards/turnstile.ts'
import type { Entry } from '../command.ts'
import { createDueLoop, type DueLoop } from '../due/due-loop.ts'
import { forgetting } from '../due/forgetting.ts'
import { givingReminders } from '../due/giving-reminders.ts'
import { createInbox, type Way, type Ways } from '../due/inbox.ts'
import { refreshingCards } from '../due/refreshing-cards.ts'
import type { FaultListener } from '../fault-listener.ts'
import { withClubFacts } from '../layers/club-facts.ts'
import type { KnownRules, Lookup } from '../lookup.ts'
import type { Marking } from '../moderating/marking.ts'
import { createModerating } from '../moderating/moderating.ts'
import type { Occasion, SurfaceName, Turn } from '../occasion.ts'
import { createRegistry, type Registry } from '../registry.ts'
import type { Reply } from '../reply.ts'
import { standingWords } from '../reply.words.ts'
import { type Complete, completerOf, type Suggest } from './completing.ts'
import { keptIn } from './kept.ts'
import { createRepeats } from './repeats.ts'
import { offersOf, picked, talkIn } from './talk.ts'

/** What is due is done by its loop. */
export interface Assistant extends DueLoop, Marking {
  readonly registry: Registry
  /** Always gives a reply, never throws. */
  answer(question: string | Question, occasion: Occasion): Promise<Reply>
  /** To be told of every reply that is out, so that it is not delivered again. Never throws. */
  delivered(occasion: Pick<Occasion, 'asked'>): Promise<void>
  /** What would be answered to somebody else's words, from nothing said before; it changes nothing. Never throws. */
  wouldAnswer(words: string, occasion: Occasion): Promise<Reply>
  readonly complete: Complete
  readonly suggest: Suggest
  /** In which the asker's community is spoken to. Never throws. */
  localeOf(occasion: Pick<Occasion, 'community'>): Promise<Locale>
  /** Whether the house lets this asker have an answer that only they see. */
  mayAskPrivately(occasion: Occasion): Promise<boolean>
  /** Resolves when what answers have set going in the background has ended. */
  settled(): Promise<void>
}

/** A way in for questions: a chat platform, or the room. */
export interface Surface extends Way {
  readonly name: SurfaceName
  /** Resolves when questions can come; rejects where the platform will not have us. */
  start(): Promise<void>
  /** Takes no new questions, finishes the answers in flight, then resolves. */
  stop(): Promise<void>
}

export interface AssistantParts {
  readonly commands: readonly Entry[]
  readonly memory: Memory
  readonly onFault: FaultListener
  /** Absent where no clock is known. */
  readonly clock?: () => Date
  /** Chance where absent. */
  readonly newSeed?: () => number
  /** Reaches nobody where absent. */
  readonly noticeboard?: Noticeboards
  /** For replies that did not go out with their question; none where absent. */
  readonly ways?: Ways
  /** Of every community; none where absent. */
  readonly knownRules?: KnownRules
  /** Done at once, where the question is answered, where absent. */
  readonly plan?: (field: FieldSession, turn: Turn) => Promise<FieldPlan>
  /** English where absent. */
  readonly localeFor?: (mark: DecimalMark) => Locale
}

const anySeed = (): number => randomInt(2 ** 31)

export function createAssistant(parts: AssistantParts): Assistant {
  const { commands, memory, onFault, clock, newSeed = anySeed, noticeboard = createNoticeboards() } = parts
  const { localeFor = english, knownRules = new Map(), plan = async field => planField(field) } = parts
  const { ways = new Map() } = parts
  const registry = createRegistry(commands)
  const standing = createRegistry(commands.filter(({ changes, notStanding }) => !changes && !notStanding))
  const background = createInFlight()
  const frames = createFrames()
  const myTurn = createTurnstile()
  const repeats = createRepeats(registry)
  const timed = () => clock?.() ?? new Date()
  const around = keptIn(memory, {
    registry,
    standing,
    noticeboard,
    knownRules,
    localeFor,
    plan,
    newSeed,
    clock: timed,
    onFault,
    forgetConversations: person => frames.forget(person),
    once: (...of) => inbox.once(...of),
  })
  const { lookup, cards, localeOf, contextFor } = around
  const redo = (question: string, occasion: Occasion) =>
    dispatch(registry, question, () => contextFor(occasion, clock?.()), onFault, localeFor('.'))
  const inbox = createInbox({ memory, cards, ways, clock: timed, onFault, localeOf, redo })
  const refreshing = refreshingCards(cards, memory)
  const rulesOf = (community: string) => knownRules.get(community)
  const localeFirst: Assistant['localeOf'] = ({ community }) =>
    localeOf(community.id).catch(fault => {
      onFault(fault, 'the locale of a community')
      return localeFor('.')
    })
  const moderating = createModerating({ memory, noticeboard, rulesOf, localeOf: localeFirst, clock: timed, onFault })
  const loop = createDueLoop(
    {
      question: inbox,
      reminder: givingReminders(noticeboard),
      ...moderating.doings,
      cards: refreshing,
      forgetting: forgetting(memory),
    },
    { due: memory.due, clock: timed, onFault },
  )

  async function answer(question: string | Question, occasion: Occasion): Promise<Reply> {
    await myTurn(typeof question === 'string' ? () => tellsAny(question, registry.vocabulary) : undefined)
    const earlier = await inbox.before(occasion)
    if (earlier) return earlier
    const [asker, place] = [occasion.asker.id, occasion.place.id]
    const now = clock?.()
    const now_ms = (now ?? new Date()).getTime()
    const conversation = talkIn(frames, asker, place, now_ms)
    const { offered, refused: before } = conversation.talk
    const looked = lookup()
    const asked = typeof question === 'string' ? picked(question, offered) : question
    const ask = (told: Conversation) =>
      dispatch(registry, asked, () => contextFor(occasion, now, told, looked), onFault, localeFor('.'), told)
    const reply =
      typeof asked === 'string' || lateness(occasion, now) !== undefined
        ? await ask(conversation)
        : await repeats({ question: asked, occasion, looked, conversation }, ask)
    const offers = offersOf(reply, conversation.talk)
    const refused = reply.verdict === 'do not charge' ? (reply.understood?.dangers ?? reply.tells ?? []) : undefined
    if (offers.length + offered.length > 0 || refused || before)
      frames.set(asker, place, { offered: offers, refused }, now_ms)
    if (reply.question === undefined) {
      // What is refused for a danger is no answer to keep, nor is the one before it meant any longer.
      if (reply.verdict) frames.set(asker, place, { answered: undefined }, now_ms)
      return reply
    }
    const { changes, notStanding } = registry.get(reply.command)
    // What only offers entries of the handbook answers nothing.
    const answered = /about: \?/.test(reply.question) ? undefined : reply.question
    if (!changes && !notStanding) frames.set(asker, place, { answered }, now_ms)
    if (changes) refreshSoon(occasion.community.id)
    return pointing(reply, occasion, looked)
  }

  function refreshSoon(community: string): void {
    // Its rules may be those that changed: they are known anew, should the memory go away next.
    const work = localeOf(community)
      .then(() => moderating.rulesChanged(community))
      .then(() => refreshing.soon(community, timed))
      .then(
        isDue => (isDue ? loop.strike('cards') : undefined),
        fault => onFault(fault, 'bringing cards up to date'),
      )
    background.add(work)
  }

  /** The reply, with the standard answer to the same question where the community has one. */
  async function pointing(reply: Reply, { community }: Occasion, looked: Lookup): Promise<Reply> {
    try {
      const [same] = await looked.memory.answers.asking(community.id, reply.question ?? '')
      if (!same) return reply
      return { ...reply, seeAlso: standingWords(same, await localeOf(community.id)) }
    } catch (fault) {
      onFault(fault, 'looking for a standard answer')
      return reply
    }
  }

  return {
    ...loop,
    registry,
    markWrong: moderating.markWrong,
    tapped: moderating.tapped,
    answer: async (question, occasion) => {
      const reply = await answer(question, occasion)
      background.add(moderating.heed(occasion, reply).then(isDue => (isDue ? loop.strike('alert') : undefined)))
      const told = withClubFacts(reply, rulesOf(occasion.community.id))
      return occasion.asked ? saidLate(told, occasion, clock?.()) : told
    },
    delivered: inbox.delivered,
    wouldAnswer: async (words, occasion) => {
      const reply = await dispatch(standing, words, () => contextFor(occasion, clock?.()), onFault, localeFor('.'))
      return withClubFacts(reply, rulesOf(occasion.community.id))
    },
    ...completerOf({
      registry,
      memory: () => lookup().memory,
      frameOf: ({ asker, place }) => frames.get(asker.id, place.id, timed().getTime()).frame,
      onFault,
    }),
    localeOf: localeFirst,
    mayAskPrivately: async ({ asker, community }) =>
      asker.moderates || (await lookup().memory.house.rules(community.id)).privateAnswers !== 'moderators',
    settled: background.settled,
  }
}
