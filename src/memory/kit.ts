// What is kept of the things that people and clubs save by name.

import type { Danger } from '../charging/situation/dangers.ts'
import type { Owner } from './owner.ts'

export type KitKind = 'pack' | 'charger' | 'source'

/** A pack, a charger or a source saved by name. */
export interface KitEntry {
  readonly owner: Owner
  /** Lower case; unique among its owner's. */
  readonly name: string
  readonly kind: KitKind
  /** In canonical notation. */
  readonly notation: string
  /** A danger of the pack that holds until it is taken off. */
  readonly note?: Danger | undefined
}

export interface KitMemory {
  /** Saves the entry in place of any of the same owner and name, unless that owner already has `most` others. */
  save(entry: KitEntry, most: number): Promise<'saved' | 'full'>
  count(owner: Owner): Promise<number>
  /** Those of the owners' entries that bear one of the names; an earlier owner's entry hides a later one's. */
  find(owners: readonly Owner[], names: readonly string[]): Promise<readonly KitEntry[]>
  /** As `find`, of the kinds, by name, `most` at most. */
  startingWith(
    owners: readonly Owner[],
    prefix: string,
    kinds: readonly KitKind[],
    most: number,
  ): Promise<readonly KitEntry[]>
  /** The charges noted of a pack keep to it. */
  rename(owner: Owner, from: string, to: string): Promise<'renamed' | 'missing' | 'taken'>
  /** The charges noted of a pack go with it. False where there was none. */
  remove(owner: Owner, name: string): Promise<boolean>
}
