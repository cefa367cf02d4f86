// A text of another tongue with the words of the trade put in English, for the same reading as any other.

import { longestText, plainText } from '../../ground/plain-text.ts'
import { type Glossary, glossaryOf, type Tongue, type TypedWord, typedWords } from './glossaries.ts'

/** A run of the text as typed, and where it begins in the gloss: put in English, or kept as it was. */
interface Piece {
  readonly start: number
  readonly end: number
  readonly to: number
  readonly isKept: boolean
}

/** Word for word, the longest phrase first; what the glossary does not have stays as it was typed. */
export function glossed(typed: string, tongue: Tongue) {
  const plain = plainText(typed.slice(0, longestText))
  const words = typedWords(plain)
  const pieces: Piece[] = []
  let [text, from] = ['', 0]
  const add = (end: number, meaning?: string): void => {
    pieces.push({ start: from, end, to: text.length, isKept: meaning === undefined })
    text += meaning ?? plain.slice(from, end)
    from = end
  }
  for (let at = 0; at < words.length; ) {
    const { meaning, count } = phraseAt(words, at, glossaryOf[tongue])
    const [first, last] = [words[at], words[at + count - 1]] as [TypedWord, TypedWord]
    if (meaning !== undefined) {
      add(first.start)
      add(last.end, plain[last.end - 1] === "'" ? `${meaning} ` : meaning)
    }
    at += count
  }
  add(plain.length)
  const pieceAt = (at: number): Piece => pieces.findLast(({ to }) => to <= at) as Piece
  return {
    /** In English as far as the words are known. */
    text,
    /** Where in the text as typed a part of it comes from. */
    spanOf: (start: number, end: number) => {
      const [first, last] = [pieceAt(start), pieceAt(end - 1)]
      return {
        start: first.isKept ? first.start + start - first.to : first.start,
        end: last.isKept ? last.start + end - last.to : last.end,
      }
    },
  }
}

function phraseAt(
  words: readonly TypedWord[],
  at: number,
  { meanings, longest }: Glossary,
): { meaning: string | undefined; count: number } {
  for (let count = longest; count > 0; count -= 1) {
    const phrase = words.slice(at, at + count)
    const meaning = phrase.length === count ? meanings.get(phrase.map(({ word }) => word).join(' ')) : undefined
    if (meaning !== undefined) return { meaning, count }
  }
  return { meaning: undefined, count: 1 }
}
