// Which of our answers a message goes on from.

import type { AnsweredMemory, AnsweredQuestion } from '../../memory/memory.ts'
import { idOf } from '../client/occasion.ts'
import type { Asking } from '../messages/asking.ts'
import type { Call } from '../messages/message.ts'
import { wholeOf } from '../messages/parts.ts'

const lastIn = (thread: string): string => `${idOf(thread)}#thread`

export function createMeant(answered: AnsweredMemory) {
  /** The answer that the message is, or is a part of. */
  async function answerAt(message: string): Promise<AnsweredQuestion | undefined> {
    const part = await answered.byAnswer(idOf(message))
    return part && answered.byQuestion(wholeOf(part.questionMessage))
  }

  /** The last in the thread, else its root, else the one to its root. */
  async function answerIn(thread: string): Promise<AnsweredQuestion | undefined> {
    const last = await answered.byQuestion(lastIn(thread))
    const given = last && (await answered.byQuestion(wholeOf(last.answerMessage)))
    return given ?? (await answerAt(thread)) ?? answered.byQuestion(idOf(thread))
  }

  return {
    answerAt,
    /** In a thread apps have a message reply to whatever stands before it, so a reply to no answer means the thread. */
    async answerBefore({ repliesTo, thread }: Asking): Promise<AnsweredQuestion | undefined> {
      const repliedTo = repliesTo === undefined ? undefined : await answerAt(repliesTo)
      return repliedTo ?? (thread === undefined ? undefined : answerIn(thread))
    },
    /** Notes the last answer in a thread by its question, for an edit may have that answered anew. */
    async noteThread({ thread }: Call, given: AnsweredQuestion): Promise<void> {
      if (thread === undefined || given.question === '') return
      const answerMessage = `${given.questionMessage}#thread`
      await answered.record({ ...given, questionMessage: lastIn(thread), answerMessage, question: '' })
    },
  }
}
