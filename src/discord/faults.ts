// What of an error may be logged: Discord's errors carry the interaction's token in their URL.

import { DiscordAPIError } from 'discord.js'
import { describeError } from '../log.ts'

/** Discord's codes: https://docs.discord.com/developers/topics/opcodes-and-status-codes#json */
const alreadyAcknowledged = 40060
const unknownInteraction = 10062

/** An earlier try of ours came through, though we never heard so. */
export const isAlreadyDelivered = (error: unknown): boolean =>
  error instanceof DiscordAPIError && error.code === alreadyAcknowledged

/** The three seconds were over before Discord heard from us. */
export const isExpired = (error: unknown): boolean =>
  error instanceof DiscordAPIError && error.code === unknownInteraction

/** Chosen fields only, and tokens struck from the texts among them. */
export function describeFault(error: unknown): Record<string, unknown> {
  const { message, stack, ...rest } = describeError(error)
  const { status, method } = (error ?? {}) as { status?: unknown; method?: unknown }
  return {
    ...rest,
    message: withoutTokens(message),
    ...(stack ? { stack: withoutTokens(stack) } : {}),
    ...(typeof status === 'number' ? { status } : {}),
    ...(typeof method === 'string' ? { method } : {}),
  }
}

/** Strikes the token from URLs of interactions and webhooks, and anything with the form of a bot's token. */
export function withoutTokens(text: string): string {
  return text
    .replace(/\b(interactions|webhooks)\/(\d+)\/[^/\s"'?]+/g, '$1/$2/(hidden)')
    .replace(/\b[\w-]{20,}\.[\w-]{6,}\.[\w-]{25,}/g, '(hidden)')
}
