// The words people use for a chemistry.

import { chemistries } from '../../charging/things/chemistries.ts'
import type { Chemistry } from '../../charging/things/chemistry.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import { Scanner } from '../scan/scanner.ts'
import { oneOfChemistries, unknownChemistry } from './pack.words.ts'

export const chemistryNames: readonly string[] = chemistries.map(({ name }) => name)

/** All of them as a choice: "one, another or a third". */
export const anyChemistry: string = `${chemistryNames.slice(0, -1).join(', ')} or ${chemistryNames.at(-1)}`
const bare = (written: string): string => written.toLowerCase().replace(/[ -]/g, '')

const spellings: readonly (readonly [string, Chemistry])[] = chemistries.flatMap(chemistry =>
  [chemistry.name, ...chemistry.written].map(written => [written.toLowerCase(), chemistry] as const),
)
const known: ReadonlyMap<string, Chemistry> = new Map(
  spellings.map(([written, chemistry]) => [bare(written), chemistry]),
)

const patternOf = (written: string): string => written.replace(/[ -]/g, gap => (gap === '-' ? '[ -]?' : '[ -]'))

/** A longer spelling before one that it starts with. */
const anySpelling = new RegExp(
  `(?:${spellings
    .map(([written]) => written)
    .sort((a, b) => b.length - a.length)
    .map(patternOf)
    .join('|')})s?(?![\\p{L}\\d])`,
  'iuy',
)

export function takeChemistry(scan: Scanner): Chemistry | undefined {
  const found = scan.take(anySpelling)?.[0]
  return found === undefined ? undefined : chemistryCalled(bare(found))
}

/** By a spelling in lower case without what parts its words. */
export const chemistryCalled = (name: string): Chemistry | undefined =>
  known.get(name) ?? known.get(name.replace(/s$/, ''))

/** Throws a Problem that lists the names. */
export function readChemistry(text: string): Chemistry {
  const scan = new Scanner(plainText(text))
  const chemistry = takeChemistry(scan)
  if (chemistry && scan.done) return chemistry
  throw problemAt(scan.text, unknownChemistry, { expected: oneOfChemistries(chemistryNames), example: 'LiHV' })
}
