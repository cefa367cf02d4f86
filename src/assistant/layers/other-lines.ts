// A reply with another line, or with a part of it in the first place.

import type { Locale } from '../../ground/locale.ts'
import { joined, type Text } from '../../ground/text.ts'
import { askedOf } from '../../handbook/asked.ts'
import { inLines, type Reply } from '../reply.ts'
import { type Layer, layersOf, openLayer } from './opened.ts'

/** What was worked out, and what the handbook says on the question beside it, in one line. */
export function withEntry(reply: Reply, about: string, { own }: Locale): Reply {
  const [line] = askedOf(about).entry?.answer ?? []
  return reply.problem || reply.verdict === 'do not charge' || line === undefined ? reply : withLine(reply, own(line))
}

export const withLine = (reply: Reply, line: Text): Reply => ({ ...reply, ...inLines([...reply.lines, line]) })

/** With another line in the first place of the answer, below what must be said before it. */
export const withAnswer = (reply: Reply, line: Text): Reply => ({
  ...reply,
  ...inLines(reply.lines.toSpliced(reply.leads, 0, line)),
})

/** What explains it stands behind what is to be done, where a phone has room for it, and else in its why. */
export const withReason = (reply: Reply, line: Text): Reply => ({
  ...reply,
  headline: joined([reply.headline, line]),
  opens: [line],
  working: [line, ...reply.working],
})

/** The answer with a layer of it in the first place, or its first line alone. */
export function opened(reply: Reply, wanted: Layer | 'short' | 'judged'): Reply {
  const layer = wanted === 'judged' ? 'why' : wanted
  if (reply.problem || (layer !== 'short' && !layersOf(reply).includes(layer))) return reply
  if (layer === 'short') return { ...reply, ...inLines(reply.lines.slice(0, 1)) }
  const opens = openLayer(reply, layer).lines
  const lines = reply.lines.slice(
    0,
    reply.verdict === 'do not charge' || wanted === 'judged' ? undefined : reply.leads + 1,
  )
  return { ...reply, ...inLines(lines), headline: joined([...lines, ...opens]), opens }
}
