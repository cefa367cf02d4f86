// The words people use for a chemistry.

import type { ChemistryName } from '../../charging/things/chemistry.ts'
import { plainText, quoted } from '../../ground/plain-text.ts'
import { Problem } from '../../ground/problem.ts'
import { Scanner } from '../scan/scanner.ts'

export const chemistryNames: readonly ChemistryName[] = ['LiPo', 'LiHV', 'Li-ion', 'LiFe']

/** In the order in which they are tried: a longer word before one that it starts with. */
const words: readonly (readonly [ChemistryName, RegExp])[] = [
  ['LiHV', /(?:li-?po[ -]?hv|hv[ -]?li-?po|li-?hv|hv)(?![\p{L}\d])/iuy],
  ['LiFe', /(?:li-?fe(?:[ -]?po4?)?|lfp)(?![\p{L}\d])/iuy],
  ['LiPo', /(?:li-?po(?:ly)?|lithium[ -]polymer)(?![\p{L}\d])/iuy],
  ['Li-ion', /(?:li-?ion|lithium[ -]ion|ion)(?![\p{L}\d])/iuy],
]

export function takeChemistry(scan: Scanner): ChemistryName | undefined {
  return words.find(([, pattern]) => scan.take(pattern))?.[0]
}

/** Throws a Problem that lists the four names. */
export function readChemistry(text: string): ChemistryName {
  const scan = new Scanner(plainText(text))
  const name = takeChemistry(scan)
  if (name && scan.done) return name
  throw new Problem({
    what: 'I do not know that chemistry.',
    ...quoted(scan.text),
    expected: `one of ${chemistryNames.join(', ')}`,
    example: 'LiHV',
  })
}
