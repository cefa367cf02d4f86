// Chemistries that are never advised on: they are charged by other methods.

import { Problem } from '../../ground/problem.ts'
import { anyChemistry } from '../things/chemistry.ts'

const foreign = /(?<![\p{L}\d])(?:ni-?mh|ni-?cd|nicad|alkaline|lithium[ -]metal)(?![\p{L}\d])/iu

/** Throws a Problem where the text names one. */
export function refuseForeign(text: string): void {
  const token = foreign.exec(text)?.[0]
  if (token === undefined) return
  throw new Problem({
    what: `I do not advise on ${token}: such cells are charged by another method, and a lithium setting can make them burst.`,
    token,
    expected: `${anyChemistry}; for others, what the maker and the manual of the charger say`,
    example: 'what current for a 3S 720 LiHV',
    verdict: 'do not charge',
  })
}
