// A reply as one Discord message: answer first, verdict in words and colour, cautions always whole.

import type { APIAttachment, APIEmbed, APIEmbedField } from 'discord.js'
import { labelsIn } from '../../assistant/labels.words.ts'
import type { Reply, Verdict } from '../../assistant/reply.ts'
import { present } from '../../ground/present.ts'
import type { Text } from '../../ground/text.ts'
import { type ButtonRow, buttonRows, isAllWorking, type QuestionIds } from './buttons.ts'
import type { View } from './custom-id.ts'
import { clipped, escapeText, fitting, pieces } from './text.ts'

/** Discord's limits: https://docs.discord.com/developers/resources/message#embed-object-embed-limits */
const longest = { description: 4096, field: 1024, total: 6000, alternative: 1024 }
/** Also beside a headline this long there is room for what else must be told. */
const longestHeadline = 3500
const roomForTellings = 500
/** Fits a field together with its bullet. */
const longestLine = 1000
const colours: Readonly<Record<Verdict, number>> = { go: 0x2e7d32, 'go with care': 0xf9a825, 'do not charge': 0xc62828 }
const plainColour = 0x546e7a

export interface Picture {
  readonly filename: string
  /** What it shows, in words. */
  readonly alternative: string
}

export interface RenderRules {
  readonly view: View
  readonly ids: QuestionIds
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

const bare: RenderRules = { view: 'brief', ids: new Map(), pictures: [] }

/**
 * What does not fit is left out from the end of the working first, then of the figures and assumptions;
 * never a caution. Throws a RangeError where the cautions alone are more than a message holds.
 */
export function renderReply(reply: Reply, rules: RenderRules = bare): Rendered {
  const cautions = fields(
    labelsIn(reply.locale).cautions,
    reply.cautions.map(({ text }) => `• ${escapeText(text)}`),
  )
  const roomForHeadline = longest.total - sizeOf(cautions) - reply.deference.length - roomForTellings
  const told = tellings(reply, Math.max(0, Math.min(longestHeadline, roomForHeadline)))
  const fixed = told.join('\n').length + sizeOf(cautions) + reply.deference.length + 1
  if (fixed > longest.total) throw new RangeError(`the cautions of "${reply.command}" do not fit a message`)

  const room = Math.min(longest.description - told.join('\n').length - 1, longest.total - fixed)
  const details = fitting(detailLines(reply), room, reply.locale)
  const left = longest.total - fixed - details.join('\n').length
  const showsWorking = rules.view === 'working' || isAllWorking(reply)
  const working = showsWorking ? workingFields(reply, left) : []

  const main: APIEmbed = {
    color: reply.verdict ? colours[reply.verdict] : plainColour,
    description: [...told, ...details].join('\n'),
    fields: [...cautions, ...working],
    footer: { text: reply.deference },
  }
  return {
    embeds: illustrated(main, rules.pictures),
    components: buttonRows(reply, rules.view, rules.ids),
    attachments: attachments(reply, rules.pictures),
    allowed_mentions: { parse: [], replied_user: false },
  }
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

/** What must be said: the answer, the verdict, and what is wrong with a question that cannot be answered. */
function tellings({ headline, verdict, problem, locale }: Reply, room: number): string[] {
  const labels = labelsIn(locale)
  return present([
    `**${clipped(escapeText(headline), room)}**`,
    verdict && `${labels.verdict}: **${labels.verdicts[verdict]}**`,
    problem?.token && line(labels.at, problem.token),
    problem && line(labels.expected, problem.expected),
    problem && line(labels.example, problem.example),
  ])
}

function detailLines({ readAs, seeAlso, assumed, figures, locale }: Reply): string[] {
  const labels = labelsIn(locale)
  return present([
    line(labels.readAs, readAs),
    seeAlso && line(labels.seeAlso, seeAlso),
    ...assumed.map(text => line(labels.assumed, text)),
    figures.length > 0 ? '' : undefined,
    ...figures.map(({ label, text }) => `• ${escaped(label)}: **${clipped(escapeText(text), 200)}**`),
  ])
}

const escaped = (text: string): string => clipped(escapeText(text), longestLine)
const line = (label: Text, text: string): string => `${label}: ${escaped(text)}`

function workingFields(reply: Reply, room: number): APIEmbedField[] {
  const namesAndBreaks = 40
  const { details, working } = labelsIn(reply.locale)
  const lines = reply.working.map(step => `• ${escaped(step)}`)
  const fitted = fitting(lines, room - namesAndBreaks, reply.locale)
  return fields(isAllWorking(reply) ? details : working, fitted)
}

/** A field with a name, and further ones without where one does not hold the lines. */
function fields(name: string, lines: readonly string[]): APIEmbedField[] {
  return pieces(lines, longest.field).map((value, at) => ({ name: at === 0 ? name : '\u200b', value }))
}

const sizeOf = (fields: readonly APIEmbedField[]): number =>
  fields.reduce((sum, { name, value }) => sum + name.length + value.length, 0)

function illustrated(main: APIEmbed, pictures: readonly Picture[]): APIEmbed[] {
  const [first, ...others] = pictures.map(({ filename }) => ({ image: { url: `attachment://${filename}` } }))
  return [{ ...main, ...first }, ...others.map(other => ({ color: main.color ?? plainColour, ...other }))]
}
