// Dangers that were told before: each stays with the pack that it was told of, whatever is asked next.

import type { Pack } from '../things/pack.ts'
import type { Source } from '../things/source.ts'
import type { Danger } from './dangers.ts'
import type { Doubt } from './doubts.ts'

/** What was told of a pack; what is open may be any. */
export interface PackMark {
  readonly series?: number | undefined
  readonly capacity_Ah?: number | undefined
  readonly chemistry?: string | undefined
}

export interface KeptDanger {
  readonly danger: Danger
  /** In the words in which it was told. */
  readonly typed: string
  readonly of: PackMark
  /** It was taken back, or only asked about: no more than a doubt. */
  readonly doubted: boolean
}

/** Whether what was told of two packs may be of one. */
export const mayBeSame = (one: PackMark, other: PackMark): boolean =>
  (['series', 'capacity_Ah', 'chemistry'] as const).every(
    part => one[part] === undefined || other[part] === undefined || one[part] === other[part],
  )

/** What was told of a pack, and not only assumed. */
export const markOf = (
  { series, capacity_Ah, chemistry }: Pack,
  doubts: readonly Doubt[],
  kindOnly = false,
): PackMark => ({
  series: kindOnly || doubts.includes('cellsUnknown') ? undefined : series,
  capacity_Ah: kindOnly ? undefined : capacity_Ah,
  chemistry: doubts.includes('chemistryAssumed') ? undefined : chemistry.name,
})

/** The packs that a situation deals with. */
interface Dealt {
  readonly pack?: Pack
  readonly board?: readonly { readonly pack: Pack }[]
  readonly source?: Source
  /** Only the kind of the cells is known. */
  readonly kindOnly?: boolean
}

/** Those that are told of a pack that the situation deals with, be it charged, drained or beside another. */
export function keptIn<K extends KeptDanger>(
  kept: readonly K[],
  { pack, board = [], source, kindOnly }: Dealt,
  doubts: readonly Doubt[],
): readonly K[] {
  const marks = [
    pack && markOf(pack, doubts, kindOnly),
    ...board.map(beside => markOf(beside.pack, doubts)),
    source?.kind === 'battery' ? markOf(source.pack, []) : undefined,
  ]
  return kept.filter(({ of }) => marks.some(mark => mark && mayBeSame(of, mark)))
}
