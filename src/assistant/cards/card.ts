// What a card of a standard answer shows: the title, and the answer as it is now.

import { createHash } from 'node:crypto'
import type { Locale } from '../../ground/locale.ts'
import type { Saying } from '../../memory/standard-answer.ts'
import { completeReply, type Reply } from '../reply.ts'
import { generalCaution } from '../verdict.words.ts'
import { entitled, ownWords } from './cards.words.ts'

/** `ask` must answer for the club: without anybody's own kit, and without a clock. */
export async function cardOf(
  { title, kind, content }: Saying,
  ask: (question: string) => Promise<Reply>,
  locale: Locale,
): Promise<Reply> {
  if (kind === 'question') {
    const reply = await ask(content)
    const [first, ...others] = reply.lines
    const headline = entitled(title, reply.headline, locale)
    return {
      ...reply,
      headline,
      lines: [entitled(title, first, locale), ...others],
      followUps: [],
      charts: [],
      documents: [],
    }
  }
  return completeReply(
    { command: 'answer show', readAs: ownWords(locale) },
    { headline: entitled(title, content, locale), cautions: [generalCaution(locale)] },
    locale,
  )
}

/** Differs where anything that a card shows does. */
export const digestOf = (reply: Reply): string =>
  createHash('sha256').update(JSON.stringify(reply)).digest('base64url').slice(0, 16)
