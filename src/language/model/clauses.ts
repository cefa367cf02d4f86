// A text as the model sees it: clauses of words, a sign in the place of each value.

import { longestText, plainText } from '../../ground/plain-text.ts'
import { wordSet } from '../../ground/word-set.ts'
import { bestCover, type Candidate } from '../candidates/index.ts'

export interface Clause {
  /** In lower case without accents; a value is "#" and its kind, a question mark is a word. */
  readonly words: readonly string[]
  /** Whether it asks: a question mark, or a question word near its beginning. */
  readonly asks: boolean
}

/** Lower case, without accents, one kind of apostrophe. */
export const folded = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[’`´]/g, "'")

const questionWords = new Set(
  (
    'what whats which how when why who where is are can could may do does did will would should shall am quel ' +
    'quelle combien comment pourquoi wie was welche welchen wann warum wieso darf reicht que cual cuanto cuantas ' +
    'como quando ile jak kiedy'
  ).split(' '),
)

/** A reading less sure than this says less than the words themselves. */
const surely = 0.3

/** Of these the words stay too: "leisure battery" tells more than that there is a source. */
const wordsTell = wordSet('state source charger chemistry clock board batch plug')
const units = new Set(['mah', 'volt', 'volts', 'amp', 'amps', 'watt', 'watts', 'amperes', 'ampere'])

/** A sentence's end, a comma, a dash; a question mark; a word; a number that is no value. */
const pieces = /([.!;:]+(?=\s|$)|,\s|\s-\s)|\?|\p{L}[\p{L}\d]*(?:-[\p{L}\d]+)*|\d+/gu

/** Throws nothing; what is behind the longest text is not read. `candidates` are those of the same text. */
export function clausesOf(text: string, candidates: readonly Candidate[]): readonly Clause[] {
  const plain = plainText(text.slice(0, longestText))
  const gathered = new Gathered()
  let at = 0
  for (const candidate of bestCover(candidates)) {
    if (candidate.score < surely || /^one$/i.test(candidate.typed)) continue
    gathered.addText(plain.slice(at, candidate.start))
    gathered.addWord(`#${signOf(candidate)}`)
    if (wordsTell.has(candidate.kind)) {
      for (const word of folded(candidate.typed).split(/[^a-z-]+/))
        if (word.length > 2 && !units.has(word)) gathered.addWord(word)
    }
    at = candidate.end
  }
  gathered.addText(plain.slice(at))
  return gathered.clauses()
}

/** A pack told in full, its cells alone and its capacity alone are asked about differently; so are volts and percent. */
function signOf({ kind, text, pack }: Candidate): string {
  if (kind === 'pack' && pack?.series !== undefined && pack.capacity_Ah === undefined) return 'cells'
  if (kind === 'pack' && pack?.series === undefined && pack?.capacity_Ah !== undefined) return 'capacity'
  if (kind === 'state' && text.includes('%')) return 'percent'
  return kind
}

class Gathered {
  #done: Clause[] = []
  #words: string[] = []

  addText(text: string): void {
    const joined = folded(text).replace(/(?<=\p{L})'(?=\p{L})/gu, '')
    for (const [piece, end] of joined.matchAll(pieces)) {
      if (end === undefined) this.addWord(/^\d/.test(piece) ? '#number' : piece)
      if (end !== undefined || piece === '?') this.#close()
    }
  }

  addWord(word: string): void {
    this.#words.push(word)
  }

  clauses(): readonly Clause[] {
    this.#close()
    return this.#done
  }

  #close(): void {
    const words = this.#words
    if (words.length === 0) return
    const asks = words.includes('?') || words.slice(0, 2).some(word => questionWords.has(word))
    this.#done.push({ words, asks })
    this.#words = []
  }
}
