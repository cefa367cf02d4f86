// What a question is answered with: rules, names and cards of the club, all on one memory or on a transaction of it.

import type { FieldPlan, FieldSession } from '../../charging/plan/field.ts'
import type { Locale } from '../../ground/locale.ts'
import type { DecimalMark } from '../../ground/show.ts'
import type { HouseRules, Memory } from '../../memory/memory.ts'
import { type Conversation, noConversation } from '../asking/around.ts'
import { dispatch } from '../asking/dispatch.ts'
import { createCards } from '../cards/live-cards.ts'
import { type Noticeboards, surfaceOf } from '../cards/noticeboard.ts'
import type { Cards } from '../cards.ts'
import type { Context } from '../context.ts'
import type { Inbox } from '../due/inbox.ts'
import type { FaultListener } from '../fault-listener.ts'
import { createLookup, type KnownRules, type Lookup } from '../lookup.ts'
import { type Occasion, type Turn, turnOf } from '../occasion.ts'
import { createRegistry, type Registry } from '../registry.ts'
import type { Reply } from '../reply.ts'

interface KeptParts {
  readonly registry: Registry
  /** Of the commands whose answers may stand on cards. */
  readonly standing: Registry
  readonly noticeboard: Noticeboards
  readonly knownRules: KnownRules
  readonly localeFor: (mark: DecimalMark) => Locale
  readonly plan: (field: FieldSession, turn: Turn) => Promise<FieldPlan>
  readonly newSeed: () => number
  readonly clock: () => Date
  readonly forgetConversations: (person: string) => void
  readonly once: Inbox['once']
  readonly onFault: FaultListener
}

export interface Around {
  lookup(): Lookup
  readonly cards: Cards
  localeOf(community: string): Promise<Locale>
  contextFor(occasion: Occasion, now?: Date, conversation?: Conversation, looked?: Lookup): Promise<Context>
}

export function keptIn(memory: Memory, parts: KeptParts): Around {
  const { registry, standing, noticeboard, knownRules, localeFor, plan, newSeed, onFault } = parts
  const lookup = () => createLookup(memory, knownRules, onFault)
  const cards = createCards({ ...memory, noticeboard, clock: parts.clock, onFault, localeOf, ask: askForClub })

  async function localeOf(community: string): Promise<Locale> {
    return localeFor((await lookup().memory.house.rules(community)).decimalMark ?? '.')
  }

  async function contextFor(
    occasion: Occasion,
    now?: Date,
    { talk }: Conversation = noConversation,
    looked = lookup(),
  ): Promise<Context> {
    const house = await looked.memory.house.rules(occasion.community.id)
    const locale = localeFor(house.decimalMark ?? '.')
    return {
      ...occasion,
      house,
      locale,
      show: locale.show,
      dangers: [],
      doubts: [],
      kept: [],
      memory,
      lookup: looked,
      vocabulary: registry.vocabulary,
      cards,
      plan: field => plan(field, turnOf(occasion)),
      forgetConversations: () => parts.forgetConversations(occasion.asker.id),
      newSeed,
      speaksFirst: noticeboard.reachable().includes(occasion.surface),
      ask: (command, question) =>
        dispatch(
          createRegistry([registry.get(command)]),
          question,
          () => contextFor(occasion, now, noConversation, looked),
          onFault,
          localeFor('.'),
          { ...noConversation, talk },
        ),
      once: change =>
        parts.once(occasion, change, async transaction => {
          const on = keptIn(transaction, parts)
          const { lookup, cards, ask } = await on.contextFor(occasion, now, { ...noConversation, talk })
          return { memory: transaction, lookup, cards, ask }
        }),
      afterwards: work => work({ memory, cards }),
      now,
    }
  }

  /** What a card says is the same whoever looks at it, and whenever. */
  function askForClub(community: string, question: string, rules?: HouseRules): Promise<Reply> {
    const looked = lookup()
    const { memory } = looked
    const house = { ...memory.house, rules: async () => rules ?? memory.house.rules(community) }
    const under: Lookup = { ...looked, memory: { ...memory, house } }
    const occasion: Occasion = {
      surface: surfaceOf(community),
      asker: { id: 'nobody', name: 'the club', moderates: false },
      community: { id: community, name: 'the club' },
      place: { id: community, direct: false },
    }
    const contextOf = () => contextFor(occasion, undefined, noConversation, under)
    return dispatch(standing, question, contextOf, onFault, localeFor('.'))
  }

  return { lookup, cards, localeOf, contextFor }
}
