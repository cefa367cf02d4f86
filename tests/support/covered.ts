// What the best whole reading of a text has of some kinds.

import { bestCover, type Candidate, candidatesOf, type ValueName } from '../../src/language/candidates/index.ts'

export const covered = (text: string, ...kinds: readonly ValueName[]): readonly Candidate[] =>
  bestCover(candidatesOf(text)).filter(({ kind }) => kinds.includes(kind))

export const coveredTexts = (text: string, ...kinds: readonly ValueName[]): readonly string[] =>
  covered(text, ...kinds).map(candidate => candidate.text)
