// "The first one again": a question from before the last one.

import type { Frame } from '../frames/frame.ts'
import { lookedUp } from '../model/words.ts'

const wordSet = (words: string): ReadonlySet<string> => new Set(words.split(' '))
const oldest = wordSet('first original initial')
const former = wordSet('previous earlier back before last')
const beside = wordSet(
  'and ok okay so now then please pls go going return to the a one ones it that again question as was i asked had we were',
)

const letters = /\p{L}[\p{L}'’-]*/gu

/** The question that nothing but words for it means; undefined where anything else is said, or none was asked. */
export function goesBack(text: string, frame: Frame): Frame | undefined {
  const words = (text.match(letters) ?? []).map(lookedUp)
  const says = (set: ReadonlySet<string>) => words.some(word => set.has(word))
  const isOnly = words.every(word => oldest.has(word) || former.has(word) || beside.has(word))
  if (/\d/.test(text) || !isOnly || words.length < 2) return undefined
  if (says(oldest)) return firstOf(frame)
  return says(former) ? frame.before : undefined
}

const firstOf = (frame: Frame): Frame | undefined => (frame.before?.before ? firstOf(frame.before) : frame.before)
