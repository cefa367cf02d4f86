// Events as Discord sends them: one invented server, its members, and what they do.

export const botId = '700000000000000001'
export const application = { id: '700000000000000002', name: 'Chargehand' }
const serverId = '700000000000000003'
export const channelId = '700000000000000004'
const pilotId = '700000000000000005'
const directChannelId = '700000000000000006'

const discordEpoch_ms = 1_420_070_400_000
let lastId = 0n

/** Each id is new and tells when it was made, as Discord's do. */
export function newId(): string {
  const first = BigInt(Date.now() - discordEpoch_ms) << 22n
  lastId = first > lastId ? first : lastId + 1n
  return String(lastId)
}

/** Bits of https://docs.discord.com/developers/topics/permissions */
export const permission = {
  manageGuild: 1n << 5n,
  viewChannel: 1n << 10n,
  sendMessages: 1n << 11n,
  manageMessages: 1n << 13n,
  embedLinks: 1n << 14n,
  attachFiles: 1n << 15n,
  readHistory: 1n << 16n,
  pinMessages: 1n << 51n,
}
const { manageGuild, manageMessages, pinMessages, ...needed } = permission
const everyone = Object.values(needed).reduce((sum, bit) => sum | bit, 0n)
export const moderatorPermissions = String(everyone | manageMessages)
export const pilotPermissions = String(everyone)

const role = (id: string, name: string, permissions: bigint) => ({
  id,
  name,
  permissions: String(permissions),
  position: id === serverId ? 0 : 1,
  color: 0,
  colors: { primary_color: 0, secondary_color: null, tertiary_color: null },
  hoist: false,
  managed: false,
  mentionable: false,
  flags: 0,
})
const moderatorRole = '700000000000000007'
/** Of the bot, by its invite. */
const botRole = '700000000000000012'
const muteChannelId = '700000000000000008'
export const ownerId = '700000000000000009'

export const pilot = { id: pilotId, username: 'ada', global_name: 'Ada', discriminator: '0', avatar: null }
export const wim = { ...pilot, id: '700000000000000011', username: 'wim', global_name: 'Wim' }
const bot = { id: botId, username: 'chargehand', global_name: null, discriminator: '0', avatar: null, bot: true }

const memberOf = (user: object, roles: string[] = []) => ({
  user,
  nick: null,
  avatar: null,
  roles,
  joined_at: '2026-01-01T00:00:00.000Z',
  deaf: false,
  mute: false,
  flags: 0,
})

export const botMember = memberOf(bot, [botRole])

const channel = (id: string, name: string, denied = 0n) => ({
  id,
  guild_id: serverId,
  type: 0,
  name,
  position: 0,
  permission_overwrites: denied === 0n ? [] : [{ id: serverId, type: 0, allow: '0', deny: String(denied) }],
})

/** Where Discord tells moderators things: https://docs.discord.com/developers/resources/guild#guild-object */
export const moderatorsChannelId = '700000000000000010'

/** A channel in which the bot may not embed. */
export const bareChannelId = muteChannelId

export const serverEvent = {
  id: serverId,
  name: 'Heron Meadow Electric Flyers',
  owner_id: ownerId,
  public_updates_channel_id: moderatorsChannelId,
  roles: [
    role(serverId, '@everyone', everyone),
    role(moderatorRole, 'field marshal', manageGuild),
    role(botRole, 'Chargehand', pinMessages),
  ],
  channels: [
    channel(channelId, 'charging'),
    channel(muteChannelId, 'quiet', permission.embedLinks),
    channel(moderatorsChannelId, 'back-room'),
  ],
  members: [botMember],
  threads: [],
  emojis: [],
  stickers: [],
  presences: [],
  voice_states: [],
  stage_instances: [],
  guild_scheduled_events: [],
  features: [],
  member_count: 2,
  large: false,
  joined_at: '2026-01-01T00:00:00.000Z',
  preferred_locale: 'en-GB',
  premium_tier: 0,
  nsfw_level: 0,
  verification_level: 0,
  default_message_notifications: 0,
  explicit_content_filter: 0,
  mfa_level: 0,
  afk_timeout: 300,
  afk_channel_id: null,
  system_channel_id: null,
  system_channel_flags: 0,
  icon: null,
  splash: null,
}

export interface Interaction {
  readonly id: string
  readonly token: string
  readonly [key: string]: unknown
}

interface Where {
  readonly permissions?: string
  /** Ada where absent. */
  readonly by?: typeof pilot
  /** In direct messages with the bot. */
  readonly direct?: boolean
}

function interaction(type: number, data: unknown, { permissions, direct, by = pilot }: Where): Interaction {
  const id = newId()
  const channelOf = direct ? { id: directChannelId, type: 1 } : { id: channelId, type: 0 }
  return {
    id,
    token: `interaction-token-${id}-that-must-never-show-up-in-a-log`,
    application_id: application.id,
    type,
    data,
    version: 1,
    channel: channelOf,
    channel_id: channelOf.id,
    ...(direct
      ? { context: 1, user: by }
      : { context: 0, guild_id: serverId, member: { ...memberOf(by), permissions: permissions ?? pilotPermissions } }),
    locale: 'en-GB',
    entitlements: [],
    authorizing_integration_owners: { 0: direct ? '0' : serverId },
    app_permissions: String(everyone),
    attachment_size_limit: 10_000_000,
  }
}

interface Filled {
  readonly name: string
  readonly value: string | boolean
  readonly focused?: boolean
}

/** "kit save" is the subcommand save of kit. */
function commandData(command: string, options: readonly Filled[]) {
  const filled = options.map(option => ({ type: typeof option.value === 'boolean' ? 5 : 3, ...option }))
  const [name, sub] = command.split(' ')
  return { id: newId(), type: 1, name, options: sub ? [{ type: 1, name: sub, options: filled }] : filled }
}

const asList = (options: Readonly<Record<string, string | boolean>>): Filled[] =>
  Object.entries(options).map(([name, value]) => ({ name, value }))

export const slash = (
  command: string,
  options: Readonly<Record<string, string | boolean>> = {},
  where: Where = {},
): Interaction => interaction(2, commandData(command, asList(options)), where)

export const typing = (command: string, option: string, text: string): Interaction =>
  interaction(4, commandData(command, [{ name: option, value: text, focused: true }]), {})

export const press = (customId: string, where: Where & { ephemeral?: boolean; on?: string } = {}): Interaction => ({
  ...interaction(3, { custom_id: customId, component_type: 2 }, where),
  message: { id: where.on ?? newId(), flags: where.ephemeral ? 64 : 0 },
})

export const mentionOfBot = `<@${botId}>`

/** Without the intent the text of others comes only where it mentions us: https://docs.discord.com/developers/events/gateway#message-content-intent */
const asDelivered = (content: string, mentions: readonly object[]): string => (mentions.length > 0 ? content : '')

interface Words {
  readonly replyTo?: string
  /** Whether the reply mentions whom it answers, as it does unless its author says otherwise. */
  readonly pings?: boolean
  readonly direct?: boolean
  readonly moderator?: boolean
  readonly channel?: string
  readonly author?: object
}

export interface MessageEvent {
  readonly id: string
  readonly content: string
  readonly mentions: readonly object[]
  readonly channel_id: string
  readonly [key: string]: unknown
}

export function message(content: string, words: Words = {}): MessageEvent {
  const channelOf = words.direct ? directChannelId : (words.channel ?? channelId)
  const { user: _, ...member } = memberOf(pilot, words.moderator ? [moderatorRole] : [])
  const pings = words.replyTo !== undefined && words.pings !== false
  const mentions = pings || content.includes(mentionOfBot) ? [bot] : []
  return {
    id: newId(),
    type: words.replyTo ? 19 : 0,
    content: words.direct ? content : asDelivered(content, mentions),
    channel_id: channelOf,
    channel_type: words.direct ? 1 : 0,
    author: words.author ?? pilot,
    timestamp: '2026-01-01T00:00:00.000Z',
    edited_timestamp: null,
    tts: false,
    mention_everyone: false,
    mentions,
    mention_roles: [],
    attachments: [],
    embeds: [],
    pinned: false,
    ...(words.direct ? {} : { guild_id: serverId, member }),
    ...(words.replyTo
      ? {
          message_reference: { message_id: words.replyTo, channel_id: channelOf, guild_id: serverId },
          referenced_message: { id: words.replyTo, channel_id: channelOf, author: bot },
        }
      : {}),
  }
}

/** The menu of a message, whose text comes whatever it mentions: https://docs.discord.com/developers/events/gateway#message-content-intent */
export const askAbout = (content: string, where: Where = {}): Interaction => {
  const id = newId()
  const messages = { [id]: { id, channel_id: channelId, content, author: wim } }
  return interaction(
    2,
    { id: newId(), type: 3, name: 'Ask the chargehand', target_id: id, resolved: { messages } },
    where,
  )
}

/** The window that a button opened, filled and sent. */
export const submit = (customId: string, words: string): Interaction =>
  interaction(
    5,
    {
      custom_id: customId,
      components: [{ type: 18, id: 1, component: { type: 4, id: 2, custom_id: 'words', value: words } }],
    },
    {},
  )

/** The event of an edit so long after the message: https://docs.discord.com/developers/events/gateway-events#message-update */
export function edited(event: MessageEvent, content: string, after_ms = 60_000): MessageEvent {
  const mentions = content.includes(mentionOfBot) ? [bot] : event.mentions.filter(() => event.message_reference)
  const made_ms = Number(BigInt(event.id) >> 22n) + discordEpoch_ms
  return {
    ...event,
    mentions,
    content: event.guild_id === undefined ? content : asDelivered(content, mentions),
    edited_timestamp: new Date(made_ms + after_ms).toISOString(),
  }
}

export const deleted = ({ id, channel_id, guild_id }: MessageEvent): object => ({ id, channel_id, guild_id })
