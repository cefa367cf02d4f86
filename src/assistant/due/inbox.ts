// What a question changes is done once, however often it comes and whatever breaks: it is stored under its own id before it
// is acted on, and what it changes, the reply and the mark that it was done are one transaction. The reply waits there until
// its surface has delivered it.

import type { Locale } from '../../ground/locale.ts'
import type { NewDue } from '../../memory/due.ts'
import type { Memory } from '../../memory/memory.ts'
import { faultOfMemory } from '../../memory/memory-error.ts'
import { asTyped, problemReply } from '../asking/failures.ts'
import { saidLate } from '../asking/late.ts'
import type { Cards } from '../cards.ts'
import type { After, Change, Kept } from '../context.ts'
import type { FaultListener } from '../fault-listener.ts'
import { lookedUp } from '../lookup.ts'
import type { Occasion, SurfaceName } from '../occasion.ts'
import type { Reply } from '../reply.ts'
import type { Doing } from './due-loop.ts'
import { doneBefore } from './inbox.words.ts'

/** How a surface delivers a reply later than it was asked, maybe in another process. */
export interface Way {
  ready(): boolean
  /** Once however often it is called, as far as the platform lets us. Rejects where it is worth another try. */
  deliver(occasion: Occasion, reply: Reply): Promise<'delivered' | { readonly closed: string }>
}

/** Surfaces add theirs. */
export type Ways = Map<SurfaceName, Way>

interface InboxParts {
  readonly memory: Memory
  readonly ways: Ways
  readonly clock: () => Date
  readonly onFault: FaultListener
  readonly cards: Cards
  readonly localeOf: (community: string) => Promise<Locale>
  /** Answers a question in notation, with nothing said before it. */
  readonly redo: (question: string, occasion: Occasion) => Promise<Reply>
}

/** What a command uses, on a transaction. */
type KeptIn = (transaction: Memory) => Promise<Kept>

export interface Inbox extends Doing {
  once(occasion: Occasion, change: Change, keptIn: KeptIn): Promise<Reply>
  /** The reply to what came before our start, where it was accepted then. */
  before(occasion: Occasion): Promise<Reply | undefined>
  /** The reply to it is out. Never throws. */
  delivered(occasion: Pick<Occasion, 'asked'>): Promise<void>
}

/** As JSON has it: a question that waits or, once it was acted on, its reply. */
interface Waiting {
  readonly occasion: Occasion
  readonly question?: string
  readonly reply?: Omit<Reply, 'locale'>
}

/** So long whoever took a question is left alone with it. */
const patience_s = 30

export function createInbox({ memory, cards, ways, clock, onFault, localeOf, redo }: InboxParts): Inbox {
  const startedAt_ms = clock().getTime()
  /** Replies on their way by whoever asked for them. */
  const given = new Map<string, Reply>()
  /** Delivered, though it could not be noted yet. */
  const unmarked = new Set<string>()

  function rowOf(occasion: Occasion, told: Omit<Waiting, 'occasion'>): NewDue {
    const { asked, asker, place } = occasion
    const inSeconds = (s: number) => new Date(clock().getTime() + s * 1000)
    return {
      id: asked?.id ?? '',
      kind: 'question',
      person: asker.id,
      place: place.id,
      body: { ...told, occasion },
      dueAt: inSeconds(patience_s),
      latestAt: inSeconds(asked?.openFor_s ?? 0),
    }
  }

  const store = ({ due }: Memory, occasion: Occasion, { locale: _, ...reply }: Reply) =>
    due.put(rowOf(occasion, { reply }))

  /** Of all who try at once the first acts; the others get its reply. */
  async function actIn(kept: Memory, occasion: Occasion, locale: Locale, act: () => Promise<Reply>): Promise<Reply> {
    const there = await kept.due.find(occasion.asked?.id ?? '')
    if (!there || there.isDone) return alreadyDone(locale)
    const before = revived(there.body as Waiting, locale)
    if (before) return before
    const reply = await act()
    await store(kept, occasion, reply)
    return reply
  }

  async function once(
    occasion: Occasion,
    { question, isApart, locale, work, failed }: Change,
    keptIn: KeptIn,
  ): Promise<Reply> {
    const { asked } = occasion
    const after: After[] = []
    const afterwards = async (one: After) => void after.push(one)
    let isStored = false
    try {
      if (!asked) return await work({})
      await memory.due.add(rowOf(occasion, { question }))
      isStored = true
      const reply = await (isApart
        ? actIn(memory, occasion, locale, () => work({}))
        : memory.together(kept =>
            actIn(kept, occasion, locale, async () => {
              // What is asked about oneself is not about this very question.
              await kept.due.done(asked.id, clock())
              return work({ ...(await keptIn(kept)), afterwards })
            }),
          ))
      given.set(asked.id, reply)
      for (const one of after)
        await one({ memory, cards }).catch((fault: unknown) => onFault(fault, 'what follows a change'))
      return reply
    } catch (error) {
      const reply = failed(error)
      if (!asked || !isStored) return reply
      // Told otherwise, it must not be done later.
      given.set(asked.id, reply)
      if (faultOfMemory(error) === undefined)
        await store(memory, occasion, reply).catch(fault => onFault(fault, 'storing a reply'))
      return reply
    }
  }

  return {
    once,
    async before(occasion) {
      const { asked } = occasion
      if (!asked || asked.at_ms >= startedAt_ms) return undefined
      const there = await lookedUp(memory.due.find(asked.id))
      if (!there) return undefined
      const locale = await localeOf(occasion.community.id)
      if (there.isDone) return alreadyDone(locale)
      const waiting = there.body as Waiting
      return revived(waiting, locale) ?? redo(waiting.question ?? '', waiting.occasion)
    },
    async delivered({ asked }) {
      if (!asked || !given.delete(asked.id)) return
      try {
        await memory.due.done(asked.id, clock())
      } catch (fault) {
        unmarked.add(asked.id)
        onFault(fault, 'marking what was delivered')
      }
    },
    surfaces: () => [...ways].filter(([, way]) => way.ready()).map(([surface]) => surface),
    async work({ id, body }) {
      if (unmarked.delete(id)) return undefined
      const waiting = body as Waiting
      const { occasion, question = '' } = waiting
      const locale = await localeOf(occasion.community.id)
      const reply = given.get(id) ?? revived(waiting, locale) ?? (await redo(question, occasion))
      const outcome = await ways.get(occasion.surface)?.deliver(occasion, saidLate(reply, occasion, clock()))
      given.delete(id)
      return typeof outcome === 'object' ? { givenUp: outcome.closed } : undefined
    },
    late: ({ id }) => {
      given.delete(id)
      onFault(new Error(id), 'an answer could not be delivered in time')
    },
  }
}

const revived = ({ reply }: Waiting, locale: Locale): Reply | undefined =>
  reply && ({ ...reply, locale } as unknown as Reply)
const alreadyDone = (locale: Locale): Reply => problemReply('', asTyped('', locale), doneBefore, locale)
