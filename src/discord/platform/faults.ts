// What of an error may be logged: Discord's errors carry the interaction's token in their URL.

import { DiscordAPIError, DiscordjsError, GatewayCloseCodes } from 'discord.js'
import { EndingError } from '../../program/ending.ts'
import { describeError } from '../../program/log.ts'

/** Discord's codes: https://docs.discord.com/developers/topics/opcodes-and-status-codes#json */
export const unknownChannel = 10003
export const unknownMessage = 10008
export const noAccess = 50001
export const closedToUs = 50007
export const noPermission = 50013
export const notOurs = 50005
export const noHistory = 160002
const alreadyAcknowledged = 40060
const unknownInteraction = 10062

/** An earlier try of ours came through, though we never heard so. */
export const isAlreadyDelivered = (error: unknown): boolean =>
  error instanceof DiscordAPIError && error.code === alreadyAcknowledged

/** What we wanted to change is no more. */
export const isGone = (error: unknown): boolean =>
  error instanceof DiscordAPIError && (error.code === unknownMessage || error.code === unknownChannel)

/** The three seconds were over before Discord heard from us. */
export const isExpired = (error: unknown): boolean =>
  error instanceof DiscordAPIError && error.code === unknownInteraction

/** At the start: a wrong token stays wrong, a network that is down may come back. */
export function notLetIn(error: unknown): EndingError {
  const isRefusal = error instanceof DiscordjsError || (error instanceof DiscordAPIError && error.status < 500)
  const { message } = describeError(error)
  return new EndingError(`Discord does not let us in: ${message}`, isRefusal ? 'refused' : 'later')
}

const mending = {
  other: 'look at the bot in the developer portal',
  [GatewayCloseCodes.AuthenticationFailed]: 'the token holds no longer. Put the new one in its place',
  [GatewayCloseCodes.InvalidAPIVersion]: 'this version of the program is too old for it. Upgrade',
  [GatewayCloseCodes.ShardingRequired]:
    'the bot is in too many servers for its connections. Raise CHARGEHAND_SHARDS, or leave it to Discord: auto',
}

/** https://docs.discord.com/developers/topics/opcodes-and-status-codes#gateway-gateway-close-event-codes */
export function closedForGood(code: number): EndingError {
  const how = mending[code as keyof typeof mending] ?? mending.other
  return new EndingError(
    `Discord closed the connection for good (${code} ${GatewayCloseCodes[code]}): ${how}.`,
    'refused',
  )
}

/** Chosen fields only: the rest of these errors holds the interaction's token and what was sent. */
export function describeFault(error: unknown): Record<string, unknown> {
  const { status, method } = (error ?? {}) as { status?: unknown; method?: unknown }
  return {
    ...describeError(error),
    status: typeof status === 'number' ? status : undefined,
    method: typeof method === 'string' ? method : undefined,
  }
}
