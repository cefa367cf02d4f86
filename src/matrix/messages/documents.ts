// Sends the documents of an answer as files.

import type { Room } from 'matrix-js-sdk'
import type { Reply } from '../../assistant/reply.ts'
import type { AnsweredMemory, AnsweredQuestion } from '../../memory/memory.ts'
import { idOf } from '../client/occasion.ts'
import { answerContent } from './content.ts'
import type { Call } from './message.ts'
import { partOf } from './parts.ts'
import type { Sender } from './send.ts'
import type { Upload } from './upload.ts'

export type SendDocuments = (call: Call, room: Room, answer: AnsweredQuestion, reply: Reply) => Promise<void>

export function createSendDocuments(sender: Sender, upload: Upload, answered: AnsweredMemory): SendDocuments {
  return async ({ event, about: question, thread }, room, answer, { documents }) => {
    for (const [at, { name, mediaType, text }] of documents.entries()) {
      const bytes = Buffer.from(text)
      const file = {
        msgtype: 'm.file',
        body: name,
        filename: name,
        info: { mimetype: mediaType, size: bytes.length },
        ...(await upload(bytes, mediaType, room)),
      } as const
      const content = answerContent(file, { question, thread })
      const sent = await sender.send(room.roomId, 'm.room.message', content, `${event} document ${at + 1}`)
      const questionMessage = partOf(answer.questionMessage, 'document', at)
      await answered.record({ ...answer, questionMessage, answerMessage: idOf(sent) })
    }
  }
}
