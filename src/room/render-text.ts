// A reply for the terminal: the answer first, then what it rests on, wrapped to the window.

import { styleText } from 'node:util'
import stringWidth from 'string-width'
import wrapAnsi from 'wrap-ansi'
import { type Labels, labelsIn } from '../assistant/labels.words.ts'
import type { Figure, Reply, Verdict } from '../assistant/reply.ts'

export interface TextRules {
  /** Columns of the window. */
  readonly width: number
  readonly colour: boolean
}

type Style = Parameters<typeof styleText>[0]
const verdictStyle: Record<Verdict, Style> = { go: 'green', 'go with care': 'yellow', 'do not charge': 'red' }

export function renderText(reply: Reply, { width, colour }: TextRules): string {
  const styled = (style: Style, text: string) => (colour ? styleText(style, text, { validateStream: false }) : text)
  const wrapped = (text: string, first = '', rest = first) => {
    const lines = wrapAnsi(text, Math.max(20, width - stringWidth(rest)), { hard: true }).split('\n')
    return lines.map((line, at) => (at === 0 ? first : rest) + line).join('\n')
  }
  const listed = (title: string, items: readonly string[]) =>
    items.length > 0 ? [styled('bold', title), ...items.map(item => wrapped(item, '  - ', '    '))].join('\n') : ''

  const { verdict, problem } = reply
  const labels = labelsIn(reply.locale)
  const blocks = [
    [
      verdict ? styled(verdictStyle[verdict], `[${labels.verdicts[verdict]}]`) : '',
      wrapped(styled('bold', reply.headline)),
      ...problemLines(problem, labels).map(line => wrapped(line, '  ', '    ')),
    ],
    [
      styled('dim', wrapped(`${labels.readAs}: ${reply.readAs}`, '', '  ')),
      reply.seeAlso === undefined ? '' : styled('dim', wrapped(`${labels.seeAlso}: ${reply.seeAlso}`, '', '  ')),
      ...reply.assumed.map(text => styled('dim', wrapped(`${labels.assumed}: ${text}`, '', '  '))),
    ],
    figureLines(reply.figures),
    [listed(labels.working, reply.working)],
    [
      listed(
        labels.cautions,
        reply.cautions.map(({ text }) => text),
      ),
      wrapped(reply.deference, '  '),
    ],
    reply.followUps.length > 0
      ? [
          styled('bold', labels.whatIf),
          ...reply.followUps.map(({ label, question }) => wrapped(`${label}: ${question}`, '  - ', '    ')),
        ]
      : [],
  ]
  return blocks
    .map(lines => lines.filter(Boolean).join('\n'))
    .filter(Boolean)
    .join('\n\n')
}

function problemLines(problem: Reply['problem'], labels: Labels): readonly string[] {
  if (!problem) return []
  const { token, expected, example } = problem
  const lines = [`${labels.expected}: ${expected}`, `${labels.example}: ${example}`]
  return token === undefined ? lines : [`${labels.at}: "${token}"`, ...lines]
}

function figureLines(figures: readonly Figure[]): string[] {
  const widest = Math.max(0, ...figures.map(({ label }) => stringWidth(label)))
  return figures.map(({ label, text }) => `  ${label}${' '.repeat(widest - stringWidth(label))}  ${text}`)
}
