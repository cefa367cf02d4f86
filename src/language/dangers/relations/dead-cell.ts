// One cell of a pack that is told to hold nothing: the others hide it, for the pack still shows volts.

import { type Relation, type Told, wasOnce } from './relation.ts'

const holdsNothing = /^(?:dead|gone|zero|nothing|0|flat|kaput\w*|tot|morto?|mort|muerta?)$/
/** Of the cell, and of nothing else that lies there. */
const cellWord = /^(?:cells?|zellen?)$/
const between =
  /^(?:is|are|reads?|shows?|says?|stands?|at|looks?|seems?|has|sits|on|just|completely|totally|stone|quite|gives|now|as|a)$/
const mostBetween = 3

/** "One cell dead", "the third cell reads nothing", "a dead cell in it"; not of a pack that is gone. */
export const deadCell: Relation = told => {
  const { words } = told.marked
  for (const [cell, { w }] of words.entries()) {
    const nothing = cellWord.test(w) ? nothingAt(told, cell) : undefined
    if (nothing === undefined) continue
    if (wasOnce(told, cell) || words.some(({ w }) => retired.test(w))) return undefined
    return { danger: 'tooLow', from: Math.min(cell, nothing), to: Math.max(cell, nothing) + 1 }
  }
  return undefined
}
const retired = /^(?:retir|recycl|scrap|binned|threw|thrown|replac)/

/** Where it says so of the cell at that word, undenied. */
function nothingAt({ marked: { words, denies } }: Told, cell: number): number | undefined {
  const word = (at: number) => words[at]?.w ?? ''
  if (denies[cell - 1] || denies[cell - 2]) return undefined
  if (/^(?:dead|flat|tote)$/.test(word(cell - 1))) return cell - 1
  for (let at = cell + 1; at <= cell + 1 + mostBetween && words[at]?.cut === 0; at += 1) {
    // "Flat and firm": it is not swollen.
    if (holdsNothing.test(word(at))) return /^(?:and|firm)$/.test(word(at + 1)) ? undefined : at
    if (!between.test(word(at))) return undefined
  }
  return undefined
}
