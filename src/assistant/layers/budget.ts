// How much a phone held upright shows at once, with the start of an answer still on its screen.

import stringWidth from 'fast-string-width'
import { wrapAnsi } from 'fast-wrap-ansi'
import { remembered } from '../../ground/remembered.ts'

export const budget = { lines: 12, characters: 900, columns: 42, rows: 18 } as const

/** Between a number and its unit no line ends. */
const parted = /(?<=\d) (?=(?:[mk]?[AVWΩ]h?|°C|%|s|min|h|cells?|packs?)(?![\p{L}\d]))|(?<=\d h) (?=\d+ min)/gu
const unbreakable = '\u00a0'

/** For a surface that wraps by itself. */
export const unbroken = remembered(1000, line => line.replace(parted, unbreakable))

/** Within it no line ends. */
export const whole = (words: string): string => words.replaceAll(' ', unbreakable)

/** For one that is as wide as that. */
export const wrapped = (line: string, columns: number): readonly string[] =>
  wrapAnsi(unbroken(line), columns, { hard: true }).replaceAll(unbreakable, ' ').split('\n')

const onPhone = remembered(2000, line => wrapped(line, budget.columns))

/** Rows that a line takes on the phone. */
export const rowsOf = (line: string): number => onPhone(line).length

/** What the lines use of it. */
export const usedBy = (lines: readonly string[]) => ({
  lines: lines.length,
  characters: lines.join('\n').length,
  rows: lines.reduce((sum, line) => sum + rowsOf(line), 0),
})

export function fits(lines: readonly string[]): boolean {
  const used = usedBy(lines)
  return used.lines <= budget.lines && used.characters <= budget.characters && used.rows <= budget.rows
}

/** So much of a text as fills `rows`, ended by "…" where that is not all; a character is not parted. */
export function cutToRows(text: string, rows: number): string {
  if (rowsOf(text) <= rows) return text
  const shown = onPhone(text).slice(0, rows)
  const last = shown.at(-1) ?? ''
  return [...shown.slice(0, -1), `${stringWidth(last) < budget.columns ? last : last.slice(0, -1)}…`].join(' ')
}
