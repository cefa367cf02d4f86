// The dimensions a quantity can have: its units, the range that makes sense, and how it is written.

export type DimensionName =
  | 'current'
  | 'voltage'
  | 'capacity'
  | 'energy'
  | 'power'
  | 'resistance'
  | 'temperature'
  | 'share'
  | 'rate'
  | 'length'
  | 'mass'

/** A unit as a power of ten (kept apart so that 720 mAh is exactly 0.72 Ah) and, where needed, a factor and an offset. */
export interface Unit {
  readonly exponent: number
  readonly factor?: number
  readonly offset?: number
}

export interface Dimension {
  readonly units: Readonly<Record<string, Unit>>
  /** The unit in which values are written out and ranges told. */
  readonly written: string
  readonly min: number
  readonly max: number
  readonly example: string
}

const ten = (exponent: number, ...names: string[]): Record<string, Unit> =>
  Object.fromEntries(names.map(name => [name, { exponent }]))
const times = (factor: number, ...names: string[]): Record<string, Unit> =>
  Object.fromEntries(names.map(name => [name, { exponent: 0, factor }]))

/** Units are looked up in lower case. Inch, foot, ounce and pound are exact by the 1959 yard and pound agreement. */
export const dimensions: Readonly<Record<DimensionName, Dimension>> = {
  current: {
    units: {
      ...ten(0, 'a', 'amp', 'amps', 'ampere', 'amperes'),
      ...ten(-3, 'ma', 'milliamp', 'milliamps', 'milliampere', 'milliamperes'),
    },
    written: 'A',
    min: 0.01,
    max: 500,
    example: '1.5A',
  },
  voltage: {
    units: { ...ten(0, 'v', 'volt', 'volts'), ...ten(-3, 'mv', 'millivolt', 'millivolts') },
    written: 'V',
    min: 0,
    max: 100,
    example: '3.85V',
  },
  capacity: {
    units: { ...ten(0, 'ah', 'a·h'), ...ten(-3, 'mah', 'ma·h') },
    written: 'mAh',
    min: 0.02,
    max: 60,
    example: '720mAh',
  },
  energy: {
    units: { ...ten(0, 'wh', 'w·h'), ...ten(3, 'kwh', 'kw·h'), ...ten(-3, 'mwh') },
    written: 'Wh',
    min: 0.1,
    max: 5000,
    example: '74Wh',
  },
  power: {
    units: { ...ten(0, 'w', 'watt', 'watts'), ...ten(3, 'kw') },
    written: 'W',
    min: 0.5,
    max: 3000,
    example: '80W',
  },
  resistance: {
    units: {
      ...ten(0, 'Ω', 'ohm', 'ohms'),
      ...ten(-3, 'mΩ', 'mohm', 'mohms', 'milliohm', 'milliohms'),
      ...ten(-6, 'µΩ', 'uohm', 'microohm', 'microohms'),
    },
    written: 'mΩ',
    min: 0.00001,
    max: 10,
    example: '6mΩ',
  },
  temperature: {
    units: {
      ...ten(0, '°c', 'c', 'celsius', 'centigrade'),
      ...Object.fromEntries(['°f', 'f', 'fahrenheit'].map(name => [name, { exponent: 0, factor: 5 / 9, offset: -32 }])),
    },
    written: '°C',
    min: -50,
    max: 150,
    example: '25°C',
  },
  share: { units: ten(-2, '%', 'percent', 'pct'), written: '%', min: 0, max: 1, example: '80%' },
  rate: { units: ten(0, 'c'), written: 'C', min: 0.01, max: 20, example: '2C' },
  length: {
    units: {
      ...ten(0, 'm', 'metre', 'metres', 'meter', 'meters'),
      ...ten(-2, 'cm'),
      ...ten(-3, 'mm'),
      ...times(0.3048, 'ft', 'foot', 'feet', "'"),
      ...times(0.0254, 'in', 'inch', 'inches', '"'),
    },
    written: 'm',
    min: 0.001,
    max: 100,
    example: '30cm',
  },
  mass: {
    units: {
      ...ten(0, 'kg'),
      ...ten(-3, 'g', 'gram', 'grams'),
      ...times(0.028349523125, 'oz', 'ounce', 'ounces'),
      ...times(0.45359237, 'lb', 'lbs', 'pound', 'pounds'),
    },
    written: 'g',
    min: 0.0001,
    max: 50,
    example: '68g',
  },
}
