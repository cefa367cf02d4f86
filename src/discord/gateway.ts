// Discord by its gateway: one connection, no public address.

import {
  type APIInteraction,
  Client,
  Events,
  GatewayDispatchEvents,
  GatewayIntentBits,
  type GatewayMessageDeleteBulkDispatchData,
  type GatewayMessageDeleteDispatchData,
  Partials,
  REST,
  Status,
} from 'discord.js'
import type { Surface } from '../assistant/running/assistant.ts'
import { createInFlight } from '../ground/in-flight.ts'
import { createLanes } from '../ground/lanes.ts'
import type { AnsweredMemory, HouseMemory } from '../memory/memory.ts'
import { createAnswerInteraction } from './commands/interactions.ts'
import { logDifference } from './commands/registration.ts'
import { createEdits } from './edits.ts'
import { createMentions, mayAsk } from './mentions.ts'
import { createCompose } from './messages/compose.ts'
import { usualPatience_ms } from './messages/deliver.ts'
import { createDeliverLater } from './messages/later.ts'
import { createReplies } from './messages/replies.ts'
import { restResponder } from './messages/responder.ts'
import { createSpeaking } from './messages/speaking.ts'
import { makeCache } from './platform/caches.ts'
import { closedForGood, describeFault, notLetIn } from './platform/faults.ts'
import type { DiscordParts } from './platform/parts.ts'
import { dueTries_ms, patientRest } from './platform/patient-rest.ts'
import { createRecentIds } from './platform/recent-ids.ts'

export interface DiscordGatewayParts extends DiscordParts {
  readonly answered: AnsweredMemory
  readonly house: HouseMemory
  readonly token: string
  /** The server whose commands are ours; the application's own where absent. */
  readonly serverId?: string
  /** How many connections the servers are spread over; as many as Discord recommends when absent. */
  readonly shards?: number | 'auto'
  /** Told where Discord closed the connection in a way that no new one heals. */
  readonly onClosed: (error: Error) => void
  /** How long one request to Discord may take before it is tried again; ten seconds when absent. */
  readonly request_ms?: number
}

/** None of them is privileged: a message that mentions us, and a direct one, come with their text. */
const intents = [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages]

export function createDiscordGateway(parts: DiscordGatewayParts): Surface {
  const { assistant, log, api, token, serverId, shards = 'auto', onClosed, request_ms } = parts
  const client = new Client({
    intents,
    partials: [Partials.Channel, Partials.Message],
    makeCache,
    shards: shards === 'auto' ? shards : Array.from({ length: shards }, (_, at) => at),
    rest: patientRest({ api, request_ms, log }),
  })
  const seen = createRecentIds()
  const inFlight = createInFlight()
  const compose = createCompose(parts)
  const answerInteraction = createAnswerInteraction({
    ...parts,
    compose,
    serverName: id => client.guilds.cache.get(id)?.name,
    patience_ms: parts.patience_ms ?? usualPatience_ms,
  })
  const due = new REST(patientRest({ api, request_ms, longest_ms: dueTries_ms })).setToken(token)
  const speaking = createSpeaking(client.rest)
  const replies = createReplies({ ...parts, compose, rest: client.rest, speaking })
  const mentionParts = { ...parts, compose, replies, speaking }
  const mentions = createMentions(mentionParts)
  const edits = createEdits(mentions, mentionParts)
  /** What becomes of a message waits until it is answered. */
  const lanes = createLanes(error => log.error({ error: describeFault(error) }, 'a message was not dealt with'))
  const ready = () => open && client.isReady() && client.ws.shards.every(({ status }) => status === Status.Ready)
  let open = false

  // As it came, not as discord.js wraps it: the HTTP endpoint gets the same, so that one adapter answers both.
  client.ws.on(GatewayDispatchEvents.InteractionCreate, (interaction: APIInteraction) => {
    if (!open || !seen.isNew(interaction.id)) return
    inFlight.add(answerInteraction(interaction, restResponder(client.rest, interaction)))
  })
  client.on(Events.MessageCreate, message => {
    const { id, member } = message
    if (open && mayAsk(message) && seen.isNew(id)) lanes.add(id, () => mentions.hear({ message, member }))
  })
  client.on(Events.MessageUpdate, (_, message) => {
    const { id, member, editedTimestamp } = message
    if (!open || editedTimestamp === null || !mayAsk(message) || !seen.isNew(`${id} ${editedTimestamp}`)) return
    lanes.add(id, () => edits.edited({ message, member }))
  })
  // Of a message that we do not keep discord.js tells nothing, so as they came.
  const takenAway = ({ guild_id }: { guild_id?: string }, ...ids: readonly string[]) => {
    for (const id of open ? ids : []) lanes.add(id, () => edits.takenAway(id, guild_id))
  }
  client.ws.on(GatewayDispatchEvents.MessageDelete, (gone: GatewayMessageDeleteDispatchData) =>
    takenAway(gone, gone.id),
  )
  client.ws.on(GatewayDispatchEvents.MessageDeleteBulk, (gone: GatewayMessageDeleteBulkDispatchData) =>
    takenAway(gone, ...gone.ids),
  )
  client.on(Events.Error, error => log.error({ error: describeFault(error) }, 'the connection has a fault'))
  client.on(Events.ShardError, error => log.warn({ error: describeFault(error) }, 'the connection broke'))
  client.on(Events.ShardReconnecting, () => open && log.info('reconnecting to Discord'))
  client.on(Events.ShardResume, () => log.info('resumed at Discord'))
  client.on(Events.ShardDisconnect, ({ code }) => onClosed(closedForGood(code)))

  return {
    name: 'discord',
    start: async () => {
      open = true
      const isReady = new Promise(resolve => client.once(Events.ClientReady, resolve))
      try {
        await client.login(token)
      } catch (error) {
        open = false
        await client.destroy()
        throw notLetIn(error)
      }
      await isReady
      inFlight.add(logDifference(client.rest, assistant.registry.commands, serverId, log))
    },
    stop: async () => {
      open = false
      await Promise.all([inFlight.settled(), lanes.settled()])
      await client.destroy()
    },
    ready,
    deliver: createDeliverLater(
      due,
      compose,
      createReplies({ ...parts, compose, rest: due, speaking: createSpeaking(due) }),
    ),
  }
}
