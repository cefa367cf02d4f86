// What we do about what we hear in a room: answer it, let the answer follow its edits, open a layer of it, leave.

import type { MatrixEvent, Room } from 'matrix-js-sdk'
import { tellsDanger, tellsEmergency } from '../../assistant/asking/danger-first.ts'
import type { Way } from '../../assistant/due/inbox.ts'
import { lookedUp } from '../../assistant/lookup.ts'
import { matrixIdOf } from '../client/occasion.ts'
import { isDirect, missingPermission, moderates } from '../client/room-facts.ts'
import type { Asking } from '../messages/asking.ts'
import { callOf } from '../messages/message.ts'
import { tapIn } from '../messages/reactions.ts'
import { cameWhileAway, leavingNow, onlyModeratorsSendAway } from '../messages/told.words.ts'
import { type AnsweringParts, askedBy, createAnswering } from './answering.ts'
import { createEdits } from './edits.ts'
import { createGoingRound } from './going-round.ts'
import { createFollow } from './taps.ts'

export interface Conversation extends Pick<Way, 'deliver'> {
  /** Does what an accepted message or reaction calls for; encrypted ones come decrypted. */
  converse(event: MatrixEvent, room: Room): Promise<void>
  /** Whether it tells us of a fire, an injury, or a pack that is not to be used. */
  isUrgent(event: MatrixEvent, room: Room): boolean
}

/** Whoever asked longer ago has found another answer. */
const oldest_ms = 86_400_000

export function createConversation(parts: AnsweringParts): Conversation {
  const { client, log, speaker } = parts
  const goingRound = createGoingRound()
  const answering = createAnswering(parts)
  const { ask, askingIn, give, meant, questionIn, tell } = answering
  const edits = createEdits(answering, parts)
  const follow = createFollow(answering, parts)

  async function converse(event: MatrixEvent, room: Room): Promise<void> {
    const relation = event.getRelation()
    const isMute = missingPermission(room, 'send messages') !== undefined
    if (event.getType() === 'm.room.redaction') return edits.takenAway(event, room, event.getAssociatedId() ?? '')
    if (event.getType() === 'm.reaction') {
      const tap = isMute || isOld(event) ? undefined : tapIn(relation?.key ?? '')
      if (tap) await follow(event, room, relation?.event_id, tap)
    } else if (relation?.rel_type === 'm.replace' && relation.event_id !== undefined && !isMute) {
      await edits.edited(event, room, relation.event_id, original =>
        hearMessage(original, room, askingIn(event, room, original)),
      )
    } else {
      await hearMessage(event, room, askingIn(event, room))
    }
  }

  async function hearMessage(event: MatrixEvent, room: Room, asking: Asking | undefined): Promise<void> {
    if (!asking) return
    const { addressed, words, repliesTo } = asking
    if (addressed && words.toLowerCase() === 'leave') return leave(event, room)
    const tap = tapIn(words)
    const before = tap && (await lookedUp(meant.answerBefore(asking)))
    if (tap && (await follow(event, room, before ? matrixIdOf(before.answerMessage) : repliesTo, tap))) return
    const question = await questionIn(asking)
    if (question === undefined) return
    const person = event.getSender() ?? ''
    // An emergency reaches the moderators all the same.
    if (!tellsEmergency(words) && !(await speaker.maySpeak(room, person))) return
    if (isOld(event) && !tellsEmergency(words)) return tell(callOf(event, room), room, cameWhileAway)
    if (goingRound.again(room.roomId, person, words, event.getTs())) {
      return log.warn(
        { room: room.roomId, person },
        'the same goes round and is not answered: name bots in MATRIX_BOTS',
      )
    }
    const asked = askedBy(client, event, room)
    const reply = await ask(question, room, person, asked)
    await give(asked, room, reply)
    goingRound.answered(room.roomId, person, reply.headline)
  }

  async function leave(event: MatrixEvent, room: Room): Promise<void> {
    const may = isDirect(client, room) || moderates(room, event.getSender() ?? '')
    await tell(callOf(event, room), room, may ? leavingNow : onlyModeratorsSendAway)
    if (may) await client.leave(room.roomId)
  }

  return {
    converse,
    isUrgent(event, room) {
      const asking = askingIn(event, room)
      return asking?.addressed === true && tellsDanger(asking.words)
    },
    async deliver({ asked, place }, reply) {
      const room = client.getRoom(matrixIdOf(place.id))
      if (!asked || room?.getMyMembership() !== 'join') return { closed: place.id }
      await give(asked, room, reply)
      return 'delivered'
    },
  }
}

const isOld = (event: MatrixEvent): boolean => Date.now() - event.getTs() > oldest_ms
