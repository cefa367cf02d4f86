// The noticeboard of Discord: posts, edits and pins by its REST API, with the bot's token.

import {
  type APIChannel,
  type APIGuild,
  type APIMessage,
  DiscordAPIError,
  MessageFlags,
  REST,
  type RESTPostAPIChannelMessageJSONBody,
  Routes,
} from 'discord.js'
import type { Missing, Notice, Noticeboard, Posted } from '../assistant/cards/noticeboard.ts'
import type { Reply } from '../assistant/reply.ts'
import type { Said } from '../ground/locale.ts'
import type { QuestionMemory } from '../memory/memory.ts'
import { questionsBehind } from './messages/buttons.ts'
import { keepQuestions } from './messages/compose.ts'
import type { InteractionWay } from './messages/later.ts'
import { type Rendered, renderReply } from './messages/render.ts'
import { struck } from './messages/struck.ts'
import { gone, may, pinsFull } from './noticeboard.words.ts'
import {
  closedToUs,
  isGone,
  noAccess,
  noPermission,
  notOurs,
  unknownChannel,
  unknownMessage,
} from './platform/faults.ts'
import { idOf, nonceOf, snowflake } from './platform/occasion.ts'
import { dueTries_ms, patientRest } from './platform/patient-rest.ts'

export interface DiscordNoticeboardParts {
  /** Where Discord's REST API is, without its version. */
  readonly api: string
  readonly token: string
  readonly questions: QuestionMemory
}

/** Discord's codes: https://docs.discord.com/developers/topics/opcodes-and-status-codes#json */
const tooManyPins = 30003

/** Names the member whom a notice is for, so that it rings, and what it links to. */
const calling = (
  people: readonly string[],
  links: readonly string[],
): Pick<RESTPostAPIChannelMessageJSONBody, 'content' | 'allowed_mentions'> => {
  const users = people.map(snowflake)
  const content = [...users.map(user => `<@${user}>`), ...links].join('\n')
  return content === '' ? {} : { content, allowed_mentions: { users } }
}

export function createDiscordNoticeboard({ api, token, questions }: DiscordNoticeboardParts): Noticeboard {
  const rest = new REST(patientRest({ api, longest_ms: dueTries_ms })).setToken(token)

  async function rendered(reply: Reply): Promise<Rendered> {
    const behind = await keepQuestions(questions, questionsBehind(reply))
    return renderReply(reply, { view: 'brief', behind, pictures: [] })
  }

  async function linkTo(channelId: string): Promise<string> {
    const channel = (await rest.get(Routes.channel(channelId))) as APIChannel
    const server = ('guild_id' in channel && channel.guild_id) || '@me'
    return `https://discord.com/channels/${server}/${channelId}`
  }

  async function post(place: string, { reply, key, calls = [], links = [] }: Notice): Promise<Posted | Missing> {
    const channelId = snowflake(place)
    const body: RESTPostAPIChannelMessageJSONBody = {
      ...(await rendered(reply)),
      ...calling(calls, links),
      nonce: nonceOf(key),
      enforce_nonce: true,
    }
    return orMissing(
      async () => {
        const link = await linkTo(channelId)
        const sent = (await rest.post(Routes.channelMessages(channelId), { body })) as APIMessage
        return { place, message: idOf(sent.id), link: `${link}/${sent.id}` }
      },
      { [unknownChannel]: gone.channel, [noAccess]: may.view, [noPermission]: may.write, [closedToUs]: may.direct },
    )
  }

  return {
    ready: () => true,
    post,
    edit: async ({ place, message }, reply) => {
      const body = await rendered(reply)
      try {
        const route = Routes.channelMessage(snowflake(place), snowflake(message))
        await rest.patch(route, { body })
        return 'edited'
      } catch (error) {
        if (isGone(error)) return 'gone'
        throw error
      }
    },
    pin: ({ place, message }) =>
      orMissing(
        async () => {
          const route = Routes.channelMessagesPin(snowflake(place), snowflake(message))
          await rest.put(route)
          return 'pinned' as const
        },
        { [unknownMessage]: gone.card, [tooManyPins]: pinsFull, [noAccess]: may.view, [noPermission]: may.pin },
      ),
    strike: async ({ place, message }, why) => {
      const [channelId, id] = [snowflake(place), snowflake(message)]
      const route = Routes.channelMessage(channelId, id)
      try {
        const { embeds, interaction_metadata } = (await rest.get(route)) as APIMessage
        const body = { embeds: struck(embeds, why), components: [], attachments: [] }
        await rest.patch(route, { body })
        return {
          link: `${await linkTo(channelId)}/${id}`,
          asker: interaction_metadata && idOf(interaction_metadata.user.id),
        }
      } catch (error) {
        if (isGone(error) || (error instanceof DiscordAPIError && error.code === notOurs)) return 'gone'
        throw error
      }
    },
    remove: async ({ place, message }) => {
      try {
        await rest.delete(Routes.channelMessage(snowflake(place), snowflake(message)))
      } catch (error) {
        if (!isGone(error)) throw error
      }
    },
    /** Its token stands for a login. A promise has a link too; what only its asker sees has none. */
    linkOf: async ({ way, link }) => {
      const { application_id, token } = (way ?? {}) as Partial<InteractionWay>
      if (application_id === undefined || token === undefined) return undefined
      try {
        const route = Routes.webhookMessage(application_id, token)
        const { id, flags = 0 } = (await rest.get(route, { auth: false })) as APIMessage
        return (flags & MessageFlags.Ephemeral) === 0 ? `${link}/${id}` : undefined
      } catch (error) {
        if (!(error instanceof DiscordAPIError)) throw error
        return error.status === 404 ? 'soon' : undefined
      }
    },
    ownerOf: async community => {
      const { owner_id } = (await rest.get(Routes.guild(snowflake(community)))) as APIGuild
      return idOf(owner_id)
    },
    direct: (person, notice) =>
      orMissing(
        async () => {
          const body = { recipient_id: snowflake(person) }
          const { id } = (await rest.post(Routes.userChannels(), { body })) as APIChannel
          const posted = await post(idOf(id), notice)
          return 'missing' in posted ? posted : 'sent'
        },
        { [closedToUs]: may.direct },
      ),
  }
}

/** What `attempt` gives; for a refusal of Discord that is listed, what is missing. */
async function orMissing<T>(attempt: () => Promise<T>, reasons: Readonly<Record<number, Said>>): Promise<T | Missing> {
  try {
    return await attempt()
  } catch (error) {
    const missing = error instanceof DiscordAPIError ? reasons[Number(error.code)] : undefined
    if (missing === undefined) throw error
    return { missing }
  }
}
