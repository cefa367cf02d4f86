// The time of a charge with the shortest and longest that real packs of its kind may need.

import { scaleResistance } from './cell.ts'
import type { Band, Charge, ChargeRequest } from './charge.ts'
import { chemistries } from './chemistries.ts'
import { chargeCell, requestedCell, simulateCharge } from './simulate.ts'

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
/** A pack further off than this is not the pack on its label, and no band would be of use. */
const widest = 0.2

/**
 * Simulates a charge and gives its times the band that spread of capacity and resistance leaves: each is
 * varied alone, and the differences are added as independent errors, up to 20 % either way. A measured
 * capacity or resistance narrows the band.
 * @throws RangeError as simulateCharge
 */
export function chargeTimeBand(request: ChargeRequest): ChargeTimes {
  const { pack, measuredCapacity_Ah } = request
  const { capacitySpread, resistanceSpread } = chemistries[pack.chemistry]
  const capacityFactor =
    1 + (measuredCapacity_Ah === undefined ? capacitySpread.value : measuredCapacitySpread)
  const resistanceFactor =
    1 + (pack.cellResistance_ohm === undefined ? resistanceSpread.value : measuredResistanceSpread)
  const charge = simulateCharge(request)
  const cell = requestedCell(request)
  const larger = chargeCell(request, { ...cell, capacity_Ah: cell.capacity_Ah * capacityFactor })
  const moreResistive = chargeCell(request, scaleResistance(cell, resistanceFactor))

  const around = (timeOf: (charge: Charge) => number): Band => {
    const time_s = timeOf(charge)
    const spread_s = Math.min(
      Math.hypot(timeOf(larger) - time_s, timeOf(moreResistive) - time_s, modelSpread * time_s),
      widest * time_s,
    )
    return { low: time_s - spread_s, high: time_s + spread_s }
  }
  return {
    charge,
    time_s: around(({ duration_s }) => duration_s),
    timeToCutoff_s: around(({ timeToCutoff_s }) => timeToCutoff_s),
  }
}
