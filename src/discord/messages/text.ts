// Plain text made fit for Discord: its markup escaped, long lines clipped, lists cut to the room there is.

import { labelsIn } from '../../assistant/labels.words.ts'
import { unbroken } from '../../assistant/layers/budget.ts'
import type { Locale } from '../../ground/locale.ts'

/**
 * Escapes every sign that Discord's markup, mentions and links are made of, and folds line breaks, so that
 * a line that we begin ourselves cannot become a heading, list or quote.
 */
export function escapeText(text: string): string {
  return unbroken(text)
    .replace(/[\r\n\t\v\f\u0085\u2028\u2029]+/g, ' ')
    .replace(/[\\*_~`|<>[\]]/g, '\\$&')
    .replace(/:(?=\/\/)/g, '\\:')
}

/** At most `longest` characters; never half an escape or half a character. */
export function clipped(escaped: string, longest: number): string {
  if (escaped.length <= longest) return escaped
  const cut = escaped.slice(0, longest - 1).replace(/[\ud800-\udbff]$/, '')
  const slashes = /\\*$/.exec(cut)?.[0].length ?? 0
  return `${slashes % 2 === 1 ? cut.slice(0, -1) : cut}…`
}

/** As many whole lines as `room` characters hold, joined by line breaks; what is left out is said. */
export function fitting(lines: readonly string[], room: number, locale: Locale): string[] {
  if (lines.join('\n').length <= room) return [...lines]
  const shortened = `… (${labelsIn(locale).shortened})`
  const kept: string[] = []
  let left = room - shortened.length
  if (left < 0) return []
  for (const line of lines) {
    left -= line.length + 1
    if (left < 0) break
    kept.push(line)
  }
  return [...kept, shortened]
}

/** Lines joined into pieces of at most `longest` characters each; a longer line is parted between words. */
export function pieces(lines: readonly string[], longest: number): string[] {
  const result: string[] = []
  let piece = ''
  for (const line of lines.flatMap(line => parted(line, longest))) {
    if (piece !== '' && piece.length + 1 + line.length > longest) {
      result.push(piece)
      piece = line
    } else {
      piece = piece === '' ? line : `${piece}\n${line}`
    }
  }
  return piece === '' ? result : [...result, piece]
}

function parted(line: string, longest: number): string[] {
  if (line.length <= longest) return [line]
  const space = line.lastIndexOf(' ', longest)
  const end = space > 0 ? space : longest
  return [line.slice(0, end), ...parted(line.slice(end).trimStart(), longest)]
}
