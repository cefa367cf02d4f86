// Whether packs are taken along in an aeroplane, and not charged.

import type { Candidate } from '../candidates/sentence/candidate.ts'

const takenAlong =
  /\b(?:on|onto|in|by) (?:a|an|the) (?:plane|aeroplane|airplane|airliner|flight)\b|\b(?:airlines?|cabin|airports?|luggage|baggage|suitcase|by air|carry-?on|carry on (?:bag|limit|rule|wh|allowance)|check(?:ed)?[- ]in|fl(?:y|ies|ying|own) commercial(?:ly)?|commercial (?:flight|plane|airliner)s?)\b/i
const ofCharge = /\b(?:amps?|amperes?|charging current)\b/i
const ofPacks: ReadonlySet<string> = new Set(['pack', 'count', 'chemistry', 'board'])

export const isTakenAlong = (text: string, values: readonly Candidate[]): boolean =>
  values.length > 0 && values.every(({ kind }) => ofPacks.has(kind)) && takenAlong.test(text) && !ofCharge.test(text)
