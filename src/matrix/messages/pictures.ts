// Sends the charts of an answer as images, and keeps them in step when the answer is edited.

import type { Room } from 'matrix-js-sdk'
import { pictureLeftOut, tooMuchAtOnce } from '../../assistant/asking/asking.words.ts'
import type { Draw } from '../../assistant/draw.ts'
import type { Reply } from '../../assistant/reply.ts'
import type { Chart } from '../../charts/chart.ts'
import type { Locale } from '../../ground/locale.ts'
import type { AnsweredMemory, AnsweredQuestion } from '../../memory/memory.ts'
import { idOf, matrixIdOf } from '../client/occasion.ts'
import { answerContent, editContent } from './content.ts'
import type { Call } from './message.ts'
import { partOf } from './parts.ts'
import { renderText } from './render.ts'
import type { Sender } from './send.ts'
import { pictureIsStale } from './told.words.ts'
import type { Upload } from './upload.ts'

export interface PictureParts {
  readonly sender: Sender
  readonly upload: Upload
  readonly answered: AnsweredMemory
  readonly draw: Draw
}

/** Shows the charts of the reply to `answer`, in the thread of the question; `call` asked for it, or edited the question. */
export type ShowPictures = (call: Call, room: Room, answer: AnsweredQuestion, reply: Reply) => Promise<void>

export function createShowPictures({ sender, upload, answered, draw }: PictureParts): ShowPictures {
  return async (call, room, answer, { charts, locale }) => {
    for (let at = 0; ; at += 1) {
      const questionMessage = partOf(answer.questionMessage, 'picture', at)
      const earlier = await answered.byQuestion(questionMessage)
      const chart = charts[at]
      if (!chart && !earlier) return
      const shown = chart
        ? await imageOf(chart, call.asker, room, `chart-${at + 1}.png`).catch(error => leftOut(error, locale))
        : renderText(pictureIsStale(locale))
      const content = earlier
        ? editContent(shown, matrixIdOf(earlier.answerMessage))
        : answerContent(shown, { question: call.about, thread: call.thread ?? call.about })
      const sent = await sender.send(room.roomId, 'm.room.message', content, `${call.event} picture ${at + 1}`)
      await answered.record({ ...answer, questionMessage, answerMessage: earlier?.answerMessage ?? idOf(sent) })
    }
  }

  async function imageOf(chart: Chart, asker: string, room: Room, filename: string) {
    const picture = await draw(chart, { club: room.roomId, member: asker })
    const info = { mimetype: 'image/png', size: picture.length, ...sizeOf(picture) }
    const place = await upload(picture, info.mimetype, room)
    return { msgtype: 'm.image', body: chart.alternative, filename, info, ...place } as const
  }
}

function leftOut(error: unknown, locale: Locale) {
  if (error !== tooMuchAtOnce) throw error
  return renderText(pictureLeftOut(locale))
}

/** Pixels, from the header of a PNG: https://www.w3.org/TR/png-3/#11IHDR */
function sizeOf(png: Uint8Array): { w: number; h: number } {
  const header = Buffer.from(png.buffer, png.byteOffset, png.byteLength)
  return { w: header.readUInt32BE(16), h: header.readUInt32BE(20) }
}
