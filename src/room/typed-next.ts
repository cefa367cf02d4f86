// What is typed in the room right after an answer: a layer of it, all of it, or a question that it suggested.

import { type Layer, layersOf } from '../assistant/layers/opened.ts'
import { isListing } from '../assistant/layers/short.ts'
import type { FollowUp, Reply } from '../assistant/reply.ts'
import type { Text } from '../ground/text.ts'
import { tapsIn } from './room.words.ts'

export type Next =
  | { readonly kind: 'layer'; readonly layer: Layer }
  | { readonly kind: 'full' }
  | { readonly kind: 'question'; readonly question: string }

export function nextOf(line: string, last: Reply | undefined): Next {
  const said = plain(line)
  const layer = last && layersOf(last).find(one => one === said)
  if (layer) return { kind: 'layer', layer }
  if (last && said === 'more') return { kind: 'full' }
  return { kind: 'question', question: line }
}

/** What a list leaves out is all that there is more of it. */
export const tapsOf = (reply: Reply): readonly Text[] =>
  tapsIn(openedBy(reply), reply.problem ? [] : reply.followUps.map(({ label }: FollowUp) => label), reply.locale)

function openedBy(reply: Reply): readonly string[] {
  const opens = layersOf(reply)
  return opens.length === 0 ? [] : ['more', ...opens.filter(layer => layer !== 'why' || !isListing(reply))]
}

const plain = (text: string): string => text.replace(/\?$/, '').trim().toLowerCase()
