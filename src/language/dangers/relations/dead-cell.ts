// One cell of a pack that is told to hold nothing: the others hide it, for the pack still shows volts.

import { crossesClause, type Relation, type Told, wasOnce } from './relation.ts'

const holdsNothing = /^(?:dead|gone|zero|nothing|0|flat|kaput\w*|tot|morto?|mort|muerta?)$/
/** Of the cell, and of nothing else that lies there. */
const cellWord = /^(?:cells?|zellen?)$/
const between =
  /^(?:is|are|reads?|shows?|says?|stands?|at|looks?|seems?|has|sits|on|just|completely|totally|stone|quite|gives|now|as|a)$/
const mostBetween = 3
/** "One cell of my 6S reads 0": whose cell it is may stand between, before what it reads. */
const whose = /^(?:of|in|from|my|the|this|that|our|his|her|pack|lipo|lihv|life|s|mah|\d+)$/
const saying = /^(?:is|reads?|shows?|says?|has|stands?|gives)$/

/** "One cell dead", "the third cell reads nothing", "a dead cell in it"; not of a pack that is gone. */
export const deadCell: Relation = told => {
  const { words } = told.marked
  for (const [cell, { w }] of words.entries()) {
    const nothing = cellWord.test(w) ? nothingAt(told, cell) : undefined
    if (nothing === undefined) continue
    // Of its shape: "the wrap is off, cells flat".
    const isShape = words[nothing]?.w === 'flat' && words.some(({ w }) => shape.test(w))
    if (isShape || wasOnce(told, cell) || words.some(({ w }) => retired.test(w))) return undefined
    return { danger: 'tooLow', from: Math.min(cell, nothing), to: Math.max(cell, nothing) + 1 }
  }
  return undefined
}
const shape =
  /^(?:shrink\w*|heatshrink|wrap\w*|dent\w*|swell\w*|swoll\w*|puff\w*|bulg\w*|straight|hard|sides?|foil|sticker|wrinkle\w*)$/
const retired = /^(?:retir|recycl|scrap|binned|threw|thrown|replac)/

/** Where it says so of the cell at that word, undenied. */
function nothingAt(told: Told, cell: number): number | undefined {
  const { words } = told.marked
  const word = (at: number) => words[at]?.w ?? ''
  if (/^(?:dead|flat|tote)$/.test(word(cell - 1))) return isDenied(told, cell - 1) ? undefined : cell - 1
  if (isDenied(told, cell)) return undefined
  let from = cell + 1
  if (/^(?:of|in|from)$/.test(word(from))) {
    while (whose.test(word(from)) && words[from]?.cut === 0) from += 1
    if (!saying.test(word(from))) return undefined
  }
  for (let at = from; at <= from + mostBetween && words[at]?.cut === 0; at += 1) {
    // "Flat and firm": it is not swollen.
    if (holdsNothing.test(word(at))) return /^(?:and|firm)$/.test(word(at + 1)) ? undefined : at
    if (!between.test(word(at))) return undefined
  }
  return undefined
}

const beside = /^(?:a|an|any|one|single|of|the|had|have|got)$/
/** "No dead cell", "never had a dead cell"; not "it will not. Dead cell", which ends before. */
function isDenied(told: Told, from: number): boolean {
  const { words, denies } = told.marked
  let at = from - 1
  while (beside.test(words[at]?.w ?? '')) at -= 1
  return (denies[at] ?? false) && !crossesClause(told, at, from)
}
