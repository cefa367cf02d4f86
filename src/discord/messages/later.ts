// Delivers a reply later than it was asked for, by the way that its question left open.

import {
  type APIInteraction,
  type APIInteractionResponse,
  DiscordAPIError,
  InteractionResponseType,
  MessageFlags,
  type REST,
} from 'discord.js'
import type { Way } from '../../assistant/due/inbox.ts'
import type { Asked, Occasion } from '../../assistant/occasion.ts'
import { isForAsker } from '../../assistant/personal.ts'
import { describeFault, isAlreadyDelivered } from '../platform/faults.ts'
import { atOf, idOf } from '../platform/occasion.ts'
import type { Compose, Composed } from './compose.ts'
import type { MessageWay, Replies } from './replies.ts'
import { restResponder } from './responder.ts'

export type InteractionWay = Pick<APIInteraction, 'id' | 'token' | 'application_id'>

/** Discord takes answers to an interaction for a quarter of an hour. */
const interactionOpen_s = 14 * 60
const messageOpen_s = 24 * 3600

/** The message that answers an interaction has no id yet: its channel has. */
export const askedBy = ({ id, token, application_id, guild_id = '@me', channel }: APIInteraction): Asked => ({
  id: idOf(id),
  at_ms: atOf(id),
  way: { id, token, application_id } satisfies InteractionWay,
  openFor_s: interactionOpen_s,
  link: `https://discord.com/channels/${guild_id}/${channel?.id}`,
})

export const askedIn = (way: MessageWay): Asked => ({
  id: way.edited_ms === undefined ? idOf(way.message) : `${idOf(way.message)}#${way.edited_ms}`,
  at_ms: way.edited_ms ?? atOf(way.message),
  way,
  openFor_s: messageOpen_s,
})

/** `replies` is absent where there is no bot token to write messages with. */
export function createDeliverLater(rest: REST, compose: Compose, replies?: Replies): Way['deliver'] {
  return async (occasion, reply) => {
    const way = occasion.asked?.way as InteractionWay | MessageWay
    const answer = await compose.dress(reply, occasion, 'brief')
    try {
      if ('token' in way) await inPlaceOfPromise(way, answer, occasion)
      else if (replies) await replies.give(occasion, way, answer)
      else return { closed: way.channel }
      return 'delivered'
    } catch (error) {
      const isRefusal = error instanceof DiscordAPIError && error.status < 500
      if (!isRefusal || isAlreadyDelivered(error)) throw error
      return { closed: String(describeFault(error).message) }
    }
  }

  /**
   * What was promised is changed as often as it takes; where nothing was yet, it may still be in time to answer. What is for
   * the asker alone takes the place of no promise that all can see.
   */
  async function inPlaceOfPromise(way: InteractionWay, { reply, message, files }: Composed, { place }: Occasion) {
    const responder = restResponder(rest, way)
    // Whoever asked may have asked for themselves alone.
    const hidden = { ...message, flags: MessageFlags.Ephemeral }
    const given = await responder.given()
    if (given === undefined) {
      const type = InteractionResponseType.ChannelMessageWithSource
      return responder.acknowledge({ type, data: hidden } as APIInteractionResponse, files)
    }
    if (given === 'to the asker' || !isForAsker(reply) || place.direct) return responder.edit(message, files)
    await responder.remove()
    await responder.followUp(hidden, files)
  }
}
