// What has to be known of a room: when we joined, whether it is direct, and who may do what, by the SDK's own rules.

import { type MatrixClient, type Room, RoomType } from 'matrix-js-sdk'
import type { Said } from '../../ground/locale.ts'
import { isNotedDirect } from './account-data.ts'
import { type Deed, permissionWanted } from './room-facts.words.ts'

/** Undefined while we are not in the room. */
export function joinedAt_ms(room: Room): number | undefined {
  const event = room.getMember(room.myUserId)?.events.member
  if (event?.getContent().membership !== 'join') return undefined
  // A change of our name or picture is not a join; the real one was longer ago than any question is accepted.
  return event.getPrevContent().membership === 'join' ? 0 : event.getTs()
}

/** One person and we: noted as direct when we were invited, or a room of two that has no name. */
export function isDirect(client: MatrixClient, room: Room): boolean {
  if (room.getInvitedAndJoinedMemberCount() > 2 || room.isSpaceRoom()) return false
  const named = room.currentState.getStateEvents('m.room.name', '')?.getContent().name
  return isNotedDirect(client, room.roomId) || (!named && room.getCanonicalAlias() === null)
}

/** The space of a room, where both say so and we are in it: one of them alone could claim another's community. */
export function spaceOf(client: MatrixClient, room: Room): Room | undefined {
  const parents = room.currentState.getStateEvents('m.space.parent')
  return (
    parents
      .map(parent => client.getRoom(parent.getStateKey()))
      .find(
        space =>
          space?.getType() === RoomType.Space &&
          space.getMyMembership() === 'join' &&
          Array.isArray(space.currentState.getStateEvents('m.space.child', room.roomId)?.getContent().via),
      ) ?? undefined
  )
}

/** Whoever may remove others' messages in a room, its creators among them, moderates it. */
export function moderates(room: Room, person: string): boolean {
  const member = room.getMember(person)
  if (member?.membership !== 'join') return false
  return room.currentState.hasSufficientPowerLevelFor('redact', member.powerLevel)
}

const eventsOf: Readonly<Record<Deed, (room: Room) => { readonly type: string; readonly state: boolean }>> = {
  'send messages': room => ({
    type: room.hasEncryptionStateEvent() ? 'm.room.encrypted' : 'm.room.message',
    state: false,
  }),
  'change the pinned messages': () => ({ type: 'm.room.pinned_events', state: true }),
}

/** What a moderator has to grant us before we can do it; undefined where we can. */
export function missingPermission(room: Room, deed: Deed): Said | undefined {
  const { currentState: state, myUserId } = room
  const { type, state: isState } = eventsOf[deed](room)
  const may = isState ? state.maySendStateEvent(type, myUserId) : state.maySendEvent(type, myUserId)
  if (may) return undefined
  const levels = state.getStateEvents('m.room.power_levels', '')?.getContent() ?? {}
  const needed = levels.events?.[type] ?? (isState ? (levels.state_default ?? 50) : (levels.events_default ?? 0))
  const mine = room.getMember(myUserId)?.powerLevel ?? 0
  return permissionWanted(deed, room.name, Number(needed), mine)
}
