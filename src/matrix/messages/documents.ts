// Sends the documents of an answer as files.

import type { MatrixEvent, Room } from 'matrix-js-sdk'
import type { Reply } from '../../assistant/reply.ts'
import { answerContent } from './content.ts'
import { threadOf } from './message.ts'
import type { Sender } from './send.ts'
import type { Upload } from './upload.ts'

/** Sends the documents of the reply to `event`. */
export type SendDocuments = (event: MatrixEvent, room: Room, reply: Reply) => Promise<void>

export function createSendDocuments(sender: Sender, upload: Upload): SendDocuments {
  return async (event, room, { documents }) => {
    const question = event.getId() ?? ''
    for (const [at, { name, mediaType, text }] of documents.entries()) {
      const bytes = Buffer.from(text)
      const file = {
        msgtype: 'm.file',
        body: name,
        filename: name,
        info: { mimetype: mediaType, size: bytes.length },
        ...(await upload(bytes, mediaType, room)),
      } as const
      const content = answerContent(file, { question, thread: threadOf(event) })
      await sender.send(room.roomId, 'm.room.message', content, `${question} document ${at + 1}`)
    }
  }
}
