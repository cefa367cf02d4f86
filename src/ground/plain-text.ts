// Text as typed, made plain: one kind of space, sign, ohm and micro, and nothing invisible.

import type { Said } from './locale.ts'
import { questionOfAtMost, tooLong } from './plain-text.words.ts'
import { Problem, type Wanted } from './problem.ts'

/** Longer texts are no question about charging; the limit also bounds the work of every reader. */
export const longestText = 4000
const spaces = /\p{White_Space}+/gu
const invisible = /[\p{Cc}\p{Cf}]/gu
const plainForms: readonly (readonly [RegExp, string])[] = [
  [/\u2126/g, 'Ω'],
  [/[\u00b5\u03bc]/g, 'µ'],
  [/\u2103/g, '°C'],
  [/\u2109/g, '°F'],
  [/[\u2010-\u2015\u2212]/g, '-'],
  [/[\u00d7\u2715]/g, 'x'],
  [/[\u2018-\u201b\u2032]/g, "'"],
  [/[\u201c-\u201f\u2033\u00ab\u00bb\u300c\u300d]/g, '"'],
]

/**
 * Folds the variants of one sign into one, full-width forms into ASCII and runs of spaces into a single
 * space. Not Unicode's NFKC: that would read 5² as 52. Throws a Problem above `longestText` characters.
 */
export function plainText(text: string): string {
  if (text.length > longestText) {
    throw new Problem({
      what: tooLong(text.length),
      token: shortened(text),
      expected: questionOfAtMost(longestText),
      example: 'current pack: 3S 720 LiHV charger: 0.3/0.8/1.5/3A',
    })
  }
  let plain = text.replace(spaces, ' ').replace(invisible, '')
  plain = plain.replace(/[\uff01-\uff5e]/g, wide => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
  for (const [variant, form] of plainForms) plain = plain.replace(variant, form)
  return plain.trim()
}

/** Without the quotes around the whole of it. */
export const unquoted = (plain: string): string =>
  /^"([^"]+)"$|^'([^']+)'$/.exec(plain)?.slice(1).find(Boolean)?.trim() ?? plain

/** A token short enough to be quoted in a reply. */
export function shortened(token: string, length = 40): string {
  const characters = [...token.slice(0, length * 2)]
  return characters.length > length || token.length > length * 2 ? `${characters.slice(0, length).join('')}…` : token
}

/** A problem with this part of the question, quoted where there is anything to quote. */
export const problemAt = (token: string, what: Said, wanted: Wanted): Problem =>
  new Problem({ what, token: token === '' ? undefined : shortened(token), ...wanted })
