// Answers one question a line from standard input, in order; an empty line starts a new conversation.

import { createInterface } from 'node:readline'
import { type AskedHow, inClubhouse, renderAsked } from './asked.ts'
import { createRoomNoticeboard } from './noticeboard.ts'
import { roomOccasion } from './occasion.ts'
import { renderJson } from './render-json.ts'

/** What the club's board shows goes to standard error: standard output holds answers only. */
export const askLines = (asked: AskedHow): Promise<number> =>
  inClubhouse(async ({ assistant, noticeboard }) => {
    const write = (text: string) => process.stdout.write(`${text}\n`)
    noticeboard.add(
      'room',
      createRoomNoticeboard((heading, { headline }) => process.stderr.write(`${heading}: ${headline}\n`)),
    )
    let conversation = 1
    for await (const line of createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY })) {
      if (line.trim() === '') {
        conversation += 1
        continue
      }
      const reply = await assistant.answer(line, roomOccasion({ moderates: asked.moderates, conversation }))
      write(asked.json ? renderJson(reply) : `${renderAsked(reply, asked, { width: 100, colour: false })}\n`)
    }
    return 0
  })
