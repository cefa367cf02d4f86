// Text in blocks, written once and shown twice: plain, and in the part of HTML that Matrix apps agree on.

import { unbroken } from '../../assistant/layers/budget.ts'

/** Plain text, or text made strong or set as code. */
export type Span = string | { readonly strong: string } | { readonly code: string }

export type Block =
  /** Lines close together. */
  | { readonly lines: readonly (readonly Span[])[] }
  | { readonly title: string; readonly items: readonly (readonly Span[])[] }

export function plainText(blocks: readonly Block[]): string {
  const spans = (line: readonly Span[]) => line.map(textOf).join('')
  return blocks
    .map(block =>
      'lines' in block
        ? block.lines.map(spans).join('\n')
        : [`${block.title}:`, ...block.items.map(item => `- ${spans(item)}`)].join('\n'),
    )
    .join('\n\n')
}

/** Tags: https://spec.matrix.org/v1.15/client-server-api/#mroommessage-msgtypes */
export function html(blocks: readonly Block[]): string {
  return blocks
    .map(block =>
      'lines' in block
        ? `<p>${block.lines.map(spansHtml).join('<br>')}</p>`
        : `<p>${escapeHtml(block.title)}:</p><ul>${block.items.map(item => `<li>${spansHtml(item)}</li>`).join('')}</ul>`,
    )
    .join('')
}

const textOf = (span: Span): string => {
  if (typeof span === 'string') return folded(span)
  return folded('strong' in span ? span.strong : span.code)
}

const spansHtml = (spans: readonly Span[]): string =>
  spans
    .map(span => {
      const text = escapeHtml(textOf(span))
      if (typeof span === 'string') return text
      return 'strong' in span ? `<strong>${text}</strong>` : `<code>${text}</code>`
    })
    .join('')

/** One line, without the signs that turn the direction of all that follows. */
const folded = (text: string): string =>
  unbroken(text)
    .replace(/\s*[\r\n\u2028\u2029]\s*/g, ' ')
    .replace(/[\u202a-\u202e\u2066-\u2069\0]/g, '')

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, sign => entities[sign] ?? sign)
