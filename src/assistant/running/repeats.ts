// What many ask is computed once a minute: a command replies the same to everybody who gives it the same values under the
// same rules. Each asker's conversation goes on as if it had been computed for them.

import type { Frame } from '../../language/frames/frame.ts'
import type { Question } from '../../language/sentence/question.ts'
import type { Conversation } from '../asking/around.ts'
import type { Lookup } from '../lookup.ts'
import type { Occasion } from '../occasion.ts'
import type { Registry } from '../registry.ts'
import type { Reply } from '../reply.ts'

export interface Asking {
  readonly question: Question
  readonly occasion: Occasion
  readonly looked: Lookup
  readonly conversation: Conversation
  readonly now_ms: number
}

/** The reply given before; else what `answer` replies, which speaks to the conversation that it is handed. */
export type Repeats = (asking: Asking, answer: (conversation: Conversation) => Promise<Reply>) => Promise<Reply>

const mostKept = 10_000
/** Clocks in replies show no less. */
const minute_ms = 60_000

export function createRepeats(registry: Registry): Repeats {
  const given = new Map<string, { readonly reply: Reply; readonly kept: readonly Frame[] }>()
  let minute = 0

  return async ({ question, occasion, looked, conversation, now_ms }, answer) => {
    const { changes, lists } = registry.find(question.command) ?? { lists: true }
    const isTold = question.told !== undefined || conversation.talk.told.length > 0
    if (changes || lists || isTold) return answer(conversation)
    const house = await looked.memory.house.rules(occasion.community.id)
    const key = JSON.stringify([question, house, occasion.surface])
    if (Math.floor(now_ms / minute_ms) !== minute) given.clear()
    minute = Math.floor(now_ms / minute_ms)
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
    const isOfValues = !looked.missed() && !looked.isPersonal() && !reply.problem
    if (isOfValues && given.size < mostKept) given.set(key, { reply, kept })
    return reply
  }
}
