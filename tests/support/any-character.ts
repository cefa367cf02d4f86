// Any character there is, as the library's own "binary" gives them, without the map of a million that it keeps of them.

import fc from 'fast-check'

const firstSurrogate = 0xd800
const surrogates = 0x800

const characterAt = (place: number): string => String.fromCodePoint(place < firstSurrogate ? place : place + surrogates)

function placeOf(text: unknown): number {
  const code = typeof text === 'string' ? (text.codePointAt(0) ?? 0) : 0
  const place = code < firstSurrogate ? code : code - surrogates
  if (characterAt(place) !== text) throw new Error('not one character')
  return place
}

/** A unit of texts: one code point, none of them a surrogate. */
export const anyCharacter = fc.nat({ max: 0x10ffff - surrogates }).map(characterAt, placeOf)
