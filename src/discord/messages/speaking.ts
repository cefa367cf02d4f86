// Messages that answer none: to one person alone, where they have not closed themselves to us, or in a channel.

import {
  type APIChannel,
  type APIMessage,
  DiscordAPIError,
  type RawFile,
  type REST,
  type RESTPostAPIChannelMessageJSONBody,
  Routes,
} from 'discord.js'
import { closedToUs } from '../platform/faults.ts'
import { nonceOf, snowflake } from '../platform/occasion.ts'

/** Said once for each key. */
export interface Words {
  readonly key: string
  readonly message: RESTPostAPIChannelMessageJSONBody
  readonly files?: readonly RawFile[]
}

export function createSpeaking(rest: REST) {
  async function inChannel(channel: string, { key, message, files = [] }: Words): Promise<APIMessage> {
    const body: RESTPostAPIChannelMessageJSONBody = {
      allowed_mentions: { parse: [] },
      ...message,
      nonce: nonceOf(key),
      enforce_nonce: true,
    }
    const route = Routes.channelMessages(snowflake(channel))
    return (await rest.post(route, { body, files: [...files] })) as APIMessage
  }
  return {
    inChannel,
    /** Undefined where they are closed to us. */
    alone: async (person: string, words: Words) => {
      try {
        const body = { recipient_id: snowflake(person) }
        const { id } = (await rest.post(Routes.userChannels(), { body })) as APIChannel
        return await inChannel(id, words)
      } catch (error) {
        if (error instanceof DiscordAPIError && error.code === closedToUs) return undefined
        throw error
      }
    },
  }
}

export type Speaking = ReturnType<typeof createSpeaking>
