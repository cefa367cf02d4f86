// What chargers take of one source, and whether it carries that.

import { type Bounds, boundsOf } from '../setting/bounds.ts'
import type { Permit } from '../situation/permit.ts'
import type { Charger } from '../things/charger.ts'
import { practice } from '../things/cited.ts'
import { efficiencyOf } from '../things/practice.ts'

/** What a charger takes at the full watts on its label, in W; undefined where it has none. */
export const flatOut_W = (charger: Charger): number | undefined =>
  charger.power_W && charger.power_W / efficiencyOf(charger)

export interface Chargers {
  readonly count: number
  /** Stands for all of them: where they differ it takes only what each can take. */
  readonly charger: Charger | undefined
  readonly isAlike: boolean
  /** What all take at the watts on their labels, in W; undefined where one has none. */
  readonly flatOut_W: number | undefined
}

/** Chargers on one source; `count` of them where one was named. */
export function chargersOf(
  listed: readonly { readonly count: number; readonly item: Charger }[] = [],
  count?: number,
): Chargers {
  const [first, ...others] = listed
  const named = listed.reduce((sum, one) => sum + one.count, 0)
  if (!first || others.length === 0) {
    const many = named > 1 ? named : (count ?? 1)
    const one_W = first && flatOut_W(first.item)
    return { count: many, charger: first?.item, isAlike: true, flatOut_W: one_W && one_W * many }
  }
  const each_W = listed.map(one => flatOut_W(one.item))
  const all_W = listed.reduce((sum, one, at) => sum + one.count * (each_W[at] ?? 0), 0)
  return {
    count: named,
    charger: {
      ...first.item,
      minInput_V: Math.max(...listed.map(({ item }) => item.minInput_V ?? 0)),
      maxInput_V: Math.min(...listed.map(({ item }) => item.maxInput_V ?? Number.POSITIVE_INFINITY)),
    },
    isAlike: false,
    flatOut_W: each_W.includes(undefined) ? undefined : all_W,
  }
}

/**
 * What charging `count` packs like that of the permit takes of the source, whatever the source gives: wanted into each
 * (what was asked for, else what suits the pack and its charger), and by all chargers together at the cutoff.
 */
export function demandOf({ situation }: Permit, count: number) {
  const { limits, wanted_A, cutoffPack_V, efficiency }: Bounds = boundsOf(situation)
  const others = limits.filter(({ kind }) => kind !== 'source')
  const current_A = Math.min(situation.current_A ?? wanted_A, ...others.map(({ value_A }) => value_A))
  return { current_A, input_W: (current_A * cutoffPack_V * count) / efficiency }
}

export type Demand = ReturnType<typeof demandOf>

const wallEfficiency = practice(
  0.75,
  'a charger passes on 80 to 90 % of what it takes, and so does the supply before it',
)

/** What the wall socket gives for so much into packs, in Wh. */
export const fromWall_Wh = (energy_Wh: number): number => energy_Wh / wallEfficiency.value
