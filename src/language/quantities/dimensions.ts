// The dimensions a quantity can have: its units, the range that makes sense, and how it is written.

/** A unit as a power of ten (kept apart so that 720 mAh is exactly 0.72 Ah) and, where needed, a factor and an offset. */
export interface Unit {
  readonly exponent: number
  readonly factor?: number
  readonly offset?: number
  /** Read in notation alone. */
  readonly isNoWord?: true
}

export interface Dimension {
  readonly units: Readonly<Record<string, Unit>>
  /** The unit in which values are written out and ranges told. */
  readonly written: string
  readonly min: number
  readonly max: number
  readonly example: string
}

const named = (names: string, unit: Unit): Record<string, Unit> =>
  Object.fromEntries(names.split(', ').map(name => [name, unit]))
const ten = (exponent: number, names: string) => named(names, { exponent })
const times = (factor: number, names: string) => named(names, { exponent: 0, factor })
/** "Amp hours", "amp-hour", "amphours". */
const hours = (names: string): string =>
  names
    .split(', ')
    .flatMap(name => [`${name} hour`, `${name} hours`, `${name}hour`, `${name}hours`, `${name} h`])
    .join(', ')

/** Units in lower case, as they are written and as people call them. Inch, foot, ounce and pound are exact by the 1959 yard and pound agreement. */
export const dimensions = {
  current: {
    units: {
      ...ten(0, 'a, amp, amps, amper, ampers, ampere, amperes, ampère, ampères, amperios'),
      ...ten(-3, 'ma, milliamp, milliamps, milliampere, milliamperes'),
    },
    written: 'A',
    min: 0.01,
    max: 500,
    example: '1.5A',
  },
  voltage: {
    units: { ...ten(0, 'v, volt, volts, voltios'), ...ten(-3, 'mv, millivolt, millivolts') },
    written: 'V',
    min: 0,
    max: 100,
    example: '3.85V',
  },
  capacity: {
    units: {
      ...ten(0, `ah, a h, a·h, ${hours('amp, amps, ampere')}`),
      ...ten(-3, `mah, ma h, ma·h, mahs, m ah, milliamperehours, ${hours('milliamp, milliamps, milliampere')}`),
    },
    written: 'mAh',
    min: 0.02,
    max: 60,
    example: '720mAh',
  },
  energy: {
    units: {
      ...ten(0, `wh, w h, w·h, ${hours('watt')}`),
      ...ten(3, `kwh, kw·h, ${hours('kilowatt')}`),
      ...ten(-3, 'mwh'),
    },
    written: 'Wh',
    min: 0.1,
    max: 5000,
    example: '74Wh',
  },
  power: {
    units: { ...ten(0, 'w, wat, watt, watts, vatios, va'), ...ten(3, 'kw, kilowatt, kilowatts, kva') },
    written: 'W',
    min: 0.5,
    max: 3000,
    example: '80W',
  },
  resistance: {
    units: {
      ...ten(0, 'ω, ohm, ohms'),
      ...ten(-3, 'mω, m ω, mr, mohm, mohms, milliohm, milliohms, miliohm, miliohms, milli ohm, milli ohms'),
      ...ten(-6, 'µω, uohm, microohm, microohms'),
    },
    written: 'mΩ',
    min: 0.00001,
    max: 10,
    example: '6mΩ',
  },
  temperature: {
    units: {
      ...ten(0, '°c, ° celsius, ° centigrade, °, º, º c, deg, degs, deg c, c, celsius, centigrade, grad, grados'),
      ...ten(0, 'degree, degrees, degree c, degrees c, degree celsius, degrees celsius, degrees centigrade'),
      ...named('°f, ° fahrenheit, f, fahrenheit, deg f, degrees f, degrees fahrenheit', {
        exponent: 0,
        factor: 5 / 9,
        offset: -32,
      }),
    },
    written: '°C',
    min: -50,
    max: 150,
    example: '25°C',
  },
  share: { units: ten(-2, '%, percent, per cent, pct, prozent'), written: '%', min: 0, max: 1, example: '80%' },
  rate: { units: ten(0, 'c, c rate'), written: 'C', min: 0.01, max: 20, example: '2C' },
  length: {
    units: {
      ...ten(0, 'm, metre, metres, meter, meters'),
      ...ten(-2, 'cm, centimetre, centimetres, centimeter, centimeters'),
      ...ten(-3, 'mm, millimetre, millimetres, millimeter, millimeters'),
      ...times(0.3048, 'ft, foot, feet'),
      ...times(0.0254, 'inch, inches, "'),
      // In a sentence these are other words.
      ...named("'", { exponent: 0, factor: 0.3048, isNoWord: true }),
      ...named('in', { exponent: 0, factor: 0.0254, isNoWord: true }),
    },
    written: 'm',
    min: 0.001,
    max: 100,
    example: '30cm',
  },
  mass: {
    units: {
      ...ten(0, 'kg, kilo, kilos, kilogram, kilograms'),
      ...ten(-3, 'g, gr, gram, grams, gramme, grammes'),
      ...times(0.028349523125, 'oz, ounce, ounces'),
      ...times(0.45359237, 'lb, lbs, pound, pounds'),
    },
    written: 'g',
    min: 0.0001,
    max: 50,
    example: '68g',
  },
} as const satisfies Readonly<Record<string, Dimension>>

export type DimensionName = keyof typeof dimensions
