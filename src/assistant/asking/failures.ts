// The replies for what goes wrong: a question that cannot be read, and a fault of our own.

import type { Locale } from '../../ground/locale.ts'
import type { Problem } from '../../ground/problem.ts'
import type { Text } from '../../ground/text.ts'
import type { Entry } from '../command.ts'
import { completeReply, type Reply } from '../reply.ts'
import { idleCaution, untilClear } from '../verdict.words.ts'
import { afterFault, faultWords, nothingAsked } from './asking.words.ts'

const shownLength = 120

/** The question as the asker typed it, shortened, for a reply to what could not be read. */
export function asTyped(question: string, locale: Locale): Text {
  const line = question.replace(/[\s\p{Cc}\p{Cf}]+/gu, ' ').trim()
  if (line === '') return nothingAsked(locale)
  return locale.own(line.length > shownLength ? `${line.slice(0, shownLength)}…` : line)
}

/** The asker can mend it: says what is wrong, where, and what would do. No pack waits for what is only kept. */
export function problemReply(command: string, readAs: Text, told: Problem, locale: Locale, entry?: Entry): Reply {
  const { choices = [], awaits: _, ...problem } = told.saidIn(locale)
  return completeReply(
    { command, readAs, problem },
    {
      headline: problem.what,
      verdict: problem.verdict,
      cautions: [entry?.changes ? idleCaution(locale) : untilClear(locale)],
      followUps: choices.map(({ label, question }) => ({ label: locale.own(label), question })),
    },
    locale,
  )
}

/** Only we can mend it: the reference finds the fault in the log. */
export function faultReply(command: string, readAs: Text, reference: string, locale: Locale): Reply {
  const what = faultWords(reference, locale)
  return completeReply(
    {
      command,
      readAs,
      fault: reference,
      problem: { what, expected: afterFault(locale), example: 'help', final: true },
    },
    { headline: what, cautions: [untilClear(locale)] },
    locale,
  )
}
