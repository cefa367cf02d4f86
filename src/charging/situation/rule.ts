// What every rule of the envelope has: how much it weighs, and who says so.

/** Refuse: do not. Must: said on every surface, never a plain go. Care: said where there is room, never a plain go. Note: said. */
export type Weight = 'refuse' | 'must' | 'care' | 'note'

/** Heaviest first. */
export const weights: readonly Weight[] = ['refuse', 'must', 'care', 'note']

export interface Rule<W extends Weight = Weight> {
  readonly weight: W
  /** Who says so: a standard, a published guide, or common practice. */
  readonly from: string
}

export const practice = (of: string): string => `common practice: ${of}`
