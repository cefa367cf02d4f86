// Answers to messages: sent and noted, put in the place of earlier ones, taken away.

import { type APIMessage, type RawFile, type REST, type RESTPostAPIChannelMessageJSONBody, Routes } from 'discord.js'
import type { Occasion } from '../../assistant/occasion.ts'
import type { Reply } from '../../assistant/reply.ts'
import type { AnsweredMemory, AnsweredQuestion } from '../../memory/memory.ts'
import type { Log } from '../../program/log.ts'
import { describeFault, isGone } from '../platform/faults.ts'
import { idOf, snowflake } from '../platform/occasion.ts'
import type { Composed } from './compose.ts'
import type { Rendered } from './render.ts'
import type { Speaking } from './speaking.ts'

/** The message that asked, or the edit of it. */
export interface MessageWay {
  readonly channel: string
  readonly message: string
  readonly edited_ms?: number | undefined
}

export interface RepliesParts {
  readonly rest: REST
  readonly speaking: Speaking
  readonly answered: AnsweredMemory
  readonly log: Log
}

export interface Replies {
  /** Sends once however often it is called: for the same nonce Discord gives back the message that it already has. */
  give(occasion: Occasion, way: MessageWay, answer: Composed): Promise<void>
  /** With words that answer nothing. */
  tell(occasion: Occasion, way: MessageWay, words: Rendered): Promise<void>
  /** To the asker alone; false where they are closed to us. */
  giveAlone(occasion: Occasion, way: MessageWay, answer: Composed): Promise<boolean>
  /** One that people have deleted stays so. */
  replace(earlier: AnsweredQuestion, answer: Composed): Promise<void>
  /** The same with words that answer nothing. */
  reword(earlier: AnsweredQuestion, words: Rendered): Promise<void>
  takeAway(earlier: AnsweredQuestion): Promise<void>
}

export function createReplies({ rest, speaking, answered, log }: RepliesParts): Replies {
  const note = (given: AnsweredQuestion, { question = '' }: Reply) =>
    answered
      .record({ ...given, question, answeredAt: new Date() })
      .catch(error => log.error({ error: describeFault(error) }, 'an answer was not noted'))

  const noteSent = ({ asker }: Occasion, { message }: MessageWay, { id, channel_id }: APIMessage, reply: Reply) => {
    const messages = { questionMessage: idOf(message), answerMessage: idOf(id) }
    const given = { place: idOf(channel_id), askedBy: asker.id, ...messages, question: '', answeredAt: new Date() }
    return note(given, reply)
  }

  const routeOf = ({ place, answerMessage }: AnsweredQuestion) =>
    Routes.channelMessage(snowflake(place), snowflake(answerMessage))

  async function unlessGone(attempt: () => Promise<unknown>): Promise<void> {
    await attempt().catch(error => {
      if (!isGone(error)) throw error
    })
  }

  const edit = (earlier: AnsweredQuestion, body: Rendered, files: readonly RawFile[] = []) =>
    unlessGone(() => rest.patch(routeOf(earlier), { body, files: [...files] }))

  return {
    give: async (occasion, way, { reply, message, files }) => {
      const words = { key: keyOf(occasion, way), message: inReply(way, message), files }
      await noteSent(occasion, way, await speaking.inChannel(way.channel, words), reply)
    },
    tell: async (occasion, way, words) => {
      await speaking.inChannel(way.channel, { key: `${keyOf(occasion, way)} told`, message: inReply(way, words) })
    },
    giveAlone: async (occasion, way, { reply, message, files }) => {
      const sent = await speaking.alone(occasion.asker.id, { key: keyOf(occasion, way), message, files })
      if (sent) await noteSent(occasion, way, sent, reply)
      return sent !== undefined
    },
    replace: async (earlier, { reply, message, files }) => {
      await edit(earlier, message, files)
      await note(earlier, reply)
    },
    reword: edit,
    takeAway: earlier => unlessGone(() => rest.delete(routeOf(earlier))),
  }
}

const keyOf = ({ asked }: Occasion, { message }: MessageWay): string => asked?.id ?? idOf(message)
const inReply = ({ message }: MessageWay, words: Rendered): RESTPostAPIChannelMessageJSONBody => ({
  ...words,
  message_reference: { message_id: message, fail_if_not_exists: false },
})
