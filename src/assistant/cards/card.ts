// What a card of a standard answer shows: the title, and the answer as it is now.

import { createHash } from 'node:crypto'
import type { Locale } from '../../ground/locale.ts'
import type { Author } from '../../memory/memory.ts'
import type { Saying } from '../../memory/standard-answer.ts'
import { completeReply, type Reply } from '../reply.ts'
import { generalCaution } from '../verdict.words.ts'
import { changedWords, entitled, ownWords } from './cards.words.ts'

/** `ask` must answer for the club: without anybody's own kit, and without a clock. `last` is who changed it last. */
export async function cardOf(
  { title, kind, content }: Saying,
  ask: (question: string) => Promise<Reply>,
  locale: Locale,
  last?: Author,
): Promise<Reply> {
  const changed = last && changedWords(last, locale)
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
      changed,
    }
  }
  const reply = completeReply(
    { command: 'answer show', readAs: ownWords(locale) },
    { headline: entitled(title, content, locale), cautions: [generalCaution(locale)] },
    locale,
  )
  return { ...reply, changed }
}

/** Differs where anything that a card shows does. */
export const digestOf = (reply: Reply): string =>
  createHash('sha256').update(JSON.stringify(reply)).digest('base64url').slice(0, 16)
