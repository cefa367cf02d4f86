// What caps a charge current, and who says so.

import type { Charger } from '../things/charger.ts'
import type { Standing } from '../things/chemistry.ts'
import type { HouseLimits } from '../things/house-limits.ts'
import type { Pack } from '../things/pack.ts'
import { largestStep_A } from '../things/steps.ts'
import type { Feed } from './old-feed.ts'
import type { TemperatureAllowance } from './temperature.ts'

export type LimitKind =
  | 'label'
  | 'chemistry'
  | 'house'
  | 'temperature'
  | 'condition'
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

export interface LimitsRequest {
  readonly pack: Pack
  readonly charger?: Charger | undefined
  readonly house: HouseLimits
  readonly allowance: TemperatureAllowance
  readonly cutoffPack_V: number
  readonly efficiency: number
  readonly feed?: Feed | undefined
}

export const theLabel: Provenance = { source: 'the label' }
const theCharger: Provenance = { source: 'the charger' }

/** Every limit on the current into the pack, smallest first. Never empty, as a chemistry always has one. */
export function currentLimits(request: LimitsRequest): [Limit, ...Limit[]] {
  const { pack, charger, house, allowance, cutoffPack_V, efficiency, feed } = request
  const { highestRate_C, temperatureBands } = pack.chemistry
  const byRate = (kind: LimitKind, rate_C: number, from: Provenance): Limit => ({
    kind,
    rate_C,
    value_A: rate_C * pack.capacity_Ah,
    from,
  })
  const byPower = (kind: LimitKind, power_W: number, from: Provenance): Limit => ({
    kind,
    power_W,
    value_A: power_W / cutoffPack_V,
    from,
  })
  const houseRate_C = house.maxRate_C?.[pack.chemistry.name]
  const limits: [Limit, ...Limit[]] = [byRate('chemistry', highestRate_C.value, highestRate_C)]
  if (pack.labelRate_C !== undefined) limits.push(byRate('label', pack.labelRate_C, theLabel))
  if (houseRate_C !== undefined)
    limits.push(byRate('house', houseRate_C, { source: 'the rules of this house' }))
  if (allowance.reduced) limits.push(byRate('temperature', allowance.maxRate_C, temperatureBands))
  if (charger) {
    limits.push({ kind: 'charger', value_A: largestStep_A(charger.currents), from: theCharger })
  }
  if (charger?.power_W !== undefined) limits.push(byPower('charger power', charger.power_W, theCharger))
  if (feed) limits.push(byPower('source', feed.power_W * efficiency, { source: 'the source' }))
  return limits.sort((a, b) => a.value_A - b.value_A)
}
