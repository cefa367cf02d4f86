// The time of a charge with the shortest and longest that real packs of its kind may need.

import { type Cell, scaleResistance } from '../simulation/cell.ts'
import type { Charge, ChargeRequest } from '../simulation/charge.ts'
import { chargeCell, requestedCell, simulateCharge } from '../simulation/simulate.ts'
import { socBandAt } from '../things/charge-fraction.ts'
import type { Band } from '../things/chemistry.ts'

export interface ChargeTimes {
  readonly charge: Charge
  /** Of the whole charge, in s. */
  readonly time_s: Band
  /** To the end of constant current and power, in s. */
  readonly timeToCutoff_s: Band
}

/** What is left of a spread once the quantity is measured: capacity by a full cycle, resistance by a meter. */
const measuredCapacitySpread = 0.03
const measuredResistanceSpread = 0.25
/** Error of the model itself where both are known: the largest seen on measured charges is 4 %. */
const modelSpread = 0.04
/** No band goes further: a pack in good order seldom does, though a start in volts on the flat of the curve may. */
const widest = 0.2

/**
 * Simulates a charge and gives its times the band that the spread of real packs leaves: capacity, resistance and,
 * where the start is a resting voltage, the charge that cells hold at it. Each is varied alone, and the
 * differences are added as independent errors, up to 20 % either way. A measured capacity or resistance narrows
 * the band, and so does a start in percent.
 * @throws RangeError as simulateCharge
 */
export function chargeTimeBand(request: ChargeRequest): ChargeTimes {
  const charge = simulateCharge(request)
  const cell = requestedCell(request)
  const { capacityFactor, resistanceFactor } = factorsOf(request)
  const larger = chargeCell(request, { ...cell, capacity_Ah: cell.capacity_Ah * capacityFactor })
  const moreResistive = chargeCell(request, scaleResistance(cell, resistanceFactor))
  const { fuller, emptier } = otherStarts(request, cell) ?? { fuller: charge, emptier: charge }

  const around = (timeOf: (charge: Charge) => number): Band => {
    const time_s = timeOf(charge)
    const either_s = Math.hypot(timeOf(larger) - time_s, timeOf(moreResistive) - time_s, modelSpread * time_s)
    const limited = (spread_s: number) => Math.min(spread_s, widest * time_s)
    return {
      low: time_s - limited(Math.hypot(either_s, Math.max(0, time_s - timeOf(fuller)))),
      high: time_s + limited(Math.hypot(either_s, Math.max(0, timeOf(emptier) - time_s))),
    }
  }
  return {
    charge,
    time_s: around(({ duration_s }) => duration_s),
    timeToCutoff_s: around(({ timeToCutoff_s }) => timeToCutoff_s),
  }
}

function factorsOf({ pack, measuredCapacity_Ah }: ChargeRequest): { capacityFactor: number; resistanceFactor: number } {
  const { capacitySpread, resistanceSpread } = pack.chemistry
  const isRead = pack.cellResistance_ohm !== undefined
  return {
    capacityFactor: 1 + (measuredCapacity_Ah === undefined ? capacitySpread.value : measuredCapacitySpread),
    resistanceFactor: 1 + (isRead ? measuredResistanceSpread : resistanceSpread.value),
  }
}

/** The charge from the most and the least that cells hold at the resting voltage it starts from, if it does. */
function otherStarts(request: ChargeRequest, cell: Cell): { fuller: Charge; emptier: Charge } | undefined {
  if (request.from.kind === 'soc') return undefined
  const { low, high } = socBandAt(request.pack.chemistry, request.from.perCell_V)
  const from = (soc: number) => chargeCell({ ...request, from: { kind: 'soc', soc } }, cell)
  return { fuller: from(high), emptier: from(low) }
}
