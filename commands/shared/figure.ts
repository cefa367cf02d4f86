// Builders for the figures of a reply: the number and its text from one value.

import type { Figure, Unit } from '../../src/assistant/reply.ts'
import type { Band } from '../../src/charging/simulation/charge.ts'
import type { Show } from '../../src/ground/show.ts'

export type FigureBuilder = (key: string, label: string, value: number, band?: Band) => Figure

const units = {
  current: 'A',
  perCell: 'V',
  voltage: 'V',
  capacity: 'Ah',
  energy: 'Wh',
  power: 'W',
  rate: 'C',
  duration: 's',
  resistance: 'Ω',
  temperature: '°C',
} as const satisfies Partial<Record<keyof Show, Unit>>

type Shown = keyof typeof units

/** `figures.duration('chargeTime', 'time', 3120, band)`: value in base units, text as `show` writes it. */
export function figuresIn(show: Show): Record<Shown | 'percent' | 'count', FigureBuilder> {
  const builder =
    (unit: Unit, write: (value: number) => string): FigureBuilder =>
    (key, label, value, band) => ({
      key,
      label,
      value,
      unit,
      ...(band && { low: band.low, high: band.high }),
      text: band ? `${write(value)} (${write(band.low)} to ${write(band.high)})` : write(value),
    })
  return {
    current: builder(units.current, show.current),
    perCell: builder(units.perCell, show.perCell),
    voltage: builder(units.voltage, show.voltage),
    capacity: builder(units.capacity, show.capacity),
    energy: builder(units.energy, show.energy),
    power: builder(units.power, show.power),
    rate: builder(units.rate, show.rate),
    duration: builder(units.duration, show.duration),
    resistance: builder(units.resistance, show.resistance),
    temperature: builder(units.temperature, show.temperature),
    percent: (key, label, fraction) =>
      builder('%', value => show.percent(value / 100))(key, label, fraction * 100),
    count: builder('count', value => show.number(value, 0)),
  }
}
