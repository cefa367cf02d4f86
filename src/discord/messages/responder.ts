// The four things that can be done with an interaction, here by Discord's REST API.

import { type APIInteraction, type APIInteractionResponse, type RawFile, type REST, Routes } from 'discord.js'
import { isGone } from '../platform/faults.ts'
import type { Rendered } from './render.ts'

interface MessageBody extends Rendered {
  readonly flags?: number
}

export interface Responder {
  /** Acknowledges the interaction: may be called once. */
  acknowledge(response: APIInteractionResponse, files: readonly RawFile[]): Promise<void>
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
