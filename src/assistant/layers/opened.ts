// What lies under a short answer, each opened by itself. None goes without what must be said, nor without the deference.

import type { Locale } from '../../ground/locale.ts'
import { present } from '../../ground/present.ts'
import type { Text } from '../../ground/text.ts'
import { labelsIn } from '../labels.words.ts'
import type { Reply } from '../reply.ts'
import { isListing, isReadInto, isRefusal, linesOf, shortOf } from './short.ts'

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
    care: isRefusal(reply) ? contents.care(reply).length > 0 : cautions.length > 1,
  }
  return layers.filter(layer => has[layer])
}

export function titleOf(reply: Reply, layer: Layer): Text {
  const { all, layers: titles } = labelsIn(reply.locale)
  return layer === 'why' && isListing(reply) ? all : titles[layer]
}

export function openLayer(reply: Reply, layer: Layer): Opened {
  return {
    title: titleOf(reply, layer),
    lines: contents[layer](reply),
    closing: [...mustsBelow(reply, layer), reply.deference],
  }
}

/** Of a refusal that is all of it: the danger, and each step. */
function mustsBelow(reply: Reply, layer: Layer): readonly Text[] {
  if (isRefusal(reply))
    return shortOf(reply).flatMap(({ part, text }) => (part === 'answer' || part === 'must' ? [text] : []))
  return layer === 'care' ? [] : reply.cautions.filter(({ must }) => must).map(({ text }) => text)
}

const contents: Readonly<Record<Layer, (reply: Reply) => readonly Text[]>> = {
  why: reply => {
    const { readAs, assumed: label } = labelsIn(reply.locale)
    return present([
      isReadInto(reply) ? labelled(readAs, reply.readAs, reply.locale) : undefined,
      ...reply.working,
      ...reply.assumed.map(text => labelled(label, text, reply.locale)),
    ])
  },
  figures: ({ figures, locale }) => figures.map(({ label, text }) => labelled(label, text, locale)),
  care: reply => reply.cautions.flatMap(({ text, must, usual }) => (isRefusal(reply) && (must || usual) ? [] : [text])),
}

const labelled = (label: Text, text: Text, { say }: Locale): Text => say`${label}: ${text}`
