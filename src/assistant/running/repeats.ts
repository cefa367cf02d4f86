// What many ask is computed once: a command replies the same to everybody who gives it the same values under the same rules.
// Each asker's conversation goes on as if it had been computed for them.

import { withoutOldest } from '../../ground/without-oldest.ts'
import type { Frame } from '../../language/frames/frame.ts'
import type { Question } from '../../language/sentence/question.ts'
import type { Conversation } from '../asking/around.ts'
import type { Lookup } from '../lookup.ts'
import type { Occasion } from '../occasion.ts'
import type { Registry } from '../registry.ts'
import type { Reply } from '../reply.ts'

interface Asking {
  readonly question: Question
  readonly occasion: Occasion
  readonly looked: Lookup
  readonly conversation: Conversation
}

/** The reply given before; else what `answer` replies, which speaks to the conversation that it is handed. */
export type Repeats = (asking: Asking, answer: (conversation: Conversation) => Promise<Reply>) => Promise<Reply>

/** Of 11 kB each. */
const mostKept = 5000

export function createRepeats(registry: Registry): Repeats {
  const given = new Map<string, { readonly reply: Reply; readonly kept: readonly Frame[] }>()

  return async ({ question, occasion, looked, conversation }, answer) => {
    const { changes, lists, tellsTime } = registry.find(question.command) ?? { lists: true }
    const isTold = question.told !== undefined || conversation.talk.told.length > 0
    if (changes || lists || tellsTime || isTold) return answer(conversation)
    const house = await looked.memory.house.rules(occasion.community.id)
    const { surface, place, asker } = occasion
    const key = JSON.stringify([question, house, surface, place.direct, asker.moderates])
    const before = looked.missed() ? undefined : given.get(key)
    if (before) {
      before.kept.forEach(conversation.keep)
      return before.reply
    }
    const kept: Frame[] = []
    const keep = (frame: Frame) => {
      kept.push(frame)
      conversation.keep(frame)
    }
    const reply = await answer({ ...conversation, keep })
    const isOfValues = !looked.missed() && !looked.isPersonal() && !reply.problem && reply.charts.length === 0
    if (isOfValues) given.set(key, { reply, kept })
    withoutOldest(given, mostKept)
    return reply
  }
}
