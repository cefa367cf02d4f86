// What nobody needs any longer is dropped: once at the start, and once a day after it.

import type { Memory } from './memory.ts'

/** So long a change can be taken back by whoever made it; of a person's own kit none is noted for longer. */
export const undoable_ms = 10 * 60_000

const day_ms = 86_400_000
/** Long after the last edit of a question or reply to an answer, and after any late delivery. */
const answeredKept_days = 90
/** The buttons under an older answer say that they are too old. */
const questionsKept_days = 365
const changesKept_days = 365

export async function forgetOld({ questions, answered, history }: Memory, now: Date): Promise<void> {
  const before = (days: number) => new Date(now.getTime() - days * day_ms)
  await answered.forgetBefore(before(answeredKept_days))
  await questions.forgetBefore(before(questionsKept_days))
  await history.forgetBefore(before(changesKept_days))
}

/** Returns the function that ends it. A failure is told and tried again the next day. */
export function startForgetting(memory: Memory, onFault: (fault: unknown) => void): () => void {
  const forget = () => void forgetOld(memory, new Date()).catch(onFault)
  forget()
  const timer = setInterval(forget, day_ms).unref()
  return () => clearInterval(timer)
}
