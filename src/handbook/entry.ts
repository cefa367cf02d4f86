// What an entry of the handbook is: data in English, spoken through `own`, as no locale has made it. In another
// language the handbook is another folder of such files, chosen by the locale.

import type { Danger } from '../charging/situation/dangers.ts'

export interface HandbookEntry {
  /** Short, lower case, unique; stays the same when the words change. */
  readonly id: string
  readonly title: string
  /** How people ask it, the plainest first. */
  readonly questions: readonly string[]
  /** The first line answers. */
  readonly answer: readonly string[]
  readonly why: string
  readonly do: string
  /** Who says so. */
  readonly source: string
  /** A question that works it out with numbers. */
  readonly command?: string
  /** Other words and phrases that mean it. */
  readonly keywords?: readonly string[]
  /** What the envelope judges where somebody asks leave for it. */
  readonly dangers?: readonly Danger[]
}
