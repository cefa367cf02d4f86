// Numbers as a person reads them: to the precision they deserve, in the community's number format.

export type DecimalMark = '.' | ','

export interface Show {
  readonly mark: DecimalMark
  current(value_A: number): string
  /** Volts of one cell: two decimals, as they are set. */
  perCell(value_V: number): string
  /** Volts of a pack or supply. */
  voltage(value_V: number): string
  capacity(value_Ah: number): string
  energy(value_Wh: number): string
  power(value_W: number): string
  resistance(value_ohm: number): string
  temperature(value_C: number): string
  rate(value_C: number): string
  /** From a fraction, 0 to 1. */
  percent(fraction: number): string
  /** Rounded up to whole minutes; seconds only under a minute. */
  duration(value_s: number): string
  /** Any number with so many decimals at most. */
  number(value: number, decimals: number): string
}

/** Space that keeps a number and its unit on one line. */
const joint = ' '

export function showIn(mark: DecimalMark): Show {
  const number = (value: number, decimals: number): string => {
    const text = Number(value.toFixed(decimals)).toString()
    return mark === ',' ? text.replace('.', ',') : text
  }
  const fixed = (value: number, decimals: number): string => {
    const text = value.toFixed(decimals)
    return mark === ',' ? text.replace('.', ',') : text
  }
  const withUnit = (text: string, unit: string): string => `${text}${joint}${unit}`
  return {
    mark,
    number,
    current: value_A => withUnit(number(value_A, 2), 'A'),
    perCell: value_V => withUnit(fixed(value_V, 2), 'V'),
    voltage: value_V => withUnit(number(value_V, 2), 'V'),
    capacity: value_Ah =>
      value_Ah < 10 ? withUnit(number(value_Ah * 1000, 0), 'mAh') : withUnit(number(value_Ah, 1), 'Ah'),
    energy: value_Wh => withUnit(number(value_Wh, value_Wh < 10 ? 2 : 1), 'Wh'),
    power: value_W => withUnit(number(value_W, value_W < 10 ? 1 : 0), 'W'),
    resistance: value_ohm => withUnit(number(value_ohm * 1000, value_ohm < 0.1 ? 1 : 0), 'mΩ'),
    temperature: value_C => withUnit(number(value_C, 0), '°C'),
    rate: value_C => `${number(value_C, 2)}C`,
    percent: fraction => withUnit(number(fraction * 100, 0), '%'),
    duration: value_s => {
      if (value_s < 60) return withUnit(String(Math.ceil(value_s)), 's')
      const minutes = Math.ceil(value_s / 60 - 1e-9)
      if (minutes < 60) return withUnit(String(minutes), 'min')
      const rest = minutes % 60
      const hours = withUnit(String((minutes - rest) / 60), 'h')
      return rest === 0 ? hours : `${hours} ${withUnit(String(rest), 'min')}`
    },
  }
}
