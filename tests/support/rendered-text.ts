// What a person reads of a reply on each surface, taken back out of the surface's own wire shape.

import { type Layer, layers } from '../../src/assistant/layers/opened.ts'
import type { Reply } from '../../src/assistant/reply.ts'
import type { View } from '../../src/discord/messages/custom-id.ts'
import { renderReply as renderDiscord } from '../../src/discord/messages/render.ts'
import { renderReply as renderMatrix } from '../../src/matrix/messages/render.ts'
import { renderJson } from '../../src/room/render-json.ts'
import { renderFull, renderText } from '../../src/room/render-text.ts'

/** One line, one kind of space: wrapping and joints differ by surface, words do not. */
export const folded = (text: string): string => text.replace(/\s+/gu, ' ')

function discordText(reply: Reply, view: View): string {
  const embeds = renderDiscord(reply, { view, behind: new Map(), pictures: [] }).embeds
  const parts = embeds.flatMap(({ description, fields = [] }) => [description, ...fields.map(({ value }) => value)])
  return parts.join('\n').replace(/\\(.)/g, '$1').replaceAll('**', '')
}

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" }

const htmlText = (html: string): string =>
  html.replace(/<[^>]*>/g, ' ').replace(/&(#?\w+);/g, (whole, name: string) => entities[name] ?? whole)

/** By surface and form, with all layers opened. The texts are folded. */
export const textsOf = (reply: Reply): Readonly<Record<string, string>> => textsIn(reply, layers)

/** The same as it is first shown. */
export const shortestTextsOf = (reply: Reply): Readonly<Record<string, string>> => textsIn(reply, [])

function textsIn(reply: Reply, opened: readonly Layer[]): Readonly<Record<string, string>> {
  const matrix = [undefined, ...opened].map(open => renderMatrix(reply, { open }))
  const room = { width: 80, colour: false }
  const texts = {
    'room text': opened.length > 0 ? renderFull(reply, room) : renderText(reply, room),
    'room JSON': Object.values(JSON.parse(renderJson(reply)))
      .map(said)
      .join('\n'),
    Discord: (['brief', ...opened] as const).map(view => discordText(reply, view)).join('\n'),
    'Matrix plain': matrix.map(({ body }) => body).join('\n'),
    'Matrix HTML': matrix.map(({ formatted_body }) => htmlText(formatted_body)).join('\n'),
  }
  return Object.fromEntries(Object.entries(texts).map(([surface, text]) => [surface, folded(text)]))
}

/** Every string in a JSON value, in order. */
function said(value: unknown): string {
  if (typeof value === 'string') return value
  return typeof value === 'object' && value !== null ? Object.values(value).map(said).join('\n') : ''
}
