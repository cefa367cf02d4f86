// The limits of the trade, written down once more by themselves, for each chemistry.

import type { Chemistry } from '../../src/charging/things/chemistry.ts'

export interface Design {
  readonly full_V: number
  readonly storage_V: number
  readonly damage_V: number
  readonly highest_C: number
  /** A source under load, and at rest. */
  readonly loadFloor_V: number
  readonly restFloor_V: number
}

const designs: Readonly<Record<string, Design>> = {
  LiPo: { full_V: 4.2, storage_V: 3.85, damage_V: 2.5, highest_C: 2, loadFloor_V: 3.4, restFloor_V: 3.6 },
  LiHV: { full_V: 4.35, storage_V: 3.85, damage_V: 2.5, highest_C: 2, loadFloor_V: 3.4, restFloor_V: 3.6 },
  'Li-ion': { full_V: 4.2, storage_V: 3.7, damage_V: 2.5, highest_C: 1, loadFloor_V: 3, restFloor_V: 3.2 },
  LiFe: { full_V: 3.6, storage_V: 3.3, damage_V: 2, highest_C: 2, loadFloor_V: 2.8, restFloor_V: 3 },
}

/** Throws an Error where none is written down: a new chemistry wants a row. */
export function designOf({ name }: Chemistry): Design {
  const design = designs[name]
  if (!design) throw new Error(`no limits are written down for ${name}`)
  return design
}
