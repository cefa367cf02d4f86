// Details told in free words: names, titles and texts. A sentence that gives them is read as typed.

import { wordSet } from '../../ground/word-set.ts'
import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'
import type { Kept } from './fit.ts'

export interface FreeWords {
  /** As typed: saved names stand in it, not what they stand for. */
  readonly typed: string
  /** The command that its verbs and names tell for sure. */
  readonly meant?: string | undefined
  /** What it tells for the command. */
  of(command: CommandWords): Kept
}

const named = wordSet(
  'kit name, new name, pack name, title, new title, matter, changed, lesson, lesson answer, club rule',
  ', ',
)

export const isNamedKind = (kind: string): boolean => named.has(kind)

/** Whether it is about what bears a name or a title. */
export const isOfNamed = ({ options }: CommandWords): boolean => options.some(({ kind }) => named.has(kind))

/** Without what stands within a detail that is told in free words. */
export function outside<V extends Pick<Candidate, 'typed'> & { readonly text?: string }>(
  values: readonly V[],
  free: Kept,
): readonly V[] {
  const taken = Object.values(free).map(text => text.toLowerCase())
  // A value may end in a quote that closes the name: "big one".
  const bare = (typed: string) => typed.toLowerCase().replace(/^["']|["']$/g, '')
  return values.filter(
    ({ typed, text }) => !taken.some(one => one.includes(bare(typed)) || one === text?.toLowerCase()),
  )
}
