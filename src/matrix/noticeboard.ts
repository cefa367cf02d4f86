// The noticeboard of Matrix: messages, edits and the list of pinned messages of a room.

// Parts of the SDK take the console for their own when they are loaded.
import './client/quiet.ts'
import { randomUUID } from 'node:crypto'
import { EventType, type MatrixClient, MatrixError, type Room } from 'matrix-js-sdk'
import type { Missing, Notice, Noticeboard, Posted } from '../assistant/cards/noticeboard.ts'
import type { Reply } from '../assistant/reply.ts'
import { linkTo } from './client/link.ts'
import { idOf, matrixIdOf } from './client/occasion.ts'
import { missingPermission } from './client/room-facts.ts'
import { editContent } from './messages/content.ts'
import { type Rendered, renderReply, withLinks } from './messages/render.ts'
import { struck } from './messages/struck.ts'
import { leftRoom, noDirectRoom } from './noticeboard.words.ts'
import type { MatrixSurface } from './surface.ts'

/** `open` gives the session while there is one. */
export function createMatrixNoticeboard(open: MatrixSurface['session']): Noticeboard {
  let pinning: Promise<unknown> = Promise.resolve()

  function session() {
    const now = open()
    if (!now) throw new Error('Matrix is not connected')
    return now
  }

  /** Nothing is offered below it: reactions open layers of an answer, which this is none. */
  const rendered = (reply: Reply): Rendered => renderReply(reply, { once: true })

  async function post(place: string, { reply, key, calls, links = [] }: Notice): Promise<Posted | Missing> {
    const { client, sender } = session()
    const roomId = matrixIdOf(place)
    const room = joinedRoom(client, roomId)
    if (!room) return { missing: leftRoom }
    const missing = missingPermission(room, 'send messages')
    if (missing !== undefined) return { missing }
    const content = {
      ...withLinks(rendered(reply), links),
      'm.mentions': calls === undefined ? {} : { user_ids: calls.map(matrixIdOf) },
    }
    const eventId = await sender.send(roomId, 'm.room.message', content, key)
    return { place, message: idOf(eventId), link: linkTo(client, roomId, eventId) }
  }

  /** The list is one for all who pin: read from the server, changed, written; ours one after another. */
  function changePins(roomId: string, change: (pins: readonly string[]) => readonly string[]): Promise<void> {
    const { client } = session()
    const work = async () => {
      const before = await pinsOf(client, roomId)
      const pins = change(before)
      if (pins.join() === before.join()) return
      await client.sendStateEvent(roomId, EventType.RoomPinnedEvents, { pinned: [...pins] })
    }
    const done = pinning.then(work, work)
    pinning = done.catch(() => {})
    return done
  }

  return {
    ready: () => open() !== undefined,
    post,
    edit: async ({ place, message }, reply) => {
      const { client, sender } = session()
      const [roomId, eventId] = [matrixIdOf(place), matrixIdOf(message)]
      const room = joinedRoom(client, roomId)
      if (!room || !(await isThere(client, roomId, eventId))) return 'gone'
      await sender.send(roomId, 'm.room.message', editContent(rendered(reply), eventId), randomUUID())
      return 'edited'
    },
    pin: async ({ place, message }) => {
      const roomId = matrixIdOf(place)
      const room = joinedRoom(session().client, roomId)
      const missing = room ? missingPermission(room, 'change the pinned messages') : leftRoom
      if (missing !== undefined) return { missing }
      const eventId = matrixIdOf(message)
      await changePins(roomId, pins => (pins.includes(eventId) ? pins : [...pins, eventId]))
      return 'pinned'
    },
    strike: async ({ place, message }, why) => {
      const { client, sender } = session()
      const [roomId, eventId] = [matrixIdOf(place), matrixIdOf(message)]
      const room = joinedRoom(client, roomId)
      if (!room || !(await isThere(client, roomId, eventId))) return 'gone'
      const answer =
        room.findEventById(eventId) ?? client.getEventMapper()(await client.fetchRoomEvent(roomId, eventId))
      await client.decryptEventIfNeeded(answer)
      if (answer.getSender() !== client.getUserId()) return 'gone'
      const content = editContent(struck(answer, why), eventId)
      await sender.send(roomId, 'm.room.message', content, `${eventId} struck`)
      return { link: linkTo(client, roomId, eventId) }
    },
    remove: async ({ place, message }) => {
      const { client } = session()
      const [roomId, eventId] = [matrixIdOf(place), matrixIdOf(message)]
      const room = joinedRoom(client, roomId)
      if (!room) return
      if (missingPermission(room, 'change the pinned messages') === undefined) {
        await changePins(roomId, pins => pins.filter(pin => pin !== eventId))
      }
      if (await isThere(client, roomId, eventId)) await client.redactEvent(roomId, eventId)
    },
    direct: async (person, notice) => {
      const room = await session().directRoom(matrixIdOf(person))
      if (!room) return { missing: noDirectRoom }
      const posted = await post(idOf(room.roomId), notice)
      return 'missing' in posted ? posted : 'sent'
    },
  }
}

function joinedRoom(client: MatrixClient, roomId: string): Room | undefined {
  const room = client.getRoom(roomId)
  return room?.getMyMembership() === 'join' ? room : undefined
}

async function pinsOf(client: MatrixClient, roomId: string): Promise<readonly string[]> {
  const content = await orWithout(client.getStateEvent(roomId, EventType.RoomPinnedEvents, ''), {})
  const { pinned } = content as { pinned?: unknown }
  return Array.isArray(pinned) ? pinned.filter(pin => typeof pin === 'string') : []
}

/** A deleted message stays as an empty shell that says who deleted it. */
async function isThere(client: MatrixClient, roomId: string, eventId: string): Promise<boolean> {
  const event = await orWithout(client.fetchRoomEvent(roomId, eventId), undefined)
  return event !== undefined && event.unsigned?.redacted_because === undefined
}

async function orWithout<T, U>(request: Promise<T>, without: U): Promise<T | U> {
  try {
    return await request
  } catch (error) {
    if (error instanceof MatrixError && error.errcode === 'M_NOT_FOUND') return without
    throw error
  }
}
