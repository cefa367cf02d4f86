// Answers to messages: sent and noted, put in the place of earlier ones, taken away.

import { type APIMessage, type RawFile, type REST, type RESTPostAPIChannelMessageJSONBody, Routes } from 'discord.js'
import type { Occasion } from '../../assistant/occasion.ts'
import { isForAsker } from '../../assistant/personal.ts'
import { answeredInPrivate, notReached } from '../../assistant/private.words.ts'
import type { Reply } from '../../assistant/reply.ts'
import { isEmergency } from '../../charging/situation/dangers.ts'
import type { AnsweredMemory, AnsweredQuestion } from '../../memory/memory.ts'
import type { Log } from '../../program/log.ts'
import { describeFault, isGone } from '../platform/faults.ts'
import { idOf, snowflake } from '../platform/occasion.ts'
import type { Compose, Composed } from './compose.ts'
import { type Rendered, renderText } from './render.ts'
import type { Speaking } from './speaking.ts'
import { createTurns } from './turns.ts'

/** The message that asked, or the edit of it. */
export interface MessageWay {
  readonly channel: string
  readonly message: string
  readonly edited_ms?: number | undefined
}

export interface RepliesParts {
  readonly rest: REST
  readonly speaking: Speaking
  readonly compose: Compose
  readonly answered: AnsweredMemory
  readonly log: Log
}

export function createReplies({ rest, speaking, compose, answered, log }: RepliesParts) {
  const turns = createTurns()
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

  async function inChannel(occasion: Occasion, way: MessageWay, { reply, message, files }: Composed): Promise<void> {
    const words = { key: keyOf(occasion, way), message: inReply(way, message), files }
    const urgent = reply.tells?.some(danger => isEmergency({ danger })) ?? false
    const sending = () => speaking.inChannel(way.channel, words)
    await noteSent(occasion, way, await turns(way.channel, { sender: occasion.asker.id, urgent }, sending), reply)
  }

  async function alone(occasion: Occasion, way: MessageWay, answer: Composed): Promise<boolean> {
    const { reply, message, files } = await compose.forAsker(answer, occasion)
    const sent = await speaking.alone(occasion.asker.id, { key: keyOf(occasion, way), message, files })
    if (sent) await noteSent(occasion, way, sent, reply)
    return sent !== undefined
  }

  return {
    /**
     * Where it was asked; what is for the asker alone to them, with a line there that says so. It is sent once however often
     * this is called: for the same nonce Discord gives back the message that it already has.
     */
    give: async (occasion: Occasion, way: MessageWay, answer: Composed) => {
      if (!isForAsker(answer.reply) || occasion.place.direct) return inChannel(occasion, way, answer)
      const said = (await alone(occasion, way, answer)) ? answeredInPrivate : notReached
      const words = inReply(way, renderText(said(answer.reply.locale)))
      await speaking.inChannel(way.channel, { key: `${keyOf(occasion, way)} told`, message: words })
    },
    /** To the asker alone; false where they are closed to us. */
    giveAlone: alone,
    /** One that people have deleted stays so. */
    replace: async (earlier: AnsweredQuestion, { reply, message, files }: Composed) => {
      await edit(earlier, message, files)
      await note(earlier, reply)
    },
    /** The same with words that answer nothing. */
    reword: edit,
    takeAway: (earlier: AnsweredQuestion) => unlessGone(() => rest.delete(routeOf(earlier))),
  }
}

export type Replies = ReturnType<typeof createReplies>

const keyOf = ({ asked }: Occasion, { message }: MessageWay): string => asked?.id ?? idOf(message)
const inReply = ({ message }: MessageWay, words: Rendered): RESTPostAPIChannelMessageJSONBody => ({
  ...words,
  message_reference: { message_id: message, fail_if_not_exists: false },
})
