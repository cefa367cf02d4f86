// A text in tokens: words, numbers and signs.

export interface Token {
  /** In lower case. */
  readonly word: string
  readonly kind: 'word' | 'number' | 'sign'
  readonly start: number
  readonly end: number
  /** No space stands before it. */
  readonly glued: boolean
}

const stuck = /^[\p{L}%°]/u
/** Numbers, words and signs; pictures among them are no more than a space. */
const piece = /(?:\d+(?:[.,]\d+)?|(?<![\p{L}\d.,…])[.,]\d+)|[\p{L}\p{M}]+(?:'\p{L}+)*|[^\s\p{Extended_Pictographic}]/gu

const endOf = (piece: RegExpExecArray | undefined) => (piece ? piece.index + piece[0].length : undefined)

export class Tokens {
  readonly text: string
  readonly tokens: readonly Token[]
  readonly #words: ReadonlySet<string>

  /** `text` must be plain text. */
  constructor(text: string) {
    this.text = text
    this.tokens = [...text.matchAll(piece)].map(({ 0: typed, index }, at, all) => ({
      word: typed.toLowerCase(),
      kind: /^[.,]?\d/.test(typed) ? 'number' : /^[\p{L}\p{M}]/u.test(typed) ? 'word' : 'sign',
      start: index,
      end: index + typed.length,
      glued: at > 0 && index === endOf(all[at - 1]),
    }))
    this.#words = new Set(this.tokens.map(({ word }) => word))
  }

  /** Empty outside of the text. */
  word(at: number): string {
    return this.tokens[at]?.word ?? ''
  }

  glued(at: number): boolean {
    return this.tokens[at]?.glued ?? false
  }

  /** Where the longest of `phrases` that begins at this token ends. */
  phraseEnd(at: number, phrases: Phrases): number | undefined {
    let words = this.word(at)
    if (!phrases.starts.has(words)) return undefined
    let end = phrases.all.has(words) ? at + 1 : undefined
    const most = Math.min(at + phrases.longest, this.tokens.length)
    for (let next = at + 1; next < most; next += 1) {
      words = `${words} ${this.word(next)}`
      if (phrases.all.has(words)) end = next + 1
    }
    return end
  }

  /** What stands at this token belongs to the word before it. */
  isStuck(at: number): boolean {
    const word = this.word(at)
    if (!this.glued(at)) return false
    return word === ':' || word === '/' ? this.glued(at + 1) && /^\d/.test(this.word(at + 1)) : stuck.test(word)
  }

  /** These marks end what others opened, and are no inches. */
  closesQuote(at: number): boolean {
    return this.tokens.slice(0, at).filter(({ word }) => word === '"').length % 2 === 1
  }

  /** One of `words` stands anywhere in the text. */
  mentions(words: ReadonlySet<string>): boolean {
    for (const word of words) if (this.#words.has(word)) return true
    return false
  }

  /** The tokens that some of the text covers, up to the one behind it. */
  spanOf({ 0: typed, index }: RegExpExecArray): { readonly first: number; readonly after: number } {
    const first = this.tokens.findIndex(({ end }) => end > index)
    const after = this.tokens.findIndex(({ start }) => start >= index + typed.length)
    return { first, after: after < 0 ? this.tokens.length : after }
  }

  typed(first: number, after: number): string {
    return this.text.slice(this.tokens[first]?.start, this.tokens[after - 1]?.end)
  }
}

/** Phrases as the words of their tokens, each parted by a space. */
export interface Phrases {
  readonly all: ReadonlySet<string>
  readonly starts: ReadonlySet<string>
  /** Tokens of the longest. */
  readonly longest: number
}

export function phrasesOf(all: Iterable<string>): Phrases {
  const phrases = [...all]
  const words = phrases.map(phrase => phrase.split(' '))
  return {
    all: new Set(phrases),
    starts: new Set(words.map(([first = '']) => first)),
    longest: Math.max(...words.map(({ length }) => length)),
  }
}

export const phraseSet = (phrases: string): Phrases => phrasesOf(phrases.split(', '))
