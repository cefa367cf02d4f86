// Answers one question on standard output.

import { type AskedHow, inClubhouse, renderAsked } from './asked.ts'
import { roomOccasion } from './occasion.ts'
import { renderJson } from './render-json.ts'

/** The exit code: 0 answered, 2 a problem with the question, 1 a fault of ours, above 64 what the host can mend. */
export const askOnce = (question: string, asked: AskedHow): Promise<number> =>
  inClubhouse(async ({ assistant }) => {
    const reply = await assistant.answer(question, roomOccasion({ moderates: asked.moderates }))
    const width = Math.min(process.stdout.columns ?? 100, 100)
    const colour = process.stdout.hasColors?.() ?? false
    process.stdout.write(`${asked.json ? renderJson(reply, 2) : renderAsked(reply, asked, { width, colour })}\n`)
    if (reply.fault !== undefined) return 1
    return reply.problem ? 2 : 0
  })
