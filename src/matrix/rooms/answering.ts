// Has a question answered in its room, and notes which message answered which.

import type { MatrixClient, MatrixEvent, Room } from 'matrix-js-sdk'
import type { Layer } from '../../assistant/layers/opened.ts'
import { lookedUp } from '../../assistant/lookup.ts'
import type { Asked } from '../../assistant/occasion.ts'
import { isPersonal } from '../../assistant/personal.ts'
import { answeredInPrivate, notReached } from '../../assistant/private.words.ts'
import type { Reply } from '../../assistant/reply.ts'
import { type Done, doneBy, mayAskAgain } from '../../assistant/running/after-edit.ts'
import { amended } from '../../assistant/running/amend.ts'
import type { Said } from '../../ground/locale.ts'
import type { Question } from '../../language/sentence/question.ts'
import type { AnsweredQuestion } from '../../memory/memory.ts'
import { describeError } from '../../program/log.ts'
import type { DirectRoom } from '../client/direct-rooms.ts'
import { linkTo } from '../client/link.ts'
import { idOf, matrixIdOf, occasionOf } from '../client/occasion.ts'
import type { MatrixParts } from '../client/parts.ts'
import { isDirect } from '../client/room-facts.ts'
import { type Asking, readAsking } from '../messages/asking.ts'
import type { SendDocuments } from '../messages/documents.ts'
import { createHint } from '../messages/hints.ts'
import { type Call, callOf, messageIn } from '../messages/message.ts'
import { partOf } from '../messages/parts.ts'
import type { ShowPictures } from '../messages/pictures.ts'
import { renderReply, signsOf } from '../messages/render.ts'
import type { Speaker } from '../messages/speak.ts'
import { createSuggested } from '../messages/suggested.ts'
import { createMeant } from './meant.ts'

/** An answer that could not be sent for a day is of no use. */
const openFor_s = 24 * 3600

export const askedBy = (client: MatrixClient, event: MatrixEvent, room: Room, about?: string): Asked => {
  const way = callOf(event, room, about)
  const link = linkTo(client, room.roomId, about ?? way.event)
  return { id: idOf(way.event), at_ms: event.getTs(), way, openFor_s, link }
}

export type AnsweringParts = Pick<MatrixParts, 'settings' | 'assistant' | 'answered' | 'log'> & {
  readonly client: MatrixClient
  readonly speaker: Speaker
  readonly showPictures: ShowPictures
  readonly sendDocuments: SendDocuments
  readonly directRoom: DirectRoom
}

export type Answering = ReturnType<typeof createAnswering>

export function createAnswering(parts: AnsweringParts) {
  const { client, settings, assistant, answered, log, speaker, showPictures, sendDocuments, directRoom } = parts
  const { registry } = assistant
  const self = client.getSafeUserId()
  const meant = createMeant(answered)
  const suggested = createSuggested()
  const hint = createHint(settings.prefix, registry)

  const changesWhatIsKept = ({ command }: Reply): boolean => registry.find(command)?.changes ?? false
  const rendered = (reply: Reply, room: Room, open?: Layer) =>
    renderReply(reply, { open, once: changesWhatIsKept(reply), hint: isDirect(client, room) ? undefined : hint })

  const note = (given: AnsweredQuestion): Promise<void> =>
    answered.record(given).catch(error => log.error({ error: describeError(error) }, 'an answer was not noted'))

  const givenIn = (room: Room, { event, asker }: Call, answer: string): AnsweredQuestion => ({
    place: idOf(room.roomId),
    askedBy: idOf(asker),
    questionMessage: idOf(event),
    answerMessage: idOf(answer),
    question: '',
    answeredAt: new Date(),
  })

  const tell = async (call: Call, room: Room, said: Said): Promise<void> => {
    const answer = await speaker.tell(call, room, said)
    if (answer !== undefined) await note(givenIn(room, call, answer))
  }

  /** What is for the asker alone, asked in a room in which others read along. */
  async function givePrivately(asked: Asked, room: Room, reply: Reply, question: string): Promise<void> {
    const call = asked.way as Call
    const direct = await directRoom(call.asker)
    if (!direct) {
      await tell(call, room, notReached)
      return assistant.delivered({ asked })
    }
    const occasion = { ...occasionOf(client, room, call.asker), place: { id: idOf(direct.roomId), direct: true } }
    const alone = mayAskAgain(reply.question ?? '', registry)
      ? await assistant.answer(reply.question ?? '', occasion)
      : reply
    const line = await speaker.tell(call, room, answeredInPrivate, `${call.event} told`)
    if (line !== undefined) await note({ ...givenIn(room, call, line), questionMessage: partOf(question, 'line', 0) })
    await give({ ...asked, way: { event: call.event, asker: call.asker } }, direct, alone, question)
  }

  /** Gives the answer to `question`, which is what asked where it is absent. */
  async function give(asked: Asked, room: Room, reply: Reply, question = asked.id): Promise<void> {
    const call = asked.way as Call
    if (reply.tooFast === 'again') return
    if (isPersonal(reply.command) && !isDirect(client, room)) return givePrivately(asked, room, reply, question)
    const answer = await speaker.answer(call, room, rendered(reply, room))
    if (answer === undefined) return assistant.delivered({ asked })
    const given = { ...givenIn(room, call, answer), questionMessage: question, question: reply.question ?? '' }
    await note(given)
    await meant.noteThread(call, given)
    suggested.keep(answer, reply.followUps)
    if (!changesWhatIsKept(reply)) speaker.offer(room, answer, signsOf(reply))
    await showPictures(call, room, given, reply)
    await sendDocuments(call, room, given, reply)
    await assistant.delivered({ asked })
  }

  return {
    /** What the message asks, said in words of its own or in those of an edit of it. */
    askingIn(event: MatrixEvent, room: Room, original: MatrixEvent | undefined = event): Asking | undefined {
      const message = messageIn(event, original)
      const name = room.getMember(self)?.name ?? self
      return message && readAsking(message, { prefix: settings.prefix, self, name, direct: isDirect(client, room) })
    },

    /** Undefined where the message is talk among people. */
    async questionIn(asking: Asking): Promise<string | Question | undefined> {
      const { words, addressed } = asking
      const before = await lookedUp(meant.answerBefore(asking))
      const changed = before && amended(before.question, words, registry.vocabulary)
      return changed ?? (addressed ? words || 'help' : undefined)
    },

    ask: (question: string | Question, room: Room, person: string, asked?: Asked): Promise<Reply> =>
      assistant.answer(question, { ...occasionOf(client, room, person), ...(asked && { asked }) }),

    give,
    /** Says so in reply, once. */
    tell,

    /** Puts the reply in the place of the answer, because of what was edited or tapped. */
    async replace(because: MatrixEvent, room: Room, answer: AnsweredQuestion, reply: Reply, open?: Layer) {
      const words = rendered(reply, room, open)
      await speaker.replace(because, room, matrixIdOf(answer.answerMessage), matrixIdOf(answer.askedBy), words)
      await note(answer)
    },

    /** What was done about the answer, by whom, is not done again, should its event come again. `as` where that is noted besides. */
    dealtWith: (event: MatrixEvent, answer: AnsweredQuestion, as = ''): Promise<void> => {
      const id = event.getId() ?? ''
      return note({
        ...answer,
        askedBy: idOf(event.getSender() ?? ''),
        questionMessage: idOf(id) + as,
        answerMessage: `${answer.answerMessage}#${id}`,
        question: '',
      })
    },

    meant,
    suggestedBelow: suggested.questionsOf,
    /** What the question, in notation, has changed, and what takes that back as it is to be typed there. */
    doneBy(question: string, room: Room): Done | undefined {
      const done = doneBy(question, registry)
      return done?.way && !isDirect(client, room) ? { ...done, way: `${settings.prefix} ${done.way}` } : done
    },
  }
}
