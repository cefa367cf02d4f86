// The chemistry that stands at a token, however it is spelled: "LiPos", "L I P O", "lithium polymer", "nimh".

import { wordSet } from '../../../ground/word-set.ts'
import { Scanner } from '../../scan/scanner.ts'
import { takeChemistry } from '../../things/chemistry.ts'
import type { Family, Sentence } from '../sentence/sentence.ts'

export interface ChemistryRun {
  readonly name: string
  readonly first: number
  readonly after: number
  readonly score: number
}

/** Known well enough to be named, though nothing here charges them. */
const others: ReadonlyMap<string, string> = new Map(
  Object.entries({ nimh: 'NiMH', nimhs: 'NiMH', nicd: 'NiCd', nicad: 'NiCd', nicads: 'NiCd', lto: 'LTO', agm: 'AGM' }),
)
const loose: ReadonlyMap<string, string> = new Map(
  Object.entries({
    lion: 'Li-ion',
    liio: 'Li-ion',
    lipoly: 'LiPo',
    lipol: 'LiPo',
    lifes: 'LiFe',
    lithiumion: 'Li-ion',
  }),
)
/** As sure as what is none. */
const noType = 0.1

/** Beside these "life" is a type of cells, and otherwise what somebody lives. */
const beforeType = wordSet(
  "is it its it's are they was were that those these on to as or and no not , : ( set type chemistry",
)
const behindType = wordSet(
  'pack packs battery batteries cell cells mode program setting or and instead charge charges charger',
)

export function chemistryAt(sentence: Sentence, first: number): ChemistryRun | undefined {
  const token = sentence.tokens[first]
  if (token?.kind !== 'word') return undefined
  const found = knownAt(sentence, first) ?? spacedAt(sentence, first)
  if (!found) return undefined
  return { ...found, first, score: scoreOf(sentence, first, found.after) }
}

type Named = Pick<ChemistryRun, 'name' | 'after'>

function knownAt(sentence: Sentence, first: number): Named | undefined {
  const token = sentence.tokens[first]
  if (!token || token.word.length < 2 || !/^[adhilnp]/.test(token.word)) return undefined
  const one = others.get(token.word) ?? loose.get(token.word)
  if (one !== undefined) return { name: one, after: first + 1 }
  const scan = new Scanner(sentence.text, token.start)
  const name = takeChemistry(scan)?.name
  return name === undefined ? undefined : { name, after: tokenAfter(sentence, first, scan.at) }
}

function tokenAfter(sentence: Sentence, first: number, end: number): number {
  let after = first
  while ((sentence.tokens[after]?.start ?? end) < end) after += 1
  return after
}

/** "L i - P o": letters one by one, as labels are read aloud. */
function spacedAt(sentence: Sentence, first: number): Named | undefined {
  if (sentence.word(first) !== 'l' && sentence.word(first) !== 'n') return undefined
  let letters = ''
  let found: Named | undefined
  for (let at = first; at < first + 10; at += 1) {
    const word = sentence.word(at)
    if (word === '-') continue
    if (word.length !== 1 || !/[a-z]/.test(word)) break
    letters += word
    const name = others.get(letters) ?? takeChemistry(new Scanner(letters))?.name
    if (name !== undefined && letters.length > 2) found = { name, after: at + 1 }
  }
  return found
}

function scoreOf(sentence: Sentence, first: number, after: number): number {
  const word = sentence.word(first)
  if (word === 'ion' || word === 'hv') return /^[sp]$|^\d/.test(sentence.word(first - 1)) ? 0.9 : 0.6
  if (word !== 'life' || after > first + 1) return 0.9
  if (sentence.typed(first, after) !== 'life') return 0.9
  const beside = /^(?:s|p|cell|cells|mah|\d{3,5})$/
  if (beside.test(sentence.word(first - 1)) || /^\d/.test(sentence.word(first + 1))) return 0.9
  const isAlone = first === 0 && /^[?!.]?$/.test(sentence.word(after))
  const isType = beforeType.has(sentence.word(first - 1)) || behindType.has(sentence.word(after))
  return isAlone || isType ? 0.4 : noType
}

/** A chemistry that stands alone; inside of a pack it is a part of that. */
export const findChemistries: Family = sentence =>
  sentence.tokens.flatMap((_, first) => {
    const { name, after, score } = chemistryAt(sentence, first) ?? { name: '', after: 0, score: 0 }
    return score > noType ? [{ kind: 'chemistry', text: name, first, after, score }] : []
  })
