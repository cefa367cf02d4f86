// Answers a message that speaks to us: one that mentions us, a direct one, or a reply that amends our answer.

import { type Message, MessageType } from 'discord.js'
import type { Occasion } from '../assistant/occasion.ts'
import { amendedQuestion } from '../assistant/running/amend.ts'
import type { Assistant } from '../assistant/running/assistant.ts'
import type { Question } from '../language/sentence/question.ts'
import type { AnsweredMemory } from '../memory/memory.ts'
import type { Log } from '../program/log.ts'
import type { Compose } from './messages/compose.ts'
import { askedIn } from './messages/later.ts'
import type { Replying } from './messages/replies.ts'
import { describeFault } from './platform/faults.ts'
import { directOccasion, idOf, moderates, server } from './platform/occasion.ts'
import { neededPermissions } from './platform/permissions.ts'

export interface MentionParts {
  readonly assistant: Assistant
  readonly answered: AnsweredMemory
  readonly compose: Compose
  readonly reply: Replying
  readonly log: Log
}

/** Never rejects. */
export type AnswerMessage = (message: Message) => Promise<void>

export function createAnswerMessage({ assistant, answered, compose, reply, log }: MentionParts): AnswerMessage {
  const { vocabulary } = assistant.registry

  return async message => {
    // Of each server the last member who spoke is known, no longer.
    const { member } = message
    try {
      const asked = await questionIn(message)
      if (asked === undefined || lacksPermission(message)) return
      const way = { channel: message.channelId, message: message.id }
      const occasion = { ...occasionOf(message, member), asked: askedIn(way) }
      await reply(occasion, way, await compose.ask(asked, occasion, 'brief'))
      await assistant.delivered(occasion)
    } catch (error) {
      log.error({ error: describeFault(error), message: message.id }, 'a mention was not answered')
    }
  }

  /** Undefined where the message is none of our business. */
  async function questionIn(message: Message): Promise<string | Question | undefined> {
    if (!isFromPerson(message)) return undefined
    const words = message.content.split(new RegExp(`<@!?${message.client.user.id}>`))
    const text = words.join(' ').trim()
    const isSpokenTo = words.length > 1 || !message.inGuild()
    const answer = message.reference?.messageId
    const amended = answer ? await amendedQuestion(idOf(answer), text, answered, vocabulary) : undefined
    if (isSpokenTo) return amended ?? text
    // A reply among people that happens to hold a quantity says more than that quantity.
    return amended?.notUsed ? undefined : amended
  }

  /** Without them an answer would fail or arrive empty; the log says what a moderator has to grant. */
  function lacksPermission(message: Message): boolean {
    if (!message.inGuild()) return false
    const { channel } = message
    const own = channel.permissionsFor(message.client.user)
    const missing = own?.missing([...neededPermissions(channel.isThread())]) ?? []
    if (missing.length > 0) log.warn({ channel: channel.id, missing }, 'permissions are missing to answer')
    return missing.length > 0
  }
}

function isFromPerson({ author, webhookId, type }: Message): boolean {
  return !author.bot && webhookId === null && (type === MessageType.Default || type === MessageType.Reply)
}

function occasionOf(message: Message, member: Message['member']): Occasion {
  const { author, channelId } = message
  const asker = { id: author.id, name: member?.displayName ?? author.displayName }
  if (!message.inGuild()) return directOccasion(asker, channelId)
  const permissions = member ? message.channel.permissionsFor(member).bitfield : 0n
  return {
    surface: 'discord',
    asker: { id: idOf(asker.id), name: asker.name, moderates: moderates(permissions) },
    community: server(message.guildId, () => message.guild.name),
    place: { id: idOf(channelId), direct: false },
  }
}
