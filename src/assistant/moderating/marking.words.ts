// What is said of an answer that a moderator has marked as wrong.

import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'
import { completeReply, type Reply } from '../reply.ts'
import { untilClear } from '../verdict.words.ts'

/** Stands above it. */
export const struckWords = ({ say }: Locale): Text => say`WRONG: a moderator has marked this answer. Do not act on it.`

/** To those who have read it. */
export const wrongReply = (locale: Locale): Reply =>
  completeReply(
    { command: 'house show', readAs: locale.own('wrong') },
    {
      headline: locale.say`A moderator has marked an answer as wrong that you have read. Do not act on it: ask again.`,
      cautions: [untilClear(locale)],
    },
    locale,
  )
