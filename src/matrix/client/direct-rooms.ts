// The direct room with a person: the one that there is, or a new one.

import {
  ClientEvent,
  EventType,
  KnownMembership,
  type MatrixClient,
  MatrixError,
  Preset,
  type Room,
} from 'matrix-js-sdk'
import type { Persistence } from '../../ground/persistence.ts'
import { describeError, type Log } from '../../program/log.ts'
import { directRoomWith, noteDirect } from './account-data.ts'
import { isDirect } from './room-facts.ts'

/** Undefined where the person has left it, or the server lets us open none. */
export type DirectRoom = (person: string) => Promise<Room | undefined>

export function createDirectRoom(client: MatrixClient, persistence: Persistence, log: Log): DirectRoom {
  const underway = new Map<string, Promise<Room | undefined>>()

  const has = (room: Room, person: string): boolean =>
    ['join', 'invite'].includes(room.getMember(person)?.membership ?? '')

  async function find(person: string): Promise<Room | undefined> {
    const joined = client.getRooms().filter(room => room.getMyMembership() === 'join')
    const noted = joined.find(room => room.roomId === directRoomWith(client, person))
    if (noted) return has(noted, person) ? noted : undefined
    return joined.find(room => isDirect(client, room) && has(room, person)) ?? open(person)
  }

  async function open(person: string): Promise<Room | undefined> {
    const encryption = { type: EventType.RoomEncryption, state_key: '', content: { algorithm: 'm.megolm.v1.aes-sha2' } }
    const wanted = { preset: Preset.PrivateChat, initial_state: [encryption] }
    try {
      const { room_id } = await persistence.run(() => client.createRoom(wanted))
      await invite(room_id, person)
      await noteDirect(client, person, room_id)
      return await known(room_id)
    } catch (error) {
      if (!(error instanceof MatrixError)) throw error
      log.warn({ error: describeError(error) }, 'a direct room could not be opened')
      return undefined
    }
  }

  /** Where the room invites as it is made and that is refused, nobody tells us which room we stay alone in. */
  async function invite(roomId: string, person: string): Promise<void> {
    const membership = { membership: KnownMembership.Invite, is_direct: true }
    try {
      await persistence.run(() => client.sendStateEvent(roomId, EventType.RoomMember, membership, person))
    } catch (error) {
      await client.leave(roomId)
      throw error
    }
  }

  /** Until a sync has told of it nothing is encrypted in it. */
  const known = (roomId: string): Promise<Room> =>
    new Promise(resolve => {
      const look = () => {
        const room = client.getRoom(roomId)
        if (!room?.hasEncryptionStateEvent()) return
        client.off(ClientEvent.Sync, look)
        resolve(room)
      }
      client.on(ClientEvent.Sync, look)
      look()
    })

  return person => {
    const finding = underway.get(person) ?? find(person).finally(() => underway.delete(person))
    underway.set(person, finding)
    return finding
  }
}
