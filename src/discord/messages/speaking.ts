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

export interface Speaking {
  inChannel(channel: string, words: Words): Promise<APIMessage>
  /** Undefined where they are closed to us. */
  alone(person: string, words: Words): Promise<APIMessage | undefined>
}

export function createSpeaking(rest: REST): Speaking {
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
    alone: async (person, words) => {
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
