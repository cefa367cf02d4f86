// Which rooms we are in: those of the configuration, invites by its rule, upgrades followed.

import { type MatrixClient, MatrixError, type Room } from 'matrix-js-sdk'
import type { Persistence } from '../../ground/persistence.ts'
import { describeError, type Log } from '../../program/log.ts'
import { isNotedMove, noteDirect, noteMove, noteNotDirect } from '../client/account-data.ts'

/** Whether the rule ("anyone", or servers and people) lets `inviter` invite us. */
export function mayInvite(inviter: string, rule: readonly string[]): boolean {
  const server = inviter.slice(inviter.indexOf(':') + 1)
  return rule.includes('anyone') || rule.includes(inviter) || rule.includes(server)
}

export interface RoomParts {
  readonly client: MatrixClient
  readonly persistence: Persistence
  readonly rule: readonly string[]
  /** By id or address. */
  readonly rooms: readonly string[]
  readonly log: Log
}

/** Joins the rooms of the configuration, or knocks at them. */
export async function joinConfigured(parts: RoomParts): Promise<void> {
  for (const room of parts.rooms) await join(parts, room, room)
}

/** Joins where the rule allows, declines where it does not. A room that we were told to move to is always joined. */
export async function answerInvite(parts: RoomParts, room: Room): Promise<void> {
  const { client, rule, log } = parts
  const invite = room.getMember(room.myUserId)?.events.member
  const inviter = invite?.getSender()
  if (!invite || inviter === undefined) return
  if (!isNotedMove(client, room.roomId) && !mayInvite(inviter, rule)) {
    await client.leave(room.roomId)
    log.info({ room: room.roomId, inviter }, 'declined an invite: MATRIX_INVITES does not name the inviter')
    return
  }
  const joined = await join(parts, room.roomId, inviter)
  if (joined && invite.getContent().is_direct === true) await noteDirect(client, inviter, room.roomId)
}

/** Follows the tombstone of a room that was upgraded: joins the new room, then leaves the old one. */
export async function followUpgrade(parts: RoomParts, room: Room): Promise<void> {
  const { client } = parts
  const tombstone = room.currentState.getStateEvents('m.room.tombstone', '')
  const replacement: unknown = tombstone?.getContent().replacement_room
  if (typeof replacement !== 'string' || room.getMyMembership() !== 'join') return
  if (!isNotedMove(client, replacement)) await noteMove(client, room.roomId, replacement)
  const isThere = client.getRoom(replacement)?.getMyMembership() === 'join'
  if (isThere || (await join(parts, replacement, tombstone?.getSender() ?? ''))) await client.leave(room.roomId)
}

/** Of a room that we left, or were sent from, our account keeps nothing. */
export async function forgetRoom({ client, persistence }: RoomParts, room: Room): Promise<void> {
  if (!['leave', 'ban'].includes(room.getMyMembership())) return
  await noteNotDirect(client, room.roomId)
  await persistence.run(() => client.forget(room.roomId))
}

/**
 * By id or address, through the server of the room or person who points there. Where that is not allowed we knock, if the
 * room takes knocks. False where it cannot be, or not yet; the log says why.
 */
async function join({ client, persistence, log }: RoomParts, room: string, through: string): Promise<boolean> {
  const viaServers = [through.slice(through.indexOf(':') + 1)]
  try {
    await persistence.run(() => client.joinRoom(room, { viaServers }))
    return true
  } catch (error) {
    if (error instanceof MatrixError && error.errcode === 'M_FORBIDDEN' && (await knock(client, room, viaServers)))
      log.info({ room }, 'knocked at a room: somebody there lets the account in')
    else log.warn({ room, error: describeError(error) }, 'a room could not be joined: invite the account to it')
    return false
  }
}

/** At each start, until somebody lets us in: their invite is taken whatever the rule for invites says. */
async function knock(client: MatrixClient, room: string, viaServers: string[]): Promise<boolean> {
  try {
    const { room_id } = await client.knockRoom(room, { viaServers })
    if (!isNotedMove(client, room_id)) await noteMove(client, room_id, room_id)
    return true
  } catch {
    return false
  }
}
