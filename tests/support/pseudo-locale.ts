// A language that marks every text, so that a text which no locale has made shows.

import { english, type Locale } from '../../src/ground/locale.ts'
import type { Show } from '../../src/ground/show.ts'
import type { Text } from '../../src/ground/text.ts'

const marked = (open: string, text: string, close: string) => (text === '' ? text : `${open}${text}${close}`) as Text

/** Literal pieces stand in «», numbers in ⟨⟩, and words that stay as they are in ‹›. */
export function pseudo(mark: '.' | ','): Locale {
  const { show, own } = english(mark)
  const shown = Object.fromEntries(
    Object.entries(show).map(([name, write]) => [
      name,
      typeof write === 'function'
        ? (...values: [number, number]) => marked('⟨', (write as (...v: number[]) => string)(...values), '⟩')
        : write,
    ]),
  ) as unknown as Show
  return {
    say: (pieces, ...values) =>
      pieces.map((piece, index) => `${marked('«', piece, '»')}${values[index] ?? ''}`).join('') as Text,
    show: shown,
    own: words => marked('‹', own(words), '›'),
  }
}

/** What of a text no locale has made: its letters outside of all marks. */
export function unmarked(text: string): readonly string[] {
  let plain = text
  for (let before = ''; before !== plain; ) {
    before = plain
    plain = plain.replace(/«[^«»]*»|⟨[^⟨⟩]*⟩|‹[^‹›]*›/gu, ' ')
  }
  return plain.match(/\p{L}{2,}/gu) ?? []
}
