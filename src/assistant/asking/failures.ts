// The replies for what goes wrong: a question that cannot be read, and a fault of our own.

import { generalCaution } from '../../cautions/cautions.ts'
import type { Problem } from '../../ground/problem.ts'
import { completeReply, type Reply } from '../reply.ts'

const shownLength = 120

/** The question as the asker typed it, shortened, for a reply to what could not be read. */
export function asTyped(question: string): string {
  const line = question.replace(/[\s\p{Cc}\p{Cf}]+/gu, ' ').trim()
  if (line === '') return '(nothing)'
  return line.length > shownLength ? `${line.slice(0, shownLength)}…` : line
}

/** The asker can mend it: says what is wrong, where, and what would do. */
export function problemReply(command: string, readAs: string, { details }: Problem): Reply {
  return completeReply(
    { command, readAs, problem: details },
    {
      headline: details.what,
      verdict: details.verdict,
      cautions: [generalCaution],
    },
  )
}

/** Only we can mend it: the reference finds the fault in the log. */
export function faultReply(command: string, readAs: string, reference: string): Reply {
  const what = `Something went wrong on my side (reference ${reference}). Nothing was changed on your charger.`
  return completeReply(
    {
      command,
      readAs,
      fault: reference,
      problem: {
        what,
        expected: 'try again; if it happens again, tell a moderator the reference',
        example: 'help',
      },
    },
    { headline: what, cautions: [generalCaution] },
  )
}
