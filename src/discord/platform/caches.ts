// What is kept of each server: its name, and what tells where we may answer. The rest only fills the memory.

import { type CacheFactory, type CacheWithLimitsOptions, type GuildMember, Options } from 'discord.js'

const none: CacheWithLimitsOptions = {
  ApplicationCommandManager: 0,
  ApplicationEmojiManager: 0,
  AutoModerationRuleManager: 0,
  BaseGuildEmojiManager: 0,
  DMMessageManager: 0,
  GuildBanManager: 0,
  GuildEmojiManager: 0,
  GuildInviteManager: 0,
  GuildMessageManager: 0,
  GuildScheduledEventManager: 0,
  GuildStickerManager: 0,
  MessageManager: 0,
  PresenceManager: 0,
  ReactionManager: 0,
  ReactionUserManager: 0,
  StageInstanceManager: 0,
  ThreadMemberManager: 0,
  VoiceStateManager: 0,
}

/** Of members ourselves, and whoever spoke last. */
export const makeCache: CacheFactory = Options.cacheWithLimits({
  ...none,
  GuildMemberManager: { maxSize: 1, keepOverLimit: ({ id, client }: GuildMember) => id === client.user.id },
  UserManager: { maxSize: 0, keepOverLimit: ({ id, client }) => id === client.user.id },
})
