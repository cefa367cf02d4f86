// What we do about what we hear in a room: answer it, answer its edit in place, open or close a layer of it, leave.

import type { MatrixClient, MatrixEvent, Room } from 'matrix-js-sdk'
import type { Way } from '../../assistant/due/inbox.ts'
import type { Layer } from '../../assistant/layers/opened.ts'
import type { Asked } from '../../assistant/occasion.ts'
import type { Reply } from '../../assistant/reply.ts'
import { amendedQuestion } from '../../assistant/running/amend.ts'
import { commandAtStart } from '../../language/sentence/typed.ts'
import type { AnsweredQuestion } from '../../memory/memory.ts'
import { describeError } from '../../program/log.ts'
import { idOf, matrixIdOf, occasionOf } from '../client/occasion.ts'
import type { MatrixParts } from '../client/parts.ts'
import { isDirect, moderates } from '../client/room-facts.ts'
import { type Asking, readAsking } from '../messages/asking.ts'
import type { SendDocuments } from '../messages/documents.ts'
import { type Call, callOf, messageIn } from '../messages/message.ts'
import type { ShowPictures } from '../messages/pictures.ts'
import { signsOf, type Tap, tapIn } from '../messages/reactions.ts'
import { renderReply } from '../messages/render.ts'
import type { Speaker } from '../messages/speak.ts'
import { createSuggested } from '../messages/suggested.ts'
import { leavingNow, onlyModeratorsSendAway } from '../messages/told.words.ts'

export interface Conversation extends Pick<Way, 'deliver'> {
  /** Does what an accepted message or reaction calls for; encrypted ones come decrypted. */
  converse(event: MatrixEvent, room: Room): Promise<void>
}

/** An answer that could not be sent for a day is of no use. */
const openFor_s = 24 * 3600
const askedBy = (event: MatrixEvent, room: Room, about?: string): Asked => {
  const way = callOf(event, room, about)
  return { id: idOf(way.event), at_ms: event.getTs(), way, openFor_s }
}

/** An edit that comes later than this leaves the answer as it is. */
const latestEdit_ms = 300_000

type ConversationParts = Pick<MatrixParts, 'settings' | 'assistant' | 'answered' | 'log'> & {
  readonly client: MatrixClient
  readonly speaker: Speaker
  readonly showPictures: ShowPictures
  readonly sendDocuments: SendDocuments
}

export function createConversation(parts: ConversationParts): Conversation {
  const { client, settings, assistant, answered, log, speaker, showPictures, sendDocuments } = parts
  const self = client.getSafeUserId()
  const suggested = createSuggested()

  async function converse(event: MatrixEvent, room: Room): Promise<void> {
    const relation = event.getRelation()
    if (event.getType() === 'm.reaction') {
      const tap = tapIn(relation?.key ?? '')
      if (tap) await follow(event, room, relation?.event_id, tap)
    } else if (relation?.rel_type === 'm.replace' && relation.event_id !== undefined) {
      await hearEdit(event, room, relation.event_id)
    } else {
      await hearMessage(event, room, askingIn(event, room, event))
    }
  }

  return {
    converse,
    async deliver({ asked, place }, reply) {
      const room = client.getRoom(matrixIdOf(place.id))
      if (!asked || room?.getMyMembership() !== 'join') return { closed: place.id }
      await giveAnswer(asked, room, reply)
      return 'delivered'
    },
  }

  async function hearMessage(event: MatrixEvent, room: Room, asking: Asking | undefined): Promise<void> {
    if (!asking) return
    if (asking.addressed && asking.words.toLowerCase() === 'leave') return leave(event, room)
    const tap = tapIn(asking.words)
    if (tap && (await follow(event, room, asking.repliesTo, tap))) return
    const reply = await replyTo(event, room, asking)
    if (reply) await giveAnswer(askedBy(event, room), room, reply)
  }

  async function giveAnswer(asked: Asked, room: Room, reply: Reply): Promise<void> {
    const call = asked.way as Call
    const answer = await speaker.answer(call, room, rendered(reply))
    if (answer === undefined) return assistant.delivered({ asked })
    const given: AnsweredQuestion = {
      place: idOf(room.roomId),
      askedBy: idOf(call.asker),
      questionMessage: asked.id,
      answerMessage: idOf(answer),
      question: reply.question ?? '',
      answeredAt: new Date(),
    }
    await note(given)
    suggested.keep(answer, reply.followUps)
    if (!changesWhatIsKept(reply)) {
      speaker.offer(room, answer, signsOf(reply))
    }
    await showPictures(call, room, given, reply)
    await sendDocuments(call, room, reply)
    await assistant.delivered({ asked })
  }

  /** Opens a layer of our answer, closes it, or asks what the answer suggested; false where it is no such answer. */
  async function follow(event: MatrixEvent, room: Room, answerId: string | undefined, tap: Tap): Promise<boolean> {
    if (answerId === undefined) return false
    if (tap.kind !== 'ask') return showAnew(event, room, answerId, tap.kind === 'layer' ? tap.layer : undefined)
    const question = suggested.questionsOf(answerId)[tap.index]
    if (question === undefined) return false
    const asked = askedBy(event, room, answerId)
    const occasion = occasionOf(client, room, event.getSender() ?? '')
    await giveAnswer(asked, room, await assistant.answer(question, { ...occasion, asked }))
    return true
  }

  /** The answer is edited as the question was; a message that was no question before is answered now. */
  async function hearEdit(event: MatrixEvent, room: Room, questionId: string): Promise<void> {
    const original = room.findEventById(questionId)
    const earlier = await answered.byQuestion(idOf(questionId))
    const asker = earlier?.askedBy ?? (original && idOf(original.getSender() ?? ''))
    const askedAt_ms = earlier?.answeredAt.getTime() ?? original?.getTs() ?? 0
    if (asker !== idOf(event.getSender() ?? '') || Date.now() - askedAt_ms > latestEdit_ms) return

    const asking = askingIn(event, room, original)
    if (!earlier) return original && hearMessage(original, room, asking)
    const reply = asking && (await replyTo(event, room, asking))
    if (!reply) return
    const given = { ...earlier, question: reply.question ?? '' }
    await replace(event, room, given, reply)
    await showPictures(callOf(event, room, questionId), room, given, reply)
    await assistant.delivered({ asked: askedBy(event, room) })
  }

  async function showAnew(event: MatrixEvent, room: Room, answerId: string, open: Layer | undefined): Promise<boolean> {
    const earlier = await answered.byAnswer(idOf(answerId))
    if (!earlier || earlier.place !== idOf(room.roomId)) return false
    if (mayAskAgain(earlier.question)) {
      const occasion = occasionOf(client, room, matrixIdOf(earlier.askedBy))
      await replace(event, room, earlier, await assistant.answer(earlier.question, occasion), open)
    }
    return true
  }

  /** Not what could not be read, nor what would change again what is kept. */
  function mayAskAgain(question: string): boolean {
    const { registry } = assistant
    const command = commandAtStart(question, registry.vocabulary)
    return command !== undefined && !registry.get(command.name).changes
  }

  async function replace(
    because: MatrixEvent,
    room: Room,
    answer: AnsweredQuestion,
    reply: Reply,
    open?: Layer,
  ): Promise<void> {
    const words = rendered(reply, open)
    await speaker.replace(because, room, matrixIdOf(answer.answerMessage), matrixIdOf(answer.askedBy), words)
    await note(answer)
  }

  function note(given: AnsweredQuestion): Promise<void> {
    return answered.record(given).catch(error => log.error({ error: describeError(error) }, 'an answer was not noted'))
  }

  async function leave(event: MatrixEvent, room: Room): Promise<void> {
    const may = isDirect(client, room) || moderates(room, event.getSender() ?? '')
    await speaker.tell(event, room, may ? leavingNow : onlyModeratorsSendAway)
    if (may) await client.leave(room.roomId)
  }

  /** Undefined where the message is talk among people. */
  async function replyTo(event: MatrixEvent, room: Room, asking: Asking): Promise<Reply | undefined> {
    const { repliesTo, words, addressed } = asking
    const { vocabulary } = assistant.registry
    const amended = repliesTo && (await amendedQuestion(idOf(repliesTo), words, answered, vocabulary))
    const question = amended || (addressed ? words || 'help' : undefined)
    if (question === undefined) return undefined
    const occasion = occasionOf(client, room, event.getSender() ?? '')
    return assistant.answer(question, { ...occasion, asked: askedBy(event, room) })
  }

  function askingIn(event: MatrixEvent, room: Room, original: MatrixEvent | undefined): Asking | undefined {
    const message = messageIn(event, original)
    const name = room.getMember(self)?.name ?? self
    return message && readAsking(message, { prefix: settings.prefix, self, name, direct: isDirect(client, room) })
  }

  function changesWhatIsKept({ command }: Reply): boolean {
    return assistant.registry.find(command)?.changes ?? false
  }

  function rendered(reply: Reply, open?: Layer) {
    return renderReply(reply, { open, once: changesWhatIsKept(reply) })
  }
}
