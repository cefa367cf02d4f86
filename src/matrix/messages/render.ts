// A reply as the text of one Matrix message: answer first, verdict in words, cautions always whole.

import { labelsIn } from '../../assistant/labels.words.ts'
import type { Reply } from '../../assistant/reply.ts'
import { present } from '../../ground/present.ts'
import { type Block, html, plainText, type Span } from './blocks.ts'
import { hideHint, showHint } from './render.words.ts'

export interface RenderRules {
  /** Stands before the commands to copy; empty in direct messages. */
  readonly prefix: string
  readonly working: boolean
  /** Asked again it would change what is kept again: its working is shown at once, and not offered later. */
  readonly once?: boolean
}

/** The part of a message that is the same in an answer and in its edit. */
export interface Rendered {
  readonly msgtype: 'm.notice'
  readonly body: string
  readonly format: 'org.matrix.custom.html'
  readonly formatted_body: string
}

/** An event may have 65,536 bytes; encrypted, and twice in an edit, this much text stays well below. */
const most_bytes = 20_000

/** What a person reacts with, and the words that do the same in a reply. */
export const showWorking = { reaction: '➕', words: 'show working' }
export const hideWorking = { reaction: '➖', words: 'hide working' }
const usual: RenderRules = { prefix: '!charge', working: false }

/** Shares of the working and of the other lists that are kept, tried in turn until the message fits. */
const shares: readonly (readonly [working: number, others: number])[] = [
  [1, 1],
  [0.5, 1],
  [0.2, 1],
  [0, 1],
  [0, 0.5],
  [0, 0.1],
  [0, 0],
]

/**
 * What does not fit is left out from the end of the working first, then of the figures, assumptions and
 * follow-ups, and said to be; never a caution. Throws a RangeError where the cautions alone do not fit.
 */
export function renderReply(reply: Reply, rules: RenderRules = usual): Rendered {
  for (const [working, others] of shares) {
    const kept = shortened(reply, working, others)
    const note = working < 1 ? [{ line: [`(${labelsIn(reply.locale).shortened})`] }] : []
    const rendered = renderBlocks([...blocksOf(kept, rules), ...note])
    if (bytesOf(rendered) <= most_bytes) return rendered
  }
  throw new RangeError(`the cautions of "${reply.command}" do not fit a message`)
}

/** Text of our own outside any reply. */
export const renderText = (text: string): Rendered => renderBlocks([{ line: [text] }])

function renderBlocks(blocks: readonly Block[]): Rendered {
  return {
    msgtype: 'm.notice',
    body: plainText(blocks),
    format: 'org.matrix.custom.html',
    formatted_body: html(blocks),
  }
}

const bytesOf = (rendered: Rendered): number => Buffer.byteLength(JSON.stringify(rendered))

function shortened(reply: Reply, working: number, others: number): Reply {
  const part = <T>(list: readonly T[], share: number): T[] => list.slice(0, Math.ceil(list.length * share))
  return {
    ...reply,
    working: part(reply.working, working),
    figures: part(reply.figures, others),
    assumed: part(reply.assumed, others),
    followUps: part(reply.followUps, others),
  }
}

const longestLine = 1000
/** What must be known first stands in it. */
const longestHeadline = 4000

/** Whatever may hold words of the asker is bounded; a surrogate pair is not parted. */
const clipped = (text: string, most = longestLine): string =>
  text.length > most ? `${text.slice(0, most - 1).replace(/[\ud800-\udbff]$/, '')}…` : text

function blocksOf(reply: Reply, { prefix, working, once = false }: RenderRules): Block[] {
  const { verdict, headline, problem, readAs, seeAlso, assumed, figures, cautions, deference, followUps } = reply
  const { locale, working: steps } = reply
  const labels = labelsIn(locale)
  const isAllWorking = verdict === undefined && figures.length === 0
  const isFixed = once || isAllWorking
  const command = (question: string): Span => ({ code: prefix === '' ? question : `${prefix} ${question}` })
  return present([
    { line: [{ strong: clipped(headline, longestHeadline) }] },
    verdict && { line: [`${labels.verdict}: `, { strong: labels.verdicts[verdict] }] },
    problem?.token === undefined ? undefined : { line: [`${labels.at}: `, { code: clipped(problem.token) }] },
    problem && { line: [`${labels.expected}: ${clipped(problem.expected)}`] },
    problem && { line: [`${labels.example}: `, { code: clipped(problem.example) }] },
    { line: [`${labels.readAs}: ${clipped(readAs)}`] },
    seeAlso && { line: [`${labels.seeAlso}: ${clipped(seeAlso)}`] },
    list(labels.assumed, assumed, text => [clipped(text)]),
    list(labels.figures, figures, ({ label, text }) => [`${label}: `, { strong: clipped(text) }]),
    list(isAllWorking ? labels.details : labels.working, working || isFixed ? steps : [], step => [clipped(step)]),
    list(labels.cautions, cautions, ({ text }) => [text]),
    { line: [deference] },
    list(labels.whatIf, followUps, ({ label, question }) => [`${label}: `, command(question)]),
    isFixed || steps.length === 0
      ? undefined
      : { line: [working ? hideHint(hideWorking, locale) : showHint(showWorking, locale)] },
  ])
}

const list = <T>(title: string, of: readonly T[], spans: (one: T) => readonly Span[]): Block | undefined =>
  of.length > 0 ? { title, items: of.map(spans) } : undefined
