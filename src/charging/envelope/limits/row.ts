// What a limit is: a number of the situation, on one side of which a rule fits.

import type { Provenance } from '../../setting/limit.ts'
import type { Danger } from '../../situation/dangers.ts'
import type { Rule, Weight } from '../../situation/rule.ts'
import type { Act } from '../../situation/situation.ts'
import { type FactName, type Known, type Unit, unitOf } from './facts.ts'

/** Below and above leave the limit itself alone; upTo includes it. */
export type Side = 'below' | 'above' | 'upTo'

export interface Limit<W extends Weight = Weight> extends Rule<W> {
  readonly fact: FactName
  readonly side: Side
  readonly unit: Unit
  readonly acts: readonly Act[]
  /** It is said also where a heavier row already fits the same number on the same side. */
  readonly besides: boolean
  /** It speaks of all that was asked for together, and not of one pack. */
  readonly ofAll: boolean
  /** It tells how to charge: not said where something else forbids the charge. */
  readonly guides: boolean
  /** What was met stays with the pack as this danger, whatever is asked of it next. */
  readonly leaves?: Danger
  /** The limit for this situation; undefined where it has none. */
  than(known: Known): number | undefined
}

export type Limits = Readonly<Record<string, Limit>>
type Than = number | ((known: Known) => number | undefined)

const row =
  (side: Side) =>
  <const W extends Weight>(weight: W, acts: readonly Act[], fact: FactName, from: string, than: Than): Limit<W> => ({
    weight,
    acts,
    fact,
    unit: unitOf[fact],
    side,
    from,
    besides: false,
    ofAll: false,
    guides: false,
    than: typeof than === 'number' ? () => than : than,
  })

export const below = row('below')
export const above = row('above')
export const upTo = row('upTo')

/** It speaks of another thing than the other rows of its number. */
export const besides = <L extends Limit>(limit: L): L => ({ ...limit, besides: true })

/** What was met stays with the pack. */
export const leaving = <L extends Limit>(danger: Danger, limit: L): L => ({ ...limit, leaves: danger })

/** It speaks of all that was asked for together. */
export const ofAll = <L extends Limit>(limit: L): L => ({ ...limit, ofAll: true })

/** It tells with how much to charge. */
export const guiding = <L extends Limit>(limit: L): L => ({ ...limit, guides: true })

export const always: readonly Act[] = ['charge', 'drain', 'store', 'carry', 'board', 'look']
export const charging: readonly Act[] = ['charge', 'board']

/** A limit that the chemistry of the pack holds, or so much above it. */
export const ofCell =
  (limit: 'damage_V' | 'precharge_V' | 'restFloor_V' | 'loadFloor_V' | 'full_V', more_V = 0) =>
  ({ situation: { pack } }: Known) =>
    pack && Number((pack.chemistry[limit].value + more_V).toFixed(6))

/** The number itself breaks a limit above it too. */
export const reached = (number: number): number => number - 1e-9

export const saidBy = ({ standing, source }: Provenance): string =>
  standing === undefined ? source : `${standing}: ${source}`
export const cells = 'cell datasheets'
