// What a reaction to an answer of ours does, or a word in reply to it: opens a layer, closes it, or asks what it suggests.

import type { MatrixEvent, Room } from 'matrix-js-sdk'
import { mayAskAgain } from '../../assistant/running/after-edit.ts'
import { idOf, matrixIdOf, occasionOf } from '../client/occasion.ts'
import type { Tap } from '../messages/reactions.ts'
import { type Answering, type AnsweringParts, askedBy } from './answering.ts'

/** False where there is no such answer. */
export type Follow = (event: MatrixEvent, room: Room, answerId: string | undefined, tap: Tap) => Promise<boolean>

export function createFollow(
  answering: Answering,
  { client, assistant }: Pick<AnsweringParts, 'client' | 'assistant'>,
): Follow {
  const { ask, dealtWith, give, meant, replace, suggestedBelow } = answering

  return async (event, room, answerId, tap) => {
    if (answerId === undefined) return false
    const earlier = await meant.answerAt(answerId)
    const sender = event.getSender() ?? ''
    if (tap.kind === 'wrong') {
      const isMarked = await assistant.markWrong(occasionOf(client, room, sender), idOf(answerId))
      if (isMarked && earlier) await dealtWith(event, earlier)
      return isMarked
    }
    if (tap.kind === 'ask') {
      const question = suggestedBelow(answerId)[tap.index]
      if (question === undefined) return false
      const asked = askedBy(client, event, room, answerId)
      await give(asked, room, await ask(question, room, sender, asked))
      if (earlier) await dealtWith(event, earlier, 'tap')
      return true
    }
    if (!earlier || earlier.place !== idOf(room.roomId)) return false
    if (mayAskAgain(earlier.question, assistant.registry)) {
      const reply = await ask(earlier.question, room, matrixIdOf(earlier.askedBy))
      await replace(event, room, earlier, reply, tap.kind === 'layer' ? tap.layer : undefined)
      await dealtWith(event, earlier)
    }
    return true
  }
}
