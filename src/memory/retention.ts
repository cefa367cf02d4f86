// What nobody needs any longer is dropped.

import type { Memory } from './memory.ts'

/** So long a change can be taken back by whoever made it; of a person's own kit none is noted for longer. */
export const undoable_ms = 10 * 60_000

export const day_ms = 86_400_000
/** Long after the last edit of a question or reply to an answer, and after any late delivery. */
const answeredKept_days = 90
/** The buttons under an older answer say that they are too old. */
const questionsKept_days = 365
const changesKept_days = 365
/** Longer than any platform tells the same again. */
const doneKept_days = 30

export async function forgetOld({ questions, answered, history, due }: Memory, now: Date): Promise<void> {
  const before = (days: number) => new Date(now.getTime() - days * day_ms)
  await answered.forgetBefore(before(answeredKept_days))
  await questions.forgetBefore(before(questionsKept_days))
  await history.forgetBefore(before(changesKept_days))
  await due.forgetBefore(before(doneKept_days))
}
