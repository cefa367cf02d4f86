// Answers a message that speaks to us: one that mentions us, a direct one, or a reply that amends our answer.

import { type Message, MessageType, type PermissionsString } from 'discord.js'
import { marksWrong } from '../assistant/moderating/marking.ts'
import type { Occasion } from '../assistant/occasion.ts'
import { amended } from '../assistant/running/amend.ts'
import type { Assistant } from '../assistant/running/assistant.ts'
import type { Question } from '../language/sentence/question.ts'
import type { AnsweredMemory, HouseMemory, QuestionMemory } from '../memory/memory.ts'
import type { Log } from '../program/log.ts'
import type { Compose, Composed } from './messages/compose.ts'
import { createTellLacked, lackedAs, lackedFor } from './messages/lacking.ts'
import { askedIn } from './messages/later.ts'
import { questionRepliedTo } from './messages/replied-to.ts'
import type { MessageWay, Replies } from './messages/replies.ts'
import type { Speaking } from './messages/speaking.ts'
import { directOccasion, idOf, moderates, server } from './platform/occasion.ts'

export interface MentionParts {
  readonly assistant: Assistant
  readonly answered: AnsweredMemory
  readonly questions: QuestionMemory
  readonly house: HouseMemory
  readonly compose: Compose
  readonly replies: Replies
  readonly speaking: Speaking
  readonly log: Log
}

/** Of each server the last member who spoke is known, no longer: so what they said is taken with them. */
export interface Said {
  readonly message: Message
  readonly member: Message['member']
}

export interface Mentions {
  /** Undefined where the message is none of our business. */
  questionIn(message: Message): Promise<string | Question | undefined>
  answer(said: Said, question: string | Question): Promise<void>
  /** In private where it is for the asker alone, or we may not answer where it was asked. */
  give(message: Message, occasion: Occasion, answer: Composed): Promise<void>
  hear(said: Said): Promise<void>
}

/** Of bots nobody is answered, nor is what Discord itself says. A text that is not for us comes without its words. */
export const mayAsk = ({ author, webhookId, type, content }: Message): boolean =>
  content !== '' && !author.bot && webhookId === null && (type === MessageType.Default || type === MessageType.Reply)

export function createMentions({
  assistant,
  answered,
  questions,
  compose,
  replies,
  speaking,
  house,
  log,
}: MentionParts): Mentions {
  const { vocabulary } = assistant.registry
  const tellLacked = createTellLacked({ speaking, house, log })

  async function questionIn(message: Message): Promise<string | Question | undefined> {
    const words = message.content.split(new RegExp(`<@!?${message.client.user.id}>`))
    const text = words.join(' ').trim()
    const isSpokenTo = words.length > 1 || !message.inGuild()
    const earlier = await questionRepliedTo(message, answered, questions)
    const further = earlier === undefined ? undefined : amended(earlier, text, vocabulary)
    if (isSpokenTo) return further ?? text
    // A reply among people that happens to hold a quantity says more than that quantity.
    return further?.notUsed ? undefined : further
  }

  async function answer({ message, member }: Said, question: string | Question): Promise<void> {
    const way = wayOf(message)
    const occasion = occasionOf({ message, member }, way)
    const composed = await compose.ask(question, occasion, 'brief')
    if (composed.reply.tooFast !== 'again') await give(message, occasion, composed)
  }

  async function give(message: Message, occasion: Occasion, answer: Composed): Promise<void> {
    const way = wayOf(message)
    /** We lack a permission: the answer may be one that cannot wait. */
    const inPrivate = async (lacked: readonly PermissionsString[]) => {
      if (message.inGuild()) await tellLacked(message, lacked, answer.reply.locale)
      await replies.giveAlone(occasion, way, answer)
    }
    const lacked = lackedFor(message)
    if (lacked.length > 0) await inPrivate(lacked)
    else await replies.give(occasion, way, answer).catch(error => inPrivate(lackedAs(error)))
    await assistant.delivered(occasion)
  }

  /** A moderator's reply to an answer of ours. */
  async function isMarking(said: Said): Promise<boolean> {
    const { content, client, reference } = said.message
    const words = content.replace(new RegExp(`<@!?${client.user.id}>`), '')
    if (!marksWrong(words) || reference?.messageId === undefined) return false
    return assistant.markWrong(occasionOf(said, wayOf(said.message)), idOf(reference.messageId))
  }

  return {
    questionIn,
    answer,
    give,
    async hear(said) {
      if (await isMarking(said)) return
      const question = await questionIn(said.message)
      if (question !== undefined) await answer(said, question)
    },
  }
}

export const wayOf = ({ channelId, id, editedTimestamp }: Message): MessageWay => ({
  channel: channelId,
  message: id,
  edited_ms: editedTimestamp ?? undefined,
})

export function occasionOf({ message, member }: Said, way: MessageWay): Occasion {
  const { author, channelId } = message
  // Of users none is kept, so that a member's own display name would be their user name.
  const asker = { id: author.id, name: member?.nickname ?? author.displayName }
  const asked = { ...askedIn(way), link: message.url }
  if (!message.inGuild()) return { ...directOccasion(asker, channelId), asked }
  const permissions = member ? message.channel.permissionsFor(member).bitfield : 0n
  return {
    surface: 'discord',
    asker: { id: idOf(asker.id), name: asker.name, moderates: moderates(permissions) },
    community: server(message.guildId, () => message.guild.name),
    place: { id: idOf(channelId), direct: false },
    asked,
  }
}
