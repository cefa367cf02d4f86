// Says things in a room: in answer to a message, in place of an earlier answer, or elsewhere where we may not.

import { setTimeout as sleep } from 'node:timers/promises'
import type { MatrixClient, MatrixEvent, Room } from 'matrix-js-sdk'
import { moderatorCanChange } from '../../assistant/private.words.ts'
import { createLanes } from '../../ground/lanes.ts'
import { english, type Locale, type Said } from '../../ground/locale.ts'
import { describeError, type Log } from '../../program/log.ts'
import { directRoomWith } from '../client/account-data.ts'
import { missingPermission } from '../client/room-facts.ts'
import { answerContent, editContent } from './content.ts'
import type { Call } from './message.ts'
import { type Rendered, renderText } from './render.ts'
import type { Sender } from './send.ts'

export interface Speaker {
  /** Where not, whoever wants us to is told why, once per room. */
  maySpeak(room: Room, asker: string): Promise<boolean>
  /**
   * Gives the answer's id; undefined where we may not speak. Said once for each `key`, which is the id of what calls
   * for it when absent.
   */
  answer(call: Call, room: Room, rendered: Rendered, key?: string): Promise<string | undefined>
  /** The same with words of our own. */
  tell(call: Call, room: Room, said: Said, key?: string): Promise<string | undefined>
  /** Puts the signs below an answer, for people to tap; where that fails the answer goes without. */
  offer(room: Room, answerId: string, signs: readonly string[]): void
  /** Puts new words in the place of an answer; `because` is the event that calls for it. */
  replace(because: MatrixEvent, room: Room, answerId: string, asker: string, rendered: Rendered): Promise<void>
  takeAway(room: Room, answerId: string): Promise<void>
}

/** A sign is tried so often, with pauses that grow, for half a minute in all. */
const [mostTries, pause_ms] = [8, 250]

/** The locale of the community that a room is in. */
export type LocaleOf = (room: Room, asker: string) => Promise<Locale>

export function createSpeaker(client: MatrixClient, sender: Sender, localeOf: LocaleOf, log: Log): Speaker {
  const told = new Set<string>()
  /** Answers that are being sent: a server takes so many events at a time, and they go first. */
  let answering = 0
  async function sendFirst<T>(sending: () => Promise<T>): Promise<T> {
    answering += 1
    try {
      return await sending()
    } finally {
      answering -= 1
    }
  }

  async function sign(room: Room, answerId: string, key: string): Promise<void> {
    const content = { 'm.relates_to': { rel_type: 'm.annotation', event_id: answerId, key } }
    for (let tries = 1; ; tries += 1) {
      while (answering > 0) await sleep(pause_ms)
      try {
        await sender.trySending(room.roomId, 'm.reaction', content, `${answerId} ${key}`)
        return
      } catch (error) {
        if (tries === mostTries) throw error
        await sleep(tries * tries * pause_ms)
      }
    }
  }

  /** One sign of a room after another. */
  const offering = createLanes(error => log.info({ error: describeError(error) }, 'an answer goes without its signs'))

  /** In the log, and to the asker where we have direct messages with them. */
  async function tellMissing(what: Said, room: Room, asker: string): Promise<void> {
    if (told.has(room.roomId)) return
    told.add(room.roomId)
    log.warn({ room: room.roomId }, what(english('.')))
    const elsewhere = directRoomWith(client, asker)
    if (elsewhere === undefined || client.getRoom(elsewhere)?.getMyMembership() !== 'join') return
    const locale = await localeOf(room, asker)
    const text = moderatorCanChange(what)(locale)
    await sender.send(elsewhere, 'm.room.message', renderText(text), `${room.roomId} ${what(locale)}`)
  }

  async function maySpeak(room: Room, asker: string): Promise<boolean> {
    const missing = missingPermission(room, 'send messages')
    if (missing !== undefined) await tellMissing(missing, room, asker)
    return missing === undefined
  }

  const answer: Speaker['answer'] = async ({ event, asker, about, thread }, room, rendered, key = event) => {
    if (!(await maySpeak(room, asker))) return undefined
    const content = answerContent(rendered, { question: about, asker, thread })
    return sendFirst(() => sender.send(room.roomId, 'm.room.message', content, key))
  }

  return {
    maySpeak,
    answer,
    tell: async (call, room, said, key) => answer(call, room, renderText(said(await localeOf(room, call.asker))), key),
    offer: (room, answerId, signs) => {
      offering.add(room.roomId, async () => {
        for (const key of signs) await sign(room, answerId, key)
      })
    },
    async replace(because, room, answerId, asker, rendered) {
      const content = editContent(rendered, answerId, asker)
      await sendFirst(() => sender.send(room.roomId, 'm.room.message', content, because.getId() ?? ''))
    },
    takeAway: (room, answerId) => sender.redact(room.roomId, answerId),
  }
}
