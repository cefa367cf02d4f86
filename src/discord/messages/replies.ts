// Answers to messages: sent and noted, put in the place of earlier ones, taken away.

import { type APIMessage, type RawFile, type REST, type RESTPostAPIChannelMessageJSONBody, Routes } from 'discord.js'
import type { Occasion } from '../../assistant/occasion.ts'
import type { Reply } from '../../assistant/reply.ts'
import type { AnsweredMemory, AnsweredQuestion } from '../../memory/memory.ts'
import type { Log } from '../../program/log.ts'
import { describeFault, isGone, onceMore } from '../platform/faults.ts'
import { idOf, nonceOf, snowflake } from '../platform/occasion.ts'
import type { Composed } from './compose.ts'
import type { Rendered } from './render.ts'

/** The message that asked, or the edit of it. */
export interface MessageWay {
  readonly channel: string
  readonly message: string
  readonly edited_ms?: number | undefined
}

export interface RepliesParts {
  readonly rest: REST
  readonly answered: AnsweredMemory
  readonly log: Log
}

export interface Replies {
  /** Sends once however often it is called: for the same nonce Discord gives back the message that it already has. */
  give(occasion: Occasion, way: MessageWay, answer: Composed): Promise<void>
  /** One that people have deleted stays so. */
  replace(earlier: AnsweredQuestion, answer: Composed): Promise<void>
  /** The same with words that answer nothing. */
  reword(earlier: AnsweredQuestion, words: Rendered): Promise<void>
  takeAway(earlier: AnsweredQuestion): Promise<void>
}

export function createReplies({ rest, answered, log }: RepliesParts): Replies {
  const note = (given: Omit<AnsweredQuestion, 'answeredAt' | 'question'>, { question = '' }: Reply) =>
    answered
      .record({ ...given, question, answeredAt: new Date() })
      .catch(error => log.error({ error: describeFault(error) }, 'an answer was not noted'))

  const routeOf = ({ place, answerMessage }: AnsweredQuestion) =>
    Routes.channelMessage(snowflake(place), snowflake(answerMessage))

  async function unlessGone(attempt: () => Promise<unknown>): Promise<void> {
    await onceMore(attempt).catch(error => {
      if (!isGone(error)) throw error
    })
  }

  const edit = (earlier: AnsweredQuestion, body: Rendered, files: readonly RawFile[] = []) =>
    unlessGone(() => rest.patch(routeOf(earlier), { body, files: [...files] }))

  return {
    give: async ({ place, asker, asked }, { channel, message }, { reply, message: answer, files }) => {
      const body: RESTPostAPIChannelMessageJSONBody = {
        ...answer,
        message_reference: { message_id: message, fail_if_not_exists: false },
        nonce: nonceOf(asked?.id ?? message),
        enforce_nonce: true,
      }
      const sending = () => rest.post(Routes.channelMessages(channel), { body, files: [...files] })
      const { id } = (await onceMore(sending)) as APIMessage
      const messages = { questionMessage: idOf(message), answerMessage: idOf(id) }
      await note({ place: place.id, askedBy: asker.id, ...messages }, reply)
    },
    replace: async (earlier, { reply, message, files }) => {
      await edit(earlier, message, files)
      await note(earlier, reply)
    },
    reword: edit,
    takeAway: earlier => unlessGone(() => rest.delete(routeOf(earlier))),
  }
}
