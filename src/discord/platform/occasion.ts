// Who asks on Discord, and where: the facts of an event as the assistant knows them.

import { createHash } from 'node:crypto'
import { type APIInteraction, InteractionContextType, PermissionsBitField, SnowflakeUtil } from 'discord.js'
import type { Community, Occasion, Person } from '../../assistant/occasion.ts'
import { directCommunityOf } from '../../memory/owner.ts'

/** The name of a server where the connection knows it; Discord's events carry only the id. */
export type ServerName = (serverId: string) => string | undefined

/** Whoever may delete others' messages or change the server may change what the club shares. */
const moderating = [PermissionsBitField.Flags.ManageMessages, PermissionsBitField.Flags.ManageGuild]
export const moderates = (permissions: bigint): boolean => new PermissionsBitField(permissions).any(moderating)
export const idOf = (snowflake: string): string => `discord:${snowflake}`
export const snowflake = (id: string): string => id.replace(/^discord:/, '')
/** What Discord knows a message by that is sent again; it takes 25 characters. */
export const nonceOf = (key: string): string => createHash('sha256').update(key).digest('base64url').slice(0, 25)
/** When it was made. */
export const atOf = (snowflake: string): number => SnowflakeUtil.timestampFrom(snowflake)

export function server(serverId: string, nameOf: ServerName): Community {
  return { id: idOf(serverId), name: nameOf(serverId) }
}

/** One person's direct messages with us: a community of one, who may set its rules. */
export function directOccasion(user: { id: string; name: string }, channelId: string): Occasion {
  return {
    surface: 'discord',
    asker: { ...person(user), moderates: true },
    community: { id: directCommunityOf(idOf(user.id)) },
    place: { id: idOf(channelId), direct: true },
  }
}

/** Undefined where the event names no asker or channel, as no question of a person does. */
export function occasionOf(interaction: APIInteraction, serverName: ServerName): Occasion | undefined {
  const { member, context } = interaction
  const user = member?.user ?? interaction.user
  const channelId = interaction.channel?.id
  if (!user || channelId === undefined) return undefined

  const asker = { id: user.id, name: member?.nick ?? user.global_name ?? user.username }
  if (context === InteractionContextType.BotDM) return directOccasion(asker, channelId)
  const serverId = interaction.guild_id
  return {
    surface: 'discord',
    asker: { ...person(asker), moderates: member ? moderates(BigInt(member.permissions)) : false },
    community: serverId ? server(serverId, serverName) : { id: idOf(channelId) },
    place: { id: idOf(channelId), direct: false },
  }
}

const person = ({ id, name }: { id: string; name: string }): Omit<Person, 'moderates'> => ({ id: idOf(id), name })

/** Only the asker will see the answer, though others are in the channel. */
export const alone = (occasion: Occasion): Occasion => ({ ...occasion, place: { ...occasion.place, direct: true } })
