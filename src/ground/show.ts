// Numbers as a person reads them: to the precision they deserve, in the community's number format.

import type { Text } from './text.ts'

export type DecimalMark = '.' | ','

export interface Show {
  readonly mark: DecimalMark
  current(value_A: number): Text
  /** Volts of one cell: two decimals, as they are set. */
  perCell(value_V: number): Text
  /** Volts of a pack or supply. */
  voltage(value_V: number): Text
  capacity(value_Ah: number): Text
  /** Of a pack what stands behind "about": to two digits. */
  charge(value_Ah: number): Text
  energy(value_Wh: number): Text
  power(value_W: number): Text
  resistance(value_ohm: number): Text
  temperature(value_C: number): Text
  rate(value_C: number): Text
  /** From a fraction, 0 to 1. */
  percent(fraction: number): Text
  /** Rounded up to whole minutes, from three days on to hours; seconds only under a minute. */
  duration(value_s: number): Text
  /** The same stepped. */
  roughly(value_s: number, round?: (value: number) => number): Text
  /** Any number with so many decimals at most. */
  number(value: number, decimals: number): Text
}

/** Time as it is said at the bench: to 5 minutes from an hour on, to 15 from three. */
export function stepped_s(value_s: number, round: (value: number) => number = Math.round): number {
  if (value_s < 60) return value_s
  const step_s = value_s < 3600 ? 60 : value_s < 3 * 3600 ? 300 : 900
  return round(value_s / step_s) * step_s
}

export const twoDigits = (value: number): number => Number(value.toPrecision(2))

/** From so many on hours are said as days. */
const fewestDays = 3
/** Between a number and its unit. */
const joint = ' '

export function showIn(mark: DecimalMark): Show {
  const marked = (text: string): Text => (mark === ',' ? text.replace('.', ',') : text) as Text
  const number = (value: number, decimals: number): Text => marked(Number(value.toFixed(decimals)).toString())
  const fixed = (value: number, decimals: number): Text => marked(value.toFixed(decimals))
  const withUnit = (text: string, unit: string): Text => `${text}${joint}${unit}` as Text
  const daysAndHours = (minutes: number): Text => {
    const hours = Math.ceil(minutes / 60)
    const days = withUnit(String(Math.floor(hours / 24)), 'days')
    return hours % 24 === 0 ? days : (`${days} ${withUnit(String(hours % 24), 'h')}` as Text)
  }
  const duration = (value_s: number): Text => {
    if (value_s < 60) return withUnit(String(Math.ceil(value_s)), 's')
    const minutes = Math.ceil(value_s / 60 - 1e-9)
    if (minutes >= fewestDays * 1440) return daysAndHours(minutes)
    if (minutes < 60) return withUnit(String(minutes), 'min')
    const rest = minutes % 60
    const hours = withUnit(String((minutes - rest) / 60), 'h')
    return rest === 0 ? hours : (`${hours} ${withUnit(String(rest), 'min')}` as Text)
  }
  const capacity = (value_Ah: number): Text =>
    value_Ah < 10 ? withUnit(number(value_Ah * 1000, 0), 'mAh') : withUnit(number(value_Ah, 1), 'Ah')
  return {
    mark,
    number,
    duration,
    roughly: (value_s, round) => duration(stepped_s(value_s, round)),
    current: value_A => withUnit(number(value_A, 2), 'A'),
    perCell: value_V => withUnit(fixed(value_V, 2), 'V'),
    voltage: value_V => withUnit(number(value_V, 2), 'V'),
    capacity,
    charge: value_Ah => capacity(twoDigits(value_Ah)),
    energy: value_Wh => withUnit(number(value_Wh, value_Wh < 10 ? 2 : 1), 'Wh'),
    power: value_W => withUnit(number(value_W, value_W < 10 ? 1 : 0), 'W'),
    resistance: value_ohm => withUnit(number(value_ohm * 1000, value_ohm < 0.1 ? 1 : 0), 'mΩ'),
    temperature: value_C => withUnit(number(value_C, 0), '°C'),
    rate: value_C => `${number(value_C, 2)}C` as Text,
    percent: fraction => withUnit(number(fraction * 100, 0), '%'),
  }
}
