// A text of another tongue, put into English word for word: answered only where what is wanted stands out.

import { intentsOf } from '../../../language/model/index.ts'
import type { Meant } from '../../../language/reading/meant.ts'
import type { glossed } from '../../../language/tongues/gloss.ts'
import { typedWords } from '../../../language/tongues/glossaries.ts'

type Gloss = ReturnType<typeof glossed>

/** Of a tongue that is not put into English. */
export const asTyped = (text: string): Gloss => ({ text, spanOf: (start, end) => ({ start, end }) })

/** An intent less likely than this is not certain. */
const certainly = 0.5
/** A sentence ends, or another question begins. */
const borders = /[.!?;]\s+|,\s+and\s+/g

/** Read as a whole, else as the first of its sentences that asks something certain. Its values stand where they were typed. */
export function readForeign(gloss: Gloss, read: (english: string) => Meant): Meant {
  const { text } = gloss
  const whole = read(text)
  if (isCertain(whole, text)) return placed(whole, gloss, 0)
  const starts = [0, ...[...text.matchAll(borders)].map(({ index, 0: border }) => index + border.length)]
  for (const [at, start] of starts.length > 1 ? starts.entries() : []) {
    const part = text.slice(start, starts[at + 1])
    const meant = read(part)
    const tells = meant.kind === 'question' && meant.understanding.values.length > 0
    if (tells && isCertain(meant, part)) return placed(meant, gloss, start)
  }
  const { understanding } = placed(whole, gloss, 0)
  return { kind: 'unclear', near: [{ intent: understanding.intent, question: undefined }], understanding }
}

const placed = (meant: Meant, { spanOf }: Gloss, from: number): Meant => {
  const { understanding } = meant
  const values = understanding.values.map(value => ({ ...value, ...spanOf(from + value.start, from + value.end) }))
  return { ...meant, understanding: { ...understanding, values } }
}

/** What is wanted stands out, and half of the words are understood. */
function isCertain({ kind, understanding }: Meant, english: string): boolean {
  if (kind !== 'question' && kind !== 'asks back') return kind === 'smalltalk'
  const [likeliest] = intentsOf(english)
  const isWanted = likeliest?.intent === understanding.intent || likeliest?.intent === 'amend'
  const words = typedWords(english).length
  return isWanted && (likeliest?.share ?? 0) >= certainly && understanding.notUnderstood.length * 2 < words
}
