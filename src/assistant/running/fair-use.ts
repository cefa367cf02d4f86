// How often one person may ask: as fast as people do, not as fast as a script does. Whoever tells of danger always may.

import { createSeldom } from '../../ground/seldom.ts'
import { withoutOldest } from '../../ground/without-oldest.ts'
import type { Question } from '../../language/sentence/question.ts'
import { tellsAny } from '../asking/danger-first.ts'
import { problemReply } from '../asking/failures.ts'
import { createTurnstile } from '../cards/turnstile.ts'
import type { Occasion } from '../occasion.ts'
import type { Reply } from '../reply.ts'
import type { Assistant } from './assistant.ts'
import { askedTooOften, nothingRead } from './fair-use.words.ts'

/** At once in one place, as when somebody taps through all that is offered, and in all places; and one more every so often. */
const mostAtOnce = { here: 30, everywhere: 300 }
const oneMore_ms = 2000
/** So long whoever was told that they ask too fast need not be told again. */
const quiet_ms = 60_000
/** Of those who asked longest ago nothing is known any longer: by then they may ask as ever. */
const mostPeople = 20_000

export function withFairUse(assistant: Assistant, now_ms: () => number): Assistant {
  /** When each person asked last, and when they will have everything back that they have asked for. */
  const known = new Map<string, { readonly last_ms: number; readonly paidOff_ms: number }>()
  const isNews = createSeldom(quiet_ms, now_ms)
  const myTurn = createTurnstile()

  function mayAsk(who: string, asked_ms: number, most: number): boolean {
    const before = known.get(who) ?? { last_ms: asked_ms, paidOff_ms: asked_ms }
    // A danger that was told later is heard first.
    const last_ms = Math.max(asked_ms, before.last_ms)
    const paidOff_ms = Math.max(last_ms, before.paidOff_ms) + oneMore_ms
    if (paidOff_ms - last_ms > most * oneMore_ms) return false
    known.delete(who)
    known.set(who, { last_ms, paidOff_ms })
    withoutOldest(known, mostPeople)
    return true
  }

  /** What was asked while we were away counts by when it was asked. */
  function isFair({ asker, place, asked }: Occasion): boolean {
    const now = now_ms()
    const here = mayAsk(`${asker.id} ${place.id}`, Math.min(now, asked?.at_ms ?? now), mostAtOnce.here)
    return here && mayAsk(asker.id, now, mostAtOnce.everywhere)
  }

  const fairly =
    <Q extends string | Question>(ask: (question: Q, occasion: Occasion) => Promise<Reply>): typeof ask =>
    async (question, occasion) => {
      if (isFair(occasion)) return ask(question, occasion)
      // Of a flood much comes at once.
      await myTurn()
      if (tellsAny(question, assistant.registry.vocabulary)) return ask(question, occasion)
      const locale = await assistant.localeOf(occasion)
      const tooFast = isNews(occasion.asker.id) ? 'first' : 'again'
      return { ...problemReply('', nothingRead(locale), askedTooOften, locale), tooFast }
    }

  return { ...assistant, answer: fairly(assistant.answer), wouldAnswer: fairly(assistant.wouldAnswer) }
}
