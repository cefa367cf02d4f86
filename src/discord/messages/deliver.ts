// An answer on its way to Discord: within three seconds or promised, and never twice.

import { type APIInteractionResponse, InteractionResponseType, MessageFlags } from 'discord.js'
import { isForAsker } from '../../assistant/personal.ts'
import type { Reply } from '../../assistant/reply.ts'
import { within } from '../../ground/within.ts'
import type { Log } from '../../program/log.ts'
import { isAlreadyDelivered, isExpired } from '../platform/faults.ts'
import type { Composed } from './compose.ts'
import type { Responder } from './responder.ts'

/** Leaves Discord's three seconds a third for the way there. */
export const usualPatience_ms = 2000

export interface DeliveryRules {
  /** Changes the message whose button was pressed, rather than sending one. */
  readonly inPlace: boolean
  /** Who sees it; `fitting` is the channel, but for what concerns the asker alone. */
  readonly to: 'asker' | 'channel' | 'fitting'
  /** How long an answer may take before it is promised instead. */
  readonly patience_ms: number
}

/**
 * Sends the answer, or promises it and sends it when it is there. Refusals about the asker's own mistake are
 * private in any case. Rejects where Discord cannot be told.
 */
export async function deliver(
  answer: Promise<Composed>,
  responder: Responder,
  { inPlace, to, patience_ms }: DeliveryRules,
  log: Log,
): Promise<void> {
  const flagsOf = (hidden: boolean) => (hidden && !inPlace ? { flags: MessageFlags.Ephemeral as const } : {})

  const isAlone = ({ reply }: Composed) =>
    to === 'asker' || isOwnMistake(reply) || (to === 'fitting' && isForAsker(reply))

  const inTime = await within(patience_ms, answer)
  if (inTime) {
    const { message, files } = inTime
    const data = { ...message, ...flagsOf(isAlone(inTime)) }
    const type = inPlace ? InteractionResponseType.UpdateMessage : InteractionResponseType.ChannelMessageWithSource
    await isAcknowledged(responder.acknowledge({ type, data } as APIInteractionResponse, files), log)
    return
  }

  const promise: APIInteractionResponse = inPlace
    ? { type: InteractionResponseType.DeferredMessageUpdate }
    : { type: InteractionResponseType.DeferredChannelMessageWithSource, data: flagsOf(to === 'asker') }
  if (!(await isAcknowledged(responder.acknowledge(promise, []), log))) return

  const late = await answer
  if (isAlone(late) && to !== 'asker' && !inPlace) {
    // A promise made in public cannot be kept in private: Discord fixes that with the promise.
    await responder.remove()
    await responder.followUp({ ...late.message, ...flagsOf(true) }, late.files)
  } else {
    await responder.edit(late.message, late.files)
  }
}

/** The asker can mend it, so nobody else needs to see it. */
const isOwnMistake = (reply: Reply): boolean => reply.problem !== undefined && reply.fault === undefined

/** False where the interaction has expired; then nothing more can be said. */
export async function isAcknowledged(sending: Promise<void>, log: Log): Promise<boolean> {
  try {
    await sending
    return true
  } catch (error) {
    if (isAlreadyDelivered(error)) return true
    if (!isExpired(error)) throw error
    log.warn('an interaction expired before Discord had its answer')
    return false
  }
}
