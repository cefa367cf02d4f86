// How far the cells of a pack lie apart: "its cells are 40 mV apart", "0.3 V between the cells", "one cell is 0.2 V lower".

import { type Family, none } from '../sentence/sentence.ts'

/** Further no two cells lie apart; more is where one stands. */
const most_V = 1
const volts = String.raw`(?<!\d|\d[.,])(?<figure>\d*[.,]?\d+) ?(?<unit>m?v(?:olts?)?|millivolts?)?(?![\p{L}\d])`
const between = `(?:(?:the|them|all|highest|lowest|and|cells?|volts?|voltage|is|are|was|by|of|to|between|only|about|up|at|most|roughly|around) )*`
/** Lower than other cells, and than no other thing. */
const others = String.raw`(?: (?:than )?(?:the )?(?:others?|rest)|(?=\s*(?:[,.;:!?)]|$)))`
const rows = [
  `${volts}(?: or so)?(?: of)? (?:apart|difference|different|spread|gap|imbalance|out of balance|from each other|between (?:them|the cells|cells)|(?:lower|higher|below|above)${others})(?!\\p{L})`,
  String.raw`(?:within|differ\p{L}*|spread|gap|delta|deviat\p{L}*|imbalance|out of balance|drifted(?: apart)?) ${between}${volts}(?<=\p{L}|\d(?! ?[\p{L}%°]))(?! of (?:full|storage|empty|\d))`,
].map(row => new RegExp(row, 'iu'))
/** Packs on a board lie apart too. */
const ofCells =
  /\bcells\b|\b(?:one|its|the|first|last|weak(?:est)?|other|lowest) cell\b|\bcell (?:\d|one|two|three)\b|\bbalance\b/i

export const findApart: Family = sentence => {
  const { text, isTalk } = sentence
  if (!isTalk || !ofCells.test(text)) return none
  return rows.flatMap(row => {
    const told = row.exec(text)
    const { figure = '', unit = '' } = told?.groups ?? {}
    const apart_V = Number.parseFloat(figure.replace(',', '.')) / (/^m/i.test(unit) ? 1000 : 1)
    if (!told || !(apart_V > 0 && apart_V < most_V)) return []
    return [{ kind: 'apart', text: `${Number(apart_V.toFixed(3))}V`, ...sentence.spanOf(told), score: 0.96 } as const]
  })
}
