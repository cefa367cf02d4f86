// What a card of a standard answer shows: the title, and the answer as it is now.

import { createHash } from 'node:crypto'
import { cautionsFor } from '../../cautions/cautions.ts'
import type { Saying } from '../../memory/stores/standard-answer.ts'
import { completeReply, type Reply } from '../reply.ts'

/** `ask` must answer for the club: without anybody's own kit, and without a clock. */
export async function cardOf(
  { title, kind, content }: Saying,
  ask: (question: string) => Promise<Reply>,
): Promise<Reply> {
  if (kind === 'question') {
    const reply = await ask(content)
    return {
      ...reply,
      headline: entitled(title, reply.headline),
      followUps: [],
      charts: [],
      documents: [],
    }
  }
  return completeReply(
    { command: 'answer show', readAs: "a standard answer in the words of this club's moderators" },
    { headline: entitled(title, content), cautions: cautionsFor({}) },
  )
}

const entitled = (title: string, text: string): string => `${title}${/[.?!]$/.test(title) ? '' : ':'} ${text}`

/** Differs where anything that a card shows does. */
export const digestOf = (reply: Reply): string =>
  createHash('sha256').update(JSON.stringify(reply)).digest('base64url').slice(0, 16)
