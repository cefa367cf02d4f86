// A reply as the text of one Matrix message: the short answer, with one of its layers below it where it was opened.

import { fits } from '../../assistant/layers/budget.ts'
import { type Layer, openLayer } from '../../assistant/layers/opened.ts'
import { isWhole, linesOf, shortOf } from '../../assistant/layers/short.ts'
import type { Reply } from '../../assistant/reply.ts'
import type { Text } from '../../ground/text.ts'
import { type Block, html, plainText } from './blocks.ts'
import type { Hint } from './hints.ts'
import { type Offered, offeredBy } from './reactions.ts'
import { leftOut, reactWords } from './render.words.ts'

export interface RenderRules {
  /** The layer that was opened. */
  readonly open?: Layer | undefined
  /** Nothing can be opened or asked on below it: it is a card, or asked again it would change what is kept again. */
  readonly once?: boolean
  /** How questions are shown that people may type. */
  readonly hint?: Hint | undefined
}

/** The part of a message that is the same in an answer and in its edit. */
export interface Rendered {
  readonly msgtype: 'm.text'
  readonly body: string
  readonly format: 'org.matrix.custom.html'
  readonly formatted_body: string
}

/** An event may have 65,536 bytes; encrypted, and twice in an edit, this much text stays well below. */
const most_bytes = 20_000
/** Of a layer so much is shown as fits. Throws a RangeError where what must be said alone does not fit. */
export function renderReply(reply: Reply, rules: RenderRules = {}): Rendered {
  for (const share of [1, 0.5, 0.2, 0]) {
    const blocks = blocksOf(rules.hint?.reply(reply) ?? reply, rules, share)
    const rendered = renderBlocks(rules.hint?.blocks(blocks) ?? blocks)
    if (bytesOf(rendered) <= most_bytes) return rendered
  }
  throw new RangeError(`the cautions of "${reply.command}" do not fit a message`)
}

/** Text of our own outside any reply. */
export const renderText = (text: string): Rendered => renderBlocks([{ lines: [[text]] }])

function renderBlocks(blocks: readonly Block[]): Rendered {
  return { msgtype: 'm.text', body: plainText(blocks), format: 'org.matrix.custom.html', formatted_body: html(blocks) }
}

/** Below it, to be followed. */
export const withLinks = (said: Rendered, links: readonly string[]): Rendered => ({
  ...said,
  body: [said.body, ...links].join('\n'),
  formatted_body: said.formatted_body + links.map(link => `<p><a href="${link}">${link}</a></p>`).join(''),
})

const bytesOf = (rendered: Rendered): number => Buffer.byteLength(JSON.stringify(rendered))

const longestLine = 1000
/** What must be known first stands in it. */
const longestAnswer = 4000

/** Whatever may hold words of the asker is bounded; a surrogate pair is not parted. */
const clipped = (text: string, most = longestLine): string =>
  text.length > most ? `${text.slice(0, most - 1).replace(/[\ud800-\udbff]$/, '')}…` : text

function blocksOf(reply: Reply, { open, once = false }: RenderRules, share: number): readonly Block[] {
  const [first, ...others] = shortOf(reply)
  const taps = once || open ? [] : tapLine(tapsTold(reply), reply)
  const short: Block = {
    lines: [
      [{ strong: clipped(first?.text ?? '', longestAnswer) }],
      ...others.map(line => [isWhole(line) ? line.text : clipped(line.text)]),
      ...taps.map(text => [text]),
    ],
  }
  if (!open) return [short]
  const { title, lines } = openLayer(reply, open)
  const shown = open === 'care' ? lines : lines.slice(0, Math.ceil(lines.length * share)).map(line => clipped(line))
  const items = shown.length < lines.length ? [...shown, leftOut(reply.locale)] : shown
  return [short, { title, items: items.map(item => [item]) }]
}

const opensLayer = ({ tap }: Offered): boolean => tap.kind === 'layer'
const tapLine = (taps: readonly Offered[], { locale }: Reply): readonly Text[] =>
  taps.length > 0 ? [reactWords(taps, locale)] : []

/** What is told of what can be tapped: as much of it as a phone has room for. */
function tapsTold(reply: Reply): readonly Offered[] {
  const offered = offeredBy(reply).filter(({ label }) => label !== undefined)
  const lines = linesOf(reply)
  return [offered, offered.filter(opensLayer)].find(taps => fits([...lines, ...tapLine(taps, reply)])) ?? []
}

/** Those that we place ourselves: a number only where the answer says what it asks. */
export function signsOf(reply: Reply): readonly string[] {
  const told = new Set(tapsTold(reply).map(({ sign }) => sign))
  return offeredBy(reply).flatMap(one => (reply.problem || opensLayer(one) || told.has(one.sign) ? [one.sign] : []))
}
