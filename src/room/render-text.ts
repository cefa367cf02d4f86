// A reply for the terminal: what a phone would show of it, or all of it, wrapped to the window.

import { styleText } from 'node:util'
import stringWidth from 'fast-string-width'
import { labelsIn } from '../assistant/labels.words.ts'
import { fits, wrapped as rowsIn } from '../assistant/layers/budget.ts'
import { type Layer, layers, openLayer } from '../assistant/layers/opened.ts'
import { shortOf } from '../assistant/layers/short.ts'
import type { Reply, Verdict } from '../assistant/reply.ts'
import { present } from '../ground/present.ts'
import type { Text } from '../ground/text.ts'

export interface TextRules {
  /** Columns of the window. */
  readonly width: number
  readonly colour: boolean
}

type Style = Parameters<typeof styleText>[0]
const verdictStyle: Record<Verdict, Style> = { go: 'green', 'go with care': 'yellow', 'do not charge': 'red' }

/** The short answer, and below it what can be asked for, from most to least: as much of that as still fits a phone. */
export function renderText(reply: Reply, rules: TextRules, taps: readonly Text[] = []): string {
  const lines = shortOf(reply).map(({ text }) => text)
  const tap = taps.find(one => fits([...lines, one]))
  const [first, ...others] = lines.map(line => wrapped(line, rules))
  const style = reply.verdict === undefined ? 'bold' : (['bold', verdictStyle[reply.verdict]] as const)
  return present([
    styled(style as Style, first ?? '', rules),
    ...others,
    tap ? styled('dim', tap, rules) : undefined,
  ]).join('\n')
}

export function renderLayer(reply: Reply, layer: Layer, rules: TextRules): string {
  const { title, lines, closing } = openLayer(reply, layer)
  return [...listed(title, lines, rules), ...closing.map(line => wrapped(line, rules))].join('\n')
}

/** All of it. */
export function renderFull(reply: Reply, rules: TextRules): string {
  const { whatIf } = labelsIn(reply.locale)
  const asks = reply.followUps.map(({ label }) => label)
  return present([
    renderText(reply, rules),
    ...layers.flatMap(layer => {
      const { title, lines } = openLayer(reply, layer)
      return lines.length > 0 ? [listed(title, lines, rules).join('\n')] : []
    }),
    asks.length > 0 ? listed(whatIf, asks, rules).join('\n') : undefined,
  ]).join('\n\n')
}

const styled = (style: Style, text: string, { colour }: TextRules): string =>
  colour ? styleText(style, text, { validateStream: false }) : text

function wrapped(text: string, { width }: TextRules, first = '', rest = first): string {
  const lines = rowsIn(text, Math.max(20, width - stringWidth(rest)))
  return lines.map((line, at) => (at === 0 ? first : rest) + line).join('\n')
}

const listed = (title: string, items: readonly string[], rules: TextRules): readonly string[] => [
  styled('bold', title, rules),
  ...items.map(item => wrapped(item, rules, '  - ', '    ')),
]
