// A permission that we lack where we are asked: the moderators are told once a day, and who asked at once.

import { DiscordAPIError, type Guild, type Message, type PermissionsString } from 'discord.js'
import { moderatorCanChange } from '../../assistant/private.words.ts'
import type { Locale } from '../../ground/locale.ts'
import { present } from '../../ground/present.ts'
import { createSeldom } from '../../ground/seldom.ts'
import type { HouseMemory } from '../../memory/memory.ts'
import type { Log } from '../../program/log.ts'
import { describeFault, noAccess, noHistory, noPermission } from '../platform/faults.ts'
import { idOf } from '../platform/occasion.ts'
import { neededPermissions } from '../platform/permissions.ts'
import { mayNotAnswer } from './lacking.words.ts'
import { renderText } from './render.ts'
import type { Speaking, Words } from './speaking.ts'
import { escapeText } from './text.ts'

const day_ms = 86_400_000
/** Whoever asks again sooner knows. */
const asker_ms = 600_000

/** Those without which an answer to the message would fail, or arrive empty. */
export function lackedFor(message: Message): readonly PermissionsString[] {
  if (!message.inGuild()) return []
  const { channel, client } = message
  return channel.permissionsFor(client.user)?.missing([...neededPermissions(channel.isThread())]) ?? []
}

const refusals: Readonly<Record<number, PermissionsString>> = {
  [noAccess]: 'ViewChannel',
  [noPermission]: 'SendMessages',
  [noHistory]: 'ReadMessageHistory',
}

/** What Discord itself says that we lack. Throws the error where it says anything else. */
export function lackedAs(error: unknown): readonly PermissionsString[] {
  const permission = error instanceof DiscordAPIError ? refusals[Number(error.code)] : undefined
  if (permission === undefined) throw error
  return [permission]
}

export interface LackingParts {
  readonly speaking: Speaking
  readonly house: HouseMemory
  readonly log: Log
}

export type TellLacked = (message: Message<true>, lacked: readonly PermissionsString[], locale: Locale) => Promise<void>

export function createTellLacked({ speaking, house, log }: LackingParts): TellLacked {
  const isNewsForModerators = createSeldom(day_ms, Date.now)
  const isNewsForAsker = createSeldom(asker_ms, Date.now)

  return async ({ channel, author, guild, id, client }, lacked, locale) => {
    const said = moderatorCanChange(mayNotAnswer(channel.name, lacked.map(shown)))(locale)
    const what = [channel.id, ...lacked].join(' ')
    if (isNewsForAsker(`${author.id} ${what}`)) {
      const reached = await speaking.alone(idOf(author.id), { key: `${id} lacked`, message: renderText(said) })
      const sending: PermissionsString[] = [
        'ViewChannel',
        channel.isThread() ? 'SendMessagesInThreads' : 'SendMessages',
      ]
      // Words alone need less than an answer.
      if (!reached && channel.permissionsFor(client.user)?.has(sending))
        await speaking.inChannel(idOf(channel.id), { key: `${id} lacked`, message: { content: escapeText(said) } })
    }
    if (!isNewsForModerators(what)) return
    log.warn({ channel: channel.id, lacked }, 'permissions are missing to answer')
    const telling = tellModerators(guild, { key: `${id} moderators`, message: renderText(said) })
    await telling.catch(error => log.error({ error: describeFault(error) }, 'moderators were not told'))
  }

  /** In the channel that they chose, or where Discord itself tells them things, else their owner. */
  async function tellModerators({ id, publicUpdatesChannelId: updates, ownerId }: Guild, words: Words) {
    const { moderatorsRoom } = await house.rules(idOf(id))
    for (const channel of present([moderatorsRoom, updates === null ? undefined : idOf(updates)])) {
      try {
        return await speaking.inChannel(channel, words)
      } catch (error) {
        log.info({ error: describeFault(error) }, 'a channel for moderators is closed to us')
      }
    }
    return speaking.alone(idOf(ownerId), words)
  }
}

/** As Discord's settings name it. */
const shown = (permission: PermissionsString): string =>
  permission.replace(/(?<=[a-z])(?=[A-Z])/g, ' ').replace(' In ', ' in ')
