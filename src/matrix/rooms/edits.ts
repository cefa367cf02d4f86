// What people do to a question that was answered: they edit it or take it away, and the answer follows.

import type { MatrixEvent, Room } from 'matrix-js-sdk'
import { answerToEdit } from '../../assistant/running/after-edit.ts'
import { stillDone, stillDoneThough } from '../../assistant/running/after-edit.words.ts'
import type { AnsweredQuestion } from '../../memory/memory.ts'
import { idOf, matrixIdOf, occasionOf } from '../client/occasion.ts'
import { callOf } from '../messages/message.ts'
import { partOf, parts } from '../messages/parts.ts'
import { renderText } from '../messages/render.ts'
import { type Answering, type AnsweringParts, askedBy } from './answering.ts'

export interface Edits {
  /** `hear` is for a message that was no question before. */
  edited(
    event: MatrixEvent,
    room: Room,
    questionId: string,
    hear: (original: MatrixEvent) => Promise<void>,
  ): Promise<void>
  takenAway(event: MatrixEvent, room: Room, questionId: string): Promise<void>
}

export function createEdits(
  answering: Answering,
  { client, assistant, answered, speaker, showPictures }: AnsweringParts,
): Edits {
  const { ask, askingIn, dealtWith, doneBy, give, questionIn, replace } = answering

  /** What was answered in private stands in another room. */
  const placeOf = ({ place }: AnsweredQuestion) => client.getRoom(matrixIdOf(place))

  return {
    async edited(event, room, questionId, hear) {
      const original = room.findEventById(questionId)
      const earlier = await answered.byQuestion(idOf(questionId))
      const sender = event.getSender() ?? ''
      if (idOf(sender) !== (earlier?.askedBy ?? idOf(original?.getSender() ?? ''))) return
      if (!earlier) return original && hear(original)
      const place = placeOf(earlier) ?? room

      const done = doneBy(earlier.question, room)
      if (done) {
        const words = renderText(stillDone(done)(await assistant.localeOf(occasionOf(client, room, sender))))
        await speaker.replace(event, place, matrixIdOf(earlier.answerMessage), sender, words)
        return dealtWith(event, earlier)
      }
      const asking = askingIn(event, room, original)
      const question = asking && (await questionIn(asking))
      if (question === undefined) return
      const asked = askedBy(client, event, room, questionId)
      const { reply, isWorse } = await answerToEdit(earlier.question, assistant.registry, {
        before: question => ask(question, room, sender),
        now: () => ask(question, room, sender, asked),
      })
      if (isWorse) {
        await give(asked, room, reply, idOf(questionId))
        await speaker.takeAway(place, matrixIdOf(earlier.answerMessage))
      } else {
        const given = { ...earlier, question: reply.question ?? '' }
        await replace(event, place, given, reply)
        const call = callOf(event, room, questionId)
        // A thread stands in one room.
        const beside = place === room ? call : { event: call.event, asker: call.asker }
        await showPictures(beside, place, given, reply)
        await assistant.delivered({ asked })
      }
      await dealtWith(event, earlier)
    },

    async takenAway(event, room, questionId) {
      const earlier = await answered.byQuestion(idOf(questionId))
      // A room's redaction of another room's message is none.
      const isOfRoom = earlier?.place === idOf(room.roomId) || room.findEventById(questionId)?.isRedacted()
      // What a tap did is noted under no message of its own.
      if (!earlier || !isOfRoom || earlier.answerMessage.includes('#')) return
      const takeAway = (given: AnsweredQuestion) =>
        speaker.takeAway(placeOf(given) ?? room, matrixIdOf(given.answerMessage))
      await takeAway(earlier)
      for (const part of parts) {
        for (let at = 0; ; at += 1) {
          const given = await answered.byQuestion(partOf(earlier.questionMessage, part, at))
          if (!given) break
          await takeAway(given)
        }
      }
      const done = doneBy(earlier.question, room)
      const call = { event: event.getId() ?? '', asker: matrixIdOf(earlier.askedBy), about: questionId }
      if (done) await answering.tell(call, room, stillDoneThough(done))
      await dealtWith(event, earlier)
    },
  }
}
