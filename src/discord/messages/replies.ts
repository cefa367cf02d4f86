// A reply to a message, sent and noted.

import { type APIMessage, type REST, type RESTPostAPIChannelMessageJSONBody, Routes } from 'discord.js'
import type { Occasion } from '../../assistant/occasion.ts'
import type { AnsweredMemory } from '../../memory/memory.ts'
import type { Log } from '../../program/log.ts'
import { describeFault, onceMore } from '../platform/faults.ts'
import { idOf } from '../platform/occasion.ts'
import type { Composed } from './compose.ts'

/** The message that asked. */
export interface MessageWay {
  readonly channel: string
  readonly message: string
}

export interface ReplyParts {
  readonly rest: REST
  readonly answered: AnsweredMemory
  readonly log: Log
}

/** Sends once however often it is called: for the same nonce Discord gives back the message that it already has. */
export type Replying = (occasion: Occasion, way: MessageWay, answer: Composed) => Promise<void>

export function createReplying({ rest, answered, log }: ReplyParts): Replying {
  return async ({ place, asker }, { channel, message }, { reply, message: answer, files }) => {
    const body: RESTPostAPIChannelMessageJSONBody = {
      ...answer,
      message_reference: { message_id: message, fail_if_not_exists: false },
      nonce: message,
      enforce_nonce: true,
    }
    const sending = () => rest.post(Routes.channelMessages(channel), { body, files: [...files] })
    const { id } = (await onceMore(sending)) as APIMessage
    if (reply.question === undefined) return
    const given = {
      place: place.id,
      askedBy: asker.id,
      questionMessage: idOf(message),
      answerMessage: idOf(id),
      question: reply.question,
      answeredAt: new Date(),
    }
    await answered.record(given).catch(error => log.error({ error: describeFault(error) }, 'an answer was not noted'))
  }
}
