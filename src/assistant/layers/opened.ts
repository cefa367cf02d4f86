// What lies under a short answer, each opened by itself. None goes without what must be said, nor without the deference.

import type { Locale } from '../../ground/locale.ts'
import { present } from '../../ground/present.ts'
import type { Text } from '../../ground/text.ts'
import { labelsIn } from '../labels.words.ts'
import type { Reply } from '../reply.ts'
import { isListing, isReadInto, linesOf } from './short.ts'

export const layers = ['why', 'figures', 'care'] as const
export type Layer = (typeof layers)[number]

interface Opened {
  readonly title: Text
  readonly lines: readonly Text[]
  /** What must be said, and the deference. */
  readonly closing: readonly Text[]
}

/** Those that hold more than the short answer shows. */
export function layersOf(reply: Reply): readonly Layer[] {
  const { working, assumed, figures, cautions } = reply
  const shown = new Set(linesOf(reply))
  const has: Readonly<Record<Layer, boolean>> = {
    why: assumed.length > 0 || working.some(text => !shown.has(text)),
    figures: figures.length > 0,
    care: cautions.length > 1,
  }
  return layers.filter(layer => has[layer])
}

export function titleOf(reply: Reply, layer: Layer): Text {
  const { all, layers: titles } = labelsIn(reply.locale)
  return layer === 'why' && isListing(reply) ? all : titles[layer]
}

export function openLayer(reply: Reply, layer: Layer): Opened {
  const { cautions, deference, locale } = reply
  const musts = layer === 'care' ? [] : cautions.filter(({ must }) => must).map(({ text }) => text)
  return {
    title: titleOf(reply, layer),
    lines: contents[layer](reply, labelsIn(locale)),
    closing: [...musts, deference],
  }
}

type Labels = ReturnType<typeof labelsIn>

const contents: Readonly<Record<Layer, (reply: Reply, labels: Labels) => readonly Text[]>> = {
  why: (reply, { readAs, assumed: label }) =>
    present([
      isReadInto(reply) ? labelled(readAs, reply.readAs, reply.locale) : undefined,
      ...reply.working,
      ...reply.assumed.map(text => labelled(label, text, reply.locale)),
    ]),
  figures: ({ figures, locale }) => figures.map(({ label, text }) => labelled(label, text, locale)),
  care: ({ cautions }) => cautions.map(({ text }) => text),
}

const labelled = (label: Text, text: Text, { say }: Locale): Text => say`${label}: ${text}`
