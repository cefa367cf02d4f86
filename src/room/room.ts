// The local room: a question a line from the terminal or a pipe, an answer below it.

import { join } from 'node:path'
import { createInterface } from 'node:readline'
import type { Noticeboards } from '../assistant/cards/noticeboard.ts'
import type { Occasion } from '../assistant/occasion.ts'
import type { Reply } from '../assistant/reply.ts'
import type { Assistant } from '../assistant/running/assistant.ts'
import type { Rounds } from '../assistant/running/rounds.ts'
import { completeLine } from './complete.ts'
import { demoClub } from './demo-club.ts'
import { keepFiles } from './files.ts'
import { historyIn } from './history.ts'
import { createRoomNoticeboard } from './noticeboard.ts'
import { renderFull, renderLayer, renderText, type TextRules } from './render-text.ts'
import { welcome } from './room.words.ts'
import { nextOf, tapsOf } from './typed-next.ts'

export interface RoomParts {
  readonly assistant: Assistant
  readonly occasion: Occasion
  readonly input: NodeJS.ReadStream
  readonly output: NodeJS.WriteStream
  /** Where the questions asked, for the up arrow, and pictures and documents are kept. */
  readonly folder: string
  /** Where the room puts up its own board. */
  readonly noticeboard: Noticeboards
  readonly rounds: Rounds
}

const leaving = /^[/:]?(?:quit|exit|bye)$/i
const widest = 100

/** Opens the room; resolves when the asker leaves or the input ends, after the last answer is out. */
export async function openRoom(parts: RoomParts): Promise<void> {
  const { assistant, occasion, input, output, folder, noticeboard, rounds } = parts
  const interactive = Boolean(input.isTTY && output.isTTY)
  const colour = interactive && output.hasColors()
  const print = (text: string) => output.write(`${text}\n`)
  const rules = (): TextRules => ({ width: Math.min(output.columns ?? widest, widest), colour })
  const printReply = (reply: Reply) => print(`${renderText(reply, rules(), tapsOf(reply))}\n`)
  let last: Reply | undefined
  /** Undefined where it only shows more of the last answer. */
  const answer = async (line: string): Promise<Reply | undefined> => {
    const next = nextOf(line, last)
    if (last && next.kind === 'layer') print(`${renderLayer(last, next.layer, rules())}\n`)
    if (last && next.kind === 'full') print(`${renderFull(last, rules())}\n`)
    if (next.kind !== 'question') return undefined
    last = await assistant.answer(next.question, occasion)
    printReply(last)
    return last
  }
  // A full disk costs the pictures, not the answers.
  const printFiles = async (reply: Reply | undefined) => {
    if (!reply) return
    for (const line of await keepFiles(reply, folder).catch(() => [])) print(line)
  }

  print(`${welcome(demoClub.name, await assistant.localeOf(occasion))}\n`)
  for (const question of demoClub.questions) {
    print(`ask> ${question}`)
    await answer(question)
  }

  const history = historyIn(join(folder, 'history'))
  const lines = createInterface({
    input,
    output,
    terminal: interactive,
    prompt: 'ask> ',
    removeHistoryDuplicates: true,
    history: interactive ? history.read() : [],
    completer: (line: string, done: (error: null, hits: [string[], string]) => void) => {
      completeLine(assistant, occasion, line).then(
        hits => done(null, hits),
        () => done(null, [[], line]),
      )
    },
  })
  const printNotice = (heading: string, reply: Reply) => {
    print(`\n${heading}`)
    printReply(reply)
    if (interactive) lines.prompt(true)
  }
  noticeboard.add('room', createRoomNoticeboard(printNotice))
  rounds.start()
  if (interactive) lines.on('history', history.keep).prompt()
  for await (const line of lines) {
    const question = line.trim()
    if (leaving.test(question)) break
    // The welcome goes without pictures: drawing the first one takes a moment.
    if (question !== '') await printFiles(await answer(question))
    if (interactive) lines.prompt()
  }
  lines.close()
}
