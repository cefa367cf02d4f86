// Which rooms we are in: invites by the rule of the configuration, upgrades followed.

import { setTimeout as sleep } from 'node:timers/promises'
import type { MatrixClient, Room } from 'matrix-js-sdk'
import { describeError, type Log } from '../log.ts'
import { isNotedMove, noteDirect, noteMove } from './account-data.ts'
import { pauseAfter } from './send.ts'

/** Whether the rule ("anyone", or servers and people) lets `inviter` invite us. */
export function mayInvite(inviter: string, rule: readonly string[]): boolean {
  const server = inviter.slice(inviter.indexOf(':') + 1)
  return rule.includes('anyone') || rule.includes(inviter) || rule.includes(server)
}

/** Joins where the rule allows, declines where it does not. A room that we were told to move to is always joined. */
export async function answerInvite(
  client: MatrixClient,
  room: Room,
  rule: readonly string[],
  log: Log,
): Promise<void> {
  const invite = room.getMember(room.myUserId)?.events.member
  const inviter = invite?.getSender()
  if (!invite || inviter === undefined) return
  if (!isNotedMove(client, room.roomId) && !mayInvite(inviter, rule)) {
    await client.leave(room.roomId)
    log.info({ room: room.roomId, inviter }, 'declined an invite: MATRIX_INVITES does not name the inviter')
    return
  }
  const joined = await join(client, room.roomId, inviter, log)
  if (joined && invite.getContent().is_direct === true) await noteDirect(client, inviter, room.roomId)
}

/** Follows the tombstone of a room that was upgraded: joins the new room, then leaves the old one. */
export async function followUpgrade(client: MatrixClient, room: Room, log: Log): Promise<void> {
  const tombstone = room.currentState.getStateEvents('m.room.tombstone', '')
  const replacement: unknown = tombstone?.getContent().replacement_room
  if (typeof replacement !== 'string' || room.getMyMembership() !== 'join') return
  if (!isNotedMove(client, replacement)) await noteMove(client, room.roomId, replacement)
  const sender = tombstone?.getSender() ?? ''
  const joined =
    client.getRoom(replacement)?.getMyMembership() === 'join' ||
    (await join(client, replacement, sender, log))
  if (joined) await client.leave(room.roomId)
}

const mostTries = 5

/** Through the server of the person who points there. False where it cannot be; the log says why. */
async function join(client: MatrixClient, roomId: string, through: string, log: Log): Promise<boolean> {
  const server = through.slice(through.indexOf(':') + 1)
  for (let attempt = 1; ; attempt += 1) {
    try {
      await client.joinRoom(roomId, { viaServers: [server] })
      return true
    } catch (error) {
      const pause = pauseAfter(error, attempt)
      if (pause !== undefined && attempt < mostTries) {
        await sleep(pause)
        continue
      }
      log.warn(
        { room: roomId, error: describeError(error) },
        'a room could not be joined: invite the account to it',
      )
      return false
    }
  }
}
