// The answer where the core refuses: what is wrong, what to do instead, and the cautions that go with it.

import type { Answer } from '../../src/assistant/reply.ts'
import { cautionsFor } from '../../src/cautions/cautions.ts'
import { refusalWords } from '../../src/cautions/refusals.ts'
import type { Situation } from '../../src/cautions/situation.ts'
import type { Refused } from '../../src/charging/setting/refusal.ts'
import type { Show } from '../../src/ground/show.ts'
import { refusalReason } from './working.ts'

export function refusedAnswer({ verdict, refusal }: Refused, situation: Situation, show: Show): Answer {
  const { headline, instead } = refusalWords(refusal, show)
  return {
    verdict,
    headline: `${headline} ${instead}`,
    working: refusalReason(refusal, situation.pack, show),
    cautions: cautionsFor({ ...situation, refusal: refusal.kind }),
  }
}
