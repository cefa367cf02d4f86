// What caps a charge current, and who says so.

import type { Standing } from '../things/chemistry.ts'

export type LimitKind =
  | 'label'
  | 'chemistry'
  | 'house'
  | 'temperature'
  | 'condition'
  /** What packs on one board may take, should one of them come unplugged. */
  | 'board'
  | 'charger'
  | 'charger power'
  | 'source'

/** Where a number comes from; a label, a house or a charger stands for itself. */
export interface Provenance {
  readonly source: string
  readonly standing?: Standing
}

export interface Limit {
  readonly kind: LimitKind
  /** Highest current into the whole pack, in A. */
  readonly value_A: number
  /** The rate it follows from, where it grows with the pack's capacity. */
  readonly rate_C?: number
  /** The power it follows from, in W, where it falls with the pack's voltage. */
  readonly power_W?: number
  readonly from: Provenance
}
