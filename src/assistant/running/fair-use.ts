// How often one person may ask: as fast as people do, not as fast as a script does. Whoever tells of danger always may.

import { dangersIn } from '../../language/dangers/index.ts'
import type { Question } from '../../language/sentence/question.ts'
import { spokenOf } from '../../language/sentence/typed.ts'
import { problemReply } from '../asking/failures.ts'
import type { Assistant } from './assistant.ts'
import { askedTooOften, nothingRead } from './fair-use.words.ts'

/** At once, as when somebody taps through all that is offered; and one more every so often. */
const mostAtOnce = 30
const oneMore_ms = 2000
/** Of those who asked longest ago nothing is known any longer: by then they may ask as ever. */
const mostPeople = 10_000

export function withFairUse(assistant: Assistant, now_ms: () => number): Assistant {
  /** When each person will have everything back that they have asked for. */
  const paidOff_ms = new Map<string, number>()

  function mayAsk(person: string): boolean {
    const now = now_ms()
    const until = Math.max(now, paidOff_ms.get(person) ?? 0) + oneMore_ms
    if (until - now > mostAtOnce * oneMore_ms) return false
    paidOff_ms.delete(person)
    paidOff_ms.set(person, until)
    const [longest] = paidOff_ms.keys()
    if (paidOff_ms.size > mostPeople && longest !== undefined) paidOff_ms.delete(longest)
    return true
  }

  const tellsDanger = (question: string | Question): boolean =>
    typeof question === 'string' && dangersIn(spokenOf(question, assistant.registry.vocabulary)).told.length > 0

  return {
    ...assistant,
    answer: async (question, occasion) => {
      if (mayAsk(occasion.asker.id) || tellsDanger(question)) return assistant.answer(question, occasion)
      const locale = await assistant.localeOf(occasion)
      return problemReply('', nothingRead(locale), askedTooOften, locale)
    },
  }
}
