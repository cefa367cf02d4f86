// Discord by HTTP: interactions come as signed requests, so any number of replicas can answer them.

import { type APIInteraction, InteractionResponseType, InteractionType, REST } from 'discord.js'
import type { Surface } from '../assistant/running/assistant.ts'
import { createInFlight } from '../ground/in-flight.ts'
import type { HttpAnswer, HttpRequest, Route } from '../http/server.ts'
import { createAnswerInteraction } from './commands/interactions.ts'
import { createCompose } from './messages/compose.ts'
import { usualPatience_ms } from './messages/deliver.ts'
import { createDeliverLater } from './messages/later.ts'
import { type Responder, restResponder } from './messages/responder.ts'
import type { DiscordParts } from './platform/parts.ts'
import { dueTries_ms, patientRest } from './platform/patient-rest.ts'
import { createRecentIds } from './platform/recent-ids.ts'
import { isFromDiscord, publicKeyOf } from './platform/signature.ts'

export interface DiscordEndpointParts extends DiscordParts {
  /** 64 hexadecimal digits. */
  readonly publicKey: string
  readonly clock?: () => Date
}

/** Needs no bot token: a signed interaction brings its own. */
export function createDiscordEndpoint(parts: DiscordEndpointParts): Surface & { readonly route: Route } {
  const { log, api, publicKey, clock = () => new Date(), patience_ms = usualPatience_ms } = parts
  const key = publicKeyOf(publicKey)
  const rest = new REST(patientRest({ api, log }))
  const seen = createRecentIds()
  const inFlight = createInFlight()
  const compose = createCompose(parts)
  const answerInteraction = createAnswerInteraction({ ...parts, compose, serverName: () => undefined, patience_ms })
  let open = false

  async function answer({ headers, body }: HttpRequest): Promise<HttpAnswer> {
    if (!open) return { status: 503, body: 'stopping' }
    const signature = headers['x-signature-ed25519']?.toString()
    const timestamp = headers['x-signature-timestamp']?.toString()
    if (!(await isFromDiscord({ signature, timestamp, body }, key, clock()))) {
      log.warn('a request to the interactions endpoint bears no valid, recent signature')
      return { status: 401, body: 'invalid request signature' }
    }
    const interaction = parsed(body)
    if (!interaction) return { status: 400, body: 'not an interaction' }
    if (interaction.type === InteractionType.Ping) return json({ type: InteractionResponseType.Pong })
    if (!seen.isNew(interaction.id)) return { status: 409, body: 'this interaction was here before' }

    const { responder, response } = inResponse(restResponder(rest, interaction))
    const work = answerInteraction(interaction, responder)
    inFlight.add(work)
    return (await Promise.race([response, work])) ?? { status: 500, body: 'no answer' }
  }

  return {
    name: 'discord',
    route: { method: 'POST', path: '/discord/interactions', answer },
    start: async () => {
      open = true
    },
    stop: async () => {
      open = false
      await inFlight.settled()
    },
    ready: () => open,
    deliver: createDeliverLater(new REST(patientRest({ api, longest_ms: dueTries_ms })), compose),
  }
}

const json = (value: unknown): HttpAnswer => ({
  status: 200,
  body: JSON.stringify(value),
  contentType: 'application/json',
})

function parsed(body: Buffer): APIInteraction | undefined {
  try {
    const value = JSON.parse(body.toString('utf8'))
    return typeof value?.type === 'number' && typeof value.id === 'string' ? value : undefined
  } catch {
    return undefined
  }
}

/**
 * A whole answer goes out in the HTTP response. A promise, or an answer with files, goes by REST with an empty
 * 202 as the response, so that what follows cannot overtake it:
 * https://docs.discord.com/developers/interactions/receiving-and-responding#interaction-callback
 */
function inResponse(rest: Responder): { responder: Responder; response: Promise<HttpAnswer> } {
  const { promise: response, resolve } = Promise.withResolvers<HttpAnswer>()
  return {
    response,
    responder: {
      ...rest,
      acknowledge: async (given, files) => {
        if (files.length === 0 && !promises.has(given.type)) return resolve(json(given))
        resolve({ status: 202, body: '' })
        await rest.acknowledge(given, files)
      },
    },
  }
}

const promises = new Set([
  InteractionResponseType.DeferredChannelMessageWithSource,
  InteractionResponseType.DeferredMessageUpdate,
])
