// May this pack go on this charger at all, and what about it calls for care.

import type { Charger } from '../things/charger.ts'
import type { Pack } from '../things/pack.ts'
import type { Cutoff } from './old-cutoff.ts'
import { type Refused, refuse } from './refusal.ts'

export interface Situated {
  readonly pack: Pack
  readonly charger?: Charger
  /** Whether the pack has a balance lead; packs of one cell are taken to have none when absent, others one. */
  readonly balanceLead?: boolean
  /** Resting voltage of the lowest cell, in V, where known. */
  readonly restPerCell_V?: number
}

/** Something that makes a charge one to take care with. */
export type Care =
  | 'precharge'
  | 'below floor'
  | 'reduced by temperature'
  | 'lower cutoff'
  | 'above the wanted current'
  | 'more than the source gives'

/** Why the pack must not be charged, or not on this charger; undefined where nothing speaks against it. */
export function whyUnfit(situated: Situated): Refused | undefined {
  return refusedCell(situated) ?? refusedCharger(situated)
}

function refusedCell({ pack, restPerCell_V }: Situated): Refused | undefined {
  if (restPerCell_V === undefined) return undefined
  const { damage_V, full_V } = pack.chemistry
  if (restPerCell_V < damage_V.value) {
    return refuse({ kind: 'damaged cell', perCell_V: restPerCell_V, damage_V: damage_V.value })
  }
  const meterError_V = 0.02
  if (restPerCell_V > full_V.value + meterError_V) {
    return refuse({ kind: 'overcharged cell', perCell_V: restPerCell_V, full_V: full_V.value })
  }
  return undefined
}

function refusedCharger({ pack, charger, balanceLead = pack.series > 1 }: Situated): Refused | undefined {
  const { minSeries = 1, maxSeries = Number.POSITIVE_INFINITY, needsBalanceLead } = charger ?? {}
  if (pack.series < minSeries || pack.series > maxSeries) {
    return refuse({ kind: 'cell count', series: pack.series, minSeries, maxSeries })
  }
  return needsBalanceLead && !balanceLead ? refuse({ kind: 'no balance lead' }) : undefined
}

/** A current this far above the wanted one is worth a word. */
export const isHurried = (current_A: number, wanted_A: number): boolean => current_A > 1.1 * wanted_A

export function caresOf(
  { pack, restPerCell_V = Number.POSITIVE_INFINITY }: Situated,
  found: { readonly cutoff: Cutoff; readonly cold: boolean; readonly hurried: boolean },
): Care[] {
  const { precharge_V, restFloor_V } = pack.chemistry
  const cares: [Care, boolean][] = [
    ['precharge', restPerCell_V < precharge_V.value],
    ['below floor', restPerCell_V >= precharge_V.value && restPerCell_V < restFloor_V.value],
    ['reduced by temperature', found.cold],
    ['lower cutoff', found.cutoff.loweredBy === 'charger'],
    ['above the wanted current', found.hurried],
  ]
  return cares.filter(([, holds]) => holds).map(([care]) => care)
}
