// What the temperature of a cell allows: the strictest of the bands that hold it.

import type { Chemistry } from '../things/chemistry.ts'
import { type Refused, refuse } from './refusal.ts'

/** Where nobody measured: a room. */
const roomTemperature_C = 25

export interface TemperatureAllowance {
  readonly maxRate_C: number
  readonly maxPerCell_V: number
  /** Share of the usual charge rate that is left, 0 to 1. */
  readonly share: number
  /** Less rate or voltage than the chemistry allows at room temperature. */
  readonly reduced: boolean
}

/** On the border of two bands the stricter holds; outside all of them charging is refused. */
export function temperatureAllowance(
  { temperatureBands }: Chemistry,
  temperature_C = roomTemperature_C,
): TemperatureAllowance | Refused {
  const bands = temperatureBands.value
  const holding = bands.filter(({ from_C, to_C }) => temperature_C >= from_C && temperature_C <= to_C)
  if (holding.length === 0) {
    const from_C = Math.min(...bands.map(band => band.from_C))
    const to_C = Math.max(...bands.map(band => band.to_C))
    return refuse({ kind: 'temperature', temperature_C, from_C, to_C })
  }
  const maxRate_C = Math.min(...holding.map(band => band.maxRate_C))
  const maxPerCell_V = Math.min(...holding.map(band => band.maxPerCell_V))
  const share = maxRate_C / Math.max(...bands.map(band => band.maxRate_C))
  const reduced = share < 1 || bands.some(band => band.maxPerCell_V > maxPerCell_V)
  return { maxRate_C, maxPerCell_V, share, reduced }
}
