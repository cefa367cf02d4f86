// An answer that hands on a reply to another question, which was judged when that was made.

import type { Verdict } from '../charging/envelope/judge.ts'
import type { Answer, NonEmpty, Reply } from './reply.ts'

const verdicts: readonly (Verdict | undefined)[] = [undefined, 'go', 'go with care', 'do not charge']

/** The more, the less may be done; none weighs least. */
export const heaviness = (verdict: Verdict | undefined): number => verdicts.indexOf(verdict)

/** The heavier verdict and the cautions of both; figures and working of the reply come after the answer's own. */
export function handingOn(answer: Answer, reply: Reply): Answer {
  const { figures = [], working = [], assumed = [], alsoAssumed = [], reasons = [], cautions, verdict } = answer
  const { reasons: others = [] } = reply
  const isSaid = (key: string) => reply.cautions.some(caution => caution.key === key)
  return {
    ...answer,
    verdict: heaviness(verdict) > heaviness(reply.verdict) ? verdict : reply.verdict,
    reasons: [...reasons, ...others],
    figures: [...figures, ...reply.figures],
    working: [...working, ...reply.working],
    assumed: [...assumed, ...reply.assumed],
    alsoAssumed: [...alsoAssumed, ...reply.alsoAssumed],
    cautions: [...cautions.filter(({ key }) => !isSaid(key)), ...reply.cautions] as never as NonEmpty<
      Answer['cautions'][number]
    >,
  }
}
