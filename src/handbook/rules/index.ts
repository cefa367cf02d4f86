// The words of every rule: one place that cautions, refusals, the rules card and the documents are written from.

import type { Found } from '../../charging/envelope/judge.ts'
import { type LimitKey, limits } from '../../charging/envelope/limits/index.ts'
import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'
import { dangerWords } from './dangers.words.ts'
import { doubtWords } from './doubts.words.ts'
import { limitWords } from './limits.words.ts'
import type { Lines, Met } from './lines.ts'
import { traitWords } from './traits.words.ts'

type AnyWords = Readonly<Record<string, (met: Met) => Lines>>
const made = new WeakMap<Locale, AnyWords>()

function wordsIn(locale: Locale): AnyWords {
  const earlier = made.get(locale)
  if (earlier) return earlier
  const words = {
    ...dangerWords(locale),
    ...doubtWords(locale),
    ...limitWords(locale),
    ...traitWords(locale),
  } as AnyWords
  made.set(locale, words)
  return words
}

/** What is said of a rule that fits. */
export function linesOf(found: Found, locale: Locale): readonly [Text, ...Text[]] {
  const words = wordsIn(locale)[found.key]
  if (!words) throw new RangeError(`the rule ${found.key} has no words`)
  return words({ than: shown(found, found.than, locale), met: shown(found, found.met, locale), found })
}

function shown({ key }: Found, value: number | undefined, { show, own }: Locale): Text {
  if (value === undefined) return own('')
  const { unit } = limits[key as LimitKey]
  if (unit === 'count') return show.number(value, 0)
  if (unit === 'duration') return show.roughly(value, Math.ceil)
  return unit === 'times' ? show.number(value, 1) : show[unit](value)
}
