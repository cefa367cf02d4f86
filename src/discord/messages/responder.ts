// The five things that can be done with an interaction, here by Discord's REST API.

import {
  type APIInteraction,
  type APIInteractionResponse,
  type APIMessage,
  DiscordAPIError,
  InteractionResponseType,
  MessageFlags,
  type RawFile,
  type REST,
  Routes,
} from 'discord.js'
import { isAlreadyDelivered, isGone } from '../platform/faults.ts'
import type { Rendered } from './render.ts'

interface MessageBody extends Rendered {
  readonly flags?: number
}

export interface Responder {
  /** Acknowledges the interaction: may be called once. */
  acknowledge(response: APIInteractionResponse, files: readonly RawFile[]): Promise<void>
  /** What an acknowledgement promised or gave, as it is now; undefined where Discord had none. */
  given(): Promise<'to the asker' | 'to all' | 'taken away' | undefined>
  /** Changes the answer that an acknowledgement promised or gave. */
  edit(message: MessageBody, files: readonly RawFile[]): Promise<void>
  /** Takes that answer away. */
  remove(): Promise<void>
  /** Sends a further message. */
  followUp(message: MessageBody, files: readonly RawFile[]): Promise<void>
}

/** The interaction's own token stands for a login: none of these requests carries the bot's. */
export function restResponder(
  rest: REST,
  { id, token, application_id }: Pick<APIInteraction, 'id' | 'token' | 'application_id'>,
): Responder {
  const answer = Routes.webhookMessage(application_id, token)
  return {
    acknowledge: async (body, files) => {
      const callback = Routes.interactionCallback(id, token)
      await rest.post(callback, { body, files: [...files], auth: false })
    },
    given: async () => {
      try {
        const { flags = 0 } = (await rest.get(answer, { auth: false })) as APIMessage
        return flags & MessageFlags.Ephemeral ? 'to the asker' : 'to all'
      } catch (error) {
        if (isGone(error)) return 'taken away'
        if (error instanceof DiscordAPIError && error.status === 404) return undefined
        throw error
      }
    },
    edit: async (body, files) => {
      await rest.patch(answer, { body, files: [...files], auth: false })
    },
    remove: async () => {
      await rest.delete(answer, { auth: false }).catch(error => {
        // An earlier try may have come through unheard.
        if (!isGone(error)) throw error
      })
    },
    followUp: async (body, files) => {
      await rest.post(Routes.webhook(application_id, token), { body, files: [...files], auth: false })
    },
  }
}

const answers: readonly InteractionResponseType[] = [
  InteractionResponseType.ChannelMessageWithSource,
  InteractionResponseType.UpdateMessage,
]

/**
 * For what came before our start: an earlier process may have promised an answer and ended, and Discord takes no second
 * acknowledgement. Then the answer takes the place of the promise; one for the asker alone cannot, where that was public.
 */
export const afterPromise = (to: Responder): Responder => ({
  ...to,
  acknowledge: async (response, files) => {
    try {
      await to.acknowledge(response, files)
    } catch (error) {
      if (!isAlreadyDelivered(error) || !answers.includes(response.type)) throw error
      const { data } = response as unknown as { readonly data: MessageBody }
      if (((data.flags ?? 0) & MessageFlags.Ephemeral) === 0) return to.edit(data, files)
      await to.remove()
      await to.followUp(data, files)
    }
  },
})
