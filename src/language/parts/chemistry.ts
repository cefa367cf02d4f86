// The type of cells that stands at a token, however it is spelled: "LiPos", "L I P O", "lithium polymer", "nimh".

import { chemistries, chemistryNamed } from '../../charging/things/chemistries.ts'
import type { Chemistry } from '../../charging/things/chemistry.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import { wordSet } from '../../ground/word-set.ts'
import { Sentence } from '../candidates/sentence/sentence.ts'
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

/** The type whose spelling begins there, and where that ends. */
function spelledAt(text: string, start: number): { chemistry: Chemistry; end: number } | undefined {
  anySpelling.lastIndex = start
  const found = anySpelling.exec(text)?.[0]
  const chemistry = found === undefined ? undefined : chemistryCalled(bare(found))
  return chemistry && { chemistry, end: anySpelling.lastIndex }
}

/** By a spelling in lower case without what parts its words. */
export const chemistryCalled = (name: string): Chemistry | undefined =>
  known.get(name) ?? known.get(name.replace(/s$/, ''))

interface ChemistryRun {
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
export const noType = 0.1

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
  const spelled = spelledAt(sentence.text, token.start)
  if (!spelled) return undefined
  let after = first
  while ((sentence.tokens[after]?.start ?? spelled.end) < spelled.end) after += 1
  return { name: spelled.chemistry.name, after }
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
    const name = others.get(letters) ?? spelledAt(letters, 0)?.chemistry.name
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

/** Throws a Problem that lists the names. */
export function readChemistry(text: string): Chemistry {
  const sentence = new Sentence(plainText(text), false)
  const run = chemistryAt(sentence, 0)
  const chemistry = run?.after === sentence.tokens.length ? chemistryNamed(run.name) : undefined
  if (chemistry) return chemistry
  throw problemAt(sentence.text, unknownChemistry, { expected: oneOfChemistries(chemistryNames), example: 'LiHV' })
}
