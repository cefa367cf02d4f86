// A reply as one Discord message: the short answer, or one layer of it; read aloud in the order in which it is read.

import type { APIAttachment, APIEmbed } from 'discord.js'
import { openLayer } from '../../assistant/layers/opened.ts'
import { isWhole, type ShortLine, shortOf } from '../../assistant/layers/short.ts'
import type { Reply, Verdict } from '../../assistant/reply.ts'
import type { Text } from '../../ground/text.ts'
import { type ButtonRow, buttonRows, type Questions } from './buttons.ts'
import type { View } from './custom-id.ts'
import { clipped, escapeText, fitting, pieces } from './text.ts'

/** Discord's limits: https://docs.discord.com/developers/resources/message#embed-object-embed-limits */
const longest = { description: 4096, field: 1024, fields: 25, total: 6000, alternative: 1024 }
const longestLine = 1000
/** Also an answer this long leaves room for what else must be told. */
const longestAnswer = 2500
const colours: Readonly<Record<Verdict, number>> = { go: 0x2e7d32, 'go with care': 0xf9a825, 'do not charge': 0xc62828 }
const plainColour = 0x546e7a

export interface Picture {
  readonly filename: string
  /** What it shows, in words. */
  readonly alternative: string
}

export interface RenderRules {
  readonly view: View
  readonly behind: Questions
  readonly pictures: readonly Picture[]
}

/** The part of a message that is the same in a reply, an interaction's answer and an edit. */
export interface Rendered {
  readonly embeds: APIEmbed[]
  readonly components: ButtonRow[]
  /** Complete: an edit drops the files that are not listed. */
  readonly attachments: (Pick<APIAttachment, 'id' | 'filename'> & { description?: string })[]
  /** Nobody is pinged, whatever the text holds. */
  readonly allowed_mentions: { parse: []; replied_user: false }
}

const nobody: Rendered['allowed_mentions'] = { parse: [], replied_user: false }
const bare: RenderRules = { view: 'brief', behind: new Map(), pictures: [] }

/** Throws a RangeError where what must be said is more than a message holds: a caution is never cut. */
export function renderReply(reply: Reply, { view, behind, pictures }: RenderRules = bare): Rendered {
  const color = reply.verdict ? colours[reply.verdict] : plainColour
  const main = { color, ...bodyOf(view === 'brief' ? shortLines(reply) : layerLines(reply, view)) }
  const shown = view === 'brief' ? pictures : []
  return {
    embeds: illustrated(main, shown),
    components: view === 'brief' ? buttonRows(reply, behind) : [],
    attachments: view === 'brief' ? attachments(reply, shown) : [],
    allowed_mentions: nobody,
  }
}

/** Words that answer nothing. */
export const renderText = (text: Text): Rendered => ({
  embeds: [{ color: plainColour, description: escapeText(text) }],
  components: [],
  attachments: [],
  allowed_mentions: nobody,
})

/** The answer is strong; what may hold words of the asker is bounded. */
function shortLines(reply: Reply): readonly string[] {
  const [first, ...others] = shortOf(reply)
  return [`**${clipped(escapeText(first?.text ?? ''), longestAnswer)}**`, ...others.map(lineOf)]
}

const lineOf = (line: ShortLine): string =>
  isWhole(line) ? escapeText(line.text) : clipped(escapeText(line.text), longestLine)

function layerLines(reply: Reply, view: Exclude<View, 'brief'>): readonly string[] {
  const { title, lines, closing } = openLayer(reply, view)
  const end = closing.map(escapeText)
  const bullets = lines.map(line => `• ${escapeText(line)}`)
  if (view === 'care') return [`**${title}**`, ...bullets, ...end]
  const room = longest.description - end.join('\n').length - title.length - 8
  const shorter = bullets.map(line => clipped(line, longestLine))
  return [`**${title}**`, ...fitting(shorter, room, reply.locale), ...end]
}

/** As description, and what that does not hold as fields without a name below it. */
function bodyOf(lines: readonly string[]): Pick<APIEmbed, 'description' | 'fields'> {
  const [description = ''] = pieces(lines, longest.description)
  const rest = lines.join('\n').slice(description.length).trimStart().split('\n')
  const fields = pieces(rest, longest.field).map(value => ({ name: '\u200b', value }))
  const total = fields.reduce((sum, { name, value }) => sum + name.length + value.length, description.length)
  if (total > longest.total || fields.length > longest.fields) throw new RangeError('the cautions do not fit a message')
  return fields.length > 0 ? { description, fields } : { description }
}

/** In the order in which the files are sent: pictures, then documents. */
function attachments({ documents }: Reply, pictures: readonly Picture[]): Rendered['attachments'] {
  const described = pictures.map(({ filename, alternative }) => ({
    filename,
    description: alternative.slice(0, longest.alternative),
  }))
  return [...described, ...documents.map(({ name }) => ({ filename: name }))].map((file, at) => ({
    id: String(at),
    ...file,
  }))
}

function illustrated(main: APIEmbed, pictures: readonly Picture[]): APIEmbed[] {
  const [first, ...others] = pictures.map(({ filename }) => ({ image: { url: `attachment://${filename}` } }))
  return [{ ...main, ...first }, ...others.map(other => ({ color: main.color ?? plainColour, ...other }))]
}
