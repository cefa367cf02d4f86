// What is typed in the room right after an answer: a layer of it, all of it, or a question that it suggested.

import { type Layer, layersOf } from '../assistant/layers/opened.ts'
import type { FollowUp, Reply } from '../assistant/reply.ts'
import type { Text } from '../ground/text.ts'
import { tapsIn } from './room.words.ts'

export type Next =
  | { readonly kind: 'layer'; readonly layer: Layer }
  | { readonly kind: 'full' }
  | { readonly kind: 'question'; readonly question: string }

/** A label is typed without the question mark. */
export function nextOf(line: string, last: Reply | undefined): Next {
  const said = plain(line)
  const layer = last && layersOf(last).find(one => one === said)
  if (layer) return { kind: 'layer', layer }
  if (last && said === 'more') return { kind: 'full' }
  const asked = last?.followUps.find(({ label }) => plain(label) === said)
  return { kind: 'question', question: asked?.question ?? line }
}

export const tapsOf = (reply: Reply): readonly Text[] =>
  tapsIn(layersOf(reply), reply.problem ? [] : reply.followUps.map(({ label }: FollowUp) => label), reply.locale)

const plain = (text: string): string => text.replace(/\?$/, '').trim().toLowerCase()
