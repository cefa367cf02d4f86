// Which question the message of ours answers that somebody replies to.

import { type APIMessage, type APIMessageTopLevelComponent, ComponentType, type Message, Routes } from 'discord.js'
import { lookedUp } from '../../assistant/lookup.ts'
import type { AnsweredMemory, QuestionMemory } from '../../memory/memory.ts'
import { idOf } from '../platform/occasion.ts'
import { questionBehind, readCustomId } from './custom-id.ts'

/** Where it is known for an answer to a message, else by its buttons, as under a slash command's and on cards. */
export async function questionRepliedTo(
  { reference, mentions, channelId, client }: Message<true> | Message,
  answered: AnsweredMemory,
  questions: QuestionMemory,
): Promise<string | undefined> {
  const id = reference?.messageId
  if (id === undefined) return undefined
  const noted = await lookedUp(answered.byAnswer(idOf(id)))
  if (noted) return noted.question
  if (mentions.repliedUser?.id !== client.user?.id) return undefined
  const { components = [] } = (await client.rest.get(Routes.channelMessage(channelId, id))) as APIMessage
  const own = components.flatMap(customIds).find(pressed => pressed.deed !== 'brief')
  return own && lookedUp(questionBehind(own, questions))
}

const customIds = (row: APIMessageTopLevelComponent) =>
  (row.type === ComponentType.ActionRow ? row.components : []).flatMap(one => {
    const pressed = 'custom_id' in one ? readCustomId(one.custom_id) : undefined
    return pressed ? [pressed] : []
  })
