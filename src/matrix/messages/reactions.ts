// What a person can react with below an answer, and the words that do the same in a reply.

import { type Layer, layersOf, titleOf } from '../../assistant/layers/opened.ts'
import { marksWrong } from '../../assistant/moderating/marking.ts'
import type { Reply } from '../../assistant/reply.ts'
import type { Text } from '../../ground/text.ts'

export type Tap =
  | { readonly kind: 'layer'; readonly layer: Layer }
  | { readonly kind: 'less' }
  | { readonly kind: 'wrong' }
  /** One of the questions that the answer suggests. */
  | { readonly kind: 'ask'; readonly index: number }

const layerSigns: Readonly<Record<Layer, string>> = { why: '❔', figures: '🔢', care: '🩹' }
const lessSign = '➖'
const numberSigns = ['1️⃣', '2️⃣', '3️⃣', '4️⃣']
const mostSuggested = 2

/** A tap that the answer offers. */
export interface Offered {
  readonly sign: string
  readonly label: Text | undefined
  readonly tap: Tap
}

/** Layers first; where something is asked back, its choices, whose numbers stand in the answer already. */
export function offeredBy(reply: Reply): readonly Offered[] {
  const asks = (most: number): readonly Offered[] =>
    reply.followUps
      .slice(0, most)
      .map(({ label }, index) => ({
        sign: numberSigns[index] ?? '',
        label: reply.problem ? undefined : label,
        tap: { kind: 'ask', index },
      }))
  if (reply.problem) return asks(numberSigns.length)
  const opens = reply.question === undefined ? [] : layersOf(reply)
  return [
    ...opens.map(layer => ({
      sign: layerSigns[layer],
      label: titleOf(reply, layer),
      tap: { kind: 'layer', layer } as const,
    })),
    ...asks(mostSuggested),
  ]
}

const bare = (said: string): string =>
  said
    .replace(/\ufe0f/g, '')
    .trim()
    .toLowerCase()
const meanings: ReadonlyMap<string, Tap> = new Map<string, Tap>([
  ...Object.entries(layerSigns).flatMap(([layer, sign]) => {
    const tap = { kind: 'layer', layer: layer as Layer } as const
    return [[layer, tap] as const, [bare(sign), tap] as const]
  }),
  ...['less', lessSign].map(word => [word, { kind: 'less' }] as const),
  ...numberSigns.flatMap((sign, index) =>
    [bare(sign), String(index + 1)].map(said => [said, { kind: 'ask', index }] as const),
  ),
])

/** What a reaction, or the words of a reply, call for; undefined where they are nothing of the kind. */
export const tapIn = (said: string): Tap | undefined =>
  marksWrong(bare(said)) ? { kind: 'wrong' } : meanings.get(bare(said))
