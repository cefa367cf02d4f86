// A question that is answered long after it was asked: what was so then may have changed, and the answer says when it was.

import { joined } from '../../ground/text.ts'
import type { Occasion } from '../occasion.ts'
import { inLines, type Reply } from '../reply.ts'
import { askedAgo } from './asking.words.ts'

/** Sooner than this it is answered as if just asked. */
const soon_s = 600

/** How long ago it was asked, in s, where that is long. */
export function lateness({ asked }: Pick<Occasion, 'asked'>, now: Date | undefined): number | undefined {
  const ago_s = asked && now ? Math.floor((now.getTime() - asked.at_ms) / 1000) : 0
  return ago_s > soon_s ? ago_s : undefined
}

/** The reply, with when its question was asked in the first line where that is long ago. */
export function saidLate(reply: Reply, occasion: Pick<Occasion, 'asked'>, now: Date | undefined): Reply {
  const ago_s = lateness(occasion, now)
  if (ago_s === undefined) return reply
  const [first, ...others] = reply.lines
  const lines = [joined([first, askedAgo(ago_s, reply.locale)]), ...others]
  // One that was composed in time and is delivered late was judged by what was so then.
  const verdict = reply.verdict === 'go' ? 'go with care' : reply.verdict
  return { ...reply, verdict, ...inLines(lines) }
}
