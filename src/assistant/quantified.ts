// A named number of a result: its value in base units, how it is shown, and its band. The name's words are elsewhere.

import type { Band } from '../charging/things/chemistry.ts'
import type { Locale } from '../ground/locale.ts'
import type { Show } from '../ground/show.ts'
import { joined, type Text } from '../ground/text.ts'
import type { Figure, Unit } from './reply.ts'

const units = {
  current: 'A',
  perCell: 'V',
  offset: 'V',
  voltage: 'V',
  drop: 'V',
  capacity: 'Ah',
  energy: 'Wh',
  power: 'W',
  rate: 'C',
  duration: 's',
  resistance: 'Ω',
  temperature: '°C',
  percent: '%',
  count: 'count',
  times: 'count',
  factor: 'count',
  length: 'm',
  diameter: 'mm',
  area: 'mm²',
  mass: 'g',
  density: 'Wh/kg',
} as const satisfies Readonly<Record<string, Unit>>

type Shown = keyof typeof units

export interface Quantified<F extends string = string> {
  readonly key: F
  /** Of several alike, counted from 1: it stands where the key has a "#", or behind it. */
  readonly of: number | undefined
  readonly shown: Shown
  /** In base units, a percentage as a share of 1; what is not known is left out of the answer. */
  readonly value: number | undefined
  readonly band: Band | undefined
}

type Builder = <const F extends string>(key: F, value: number | undefined, band?: Band, of?: number) => Quantified<F>

const builder =
  (shown: Shown): Builder =>
  (key, value, band, of) => ({ key, of, shown, value, band })

/** `figure.duration('chargeTime', 3120, band)`. */
export const figure = Object.fromEntries(
  (Object.keys(units) as Shown[]).map(shown => [shown, builder(shown)]),
) as Readonly<Record<Shown, Builder>>

const written = (shown: Shown, value: number, { show, own }: Locale): Text => {
  switch (shown) {
    case 'count':
      return show.number(value, 0)
    case 'times':
      return show.number(value, 2)
    // Three digits: more than a meter is good for.
    case 'factor':
      return show.number(Number(value.toPrecision(3)), 4)
    case 'drop':
      return joined([show.number(value, 3), own(units[shown])])
    case 'offset': {
      const sign = value > 0 ? '+' : value < 0 ? '−' : ''
      return own(`${sign}${show.number(Math.abs(value), 3)} ${units[shown]}`)
    }
    case 'length':
    case 'diameter':
    case 'area':
      return joined([show.number(value, 2), own(units[shown])])
    case 'mass':
    case 'density':
      return joined([show.number(value, 0), own(units[shown])])
    default:
      return show[shown as keyof Omit<Show, 'mark' | 'number'>](value)
  }
}

const numbered = (key: string, of: number | undefined): string =>
  of === undefined ? key : key.includes('#') ? key.replace('#', String(of)) : `${key}${of}`

/** `reads` makes of the number, with its band, what a person reads. */
export function figureOf(
  { key, of, shown, value, band }: Quantified & { readonly value: number },
  label: Text,
  reads: (number: Text) => Text,
  locale: Locale,
): Figure {
  const scale = shown === 'percent' ? 100 : 1
  const text = written(shown, value, locale)
  const shows = (end: number) => written(shown, end, locale)
  return {
    key: numbered(key, of),
    label,
    value: value * scale,
    unit: units[shown],
    low: band && band.low * scale,
    high: band && band.high * scale,
    text: reads(band ? banded(text, shows(band.low), shows(band.high), locale) : text),
  }
}

/** "56 min (50 min to 1 h 10 min)"; ends that read alike are no band. */
export const banded = (text: Text, low: Text, high: Text, { say }: Locale): Text =>
  low === high ? text : say`${text} (${low} to ${high})`

/** The name of each figure; of several alike, by their number. */
export interface FigureWords<R, F extends string> {
  readonly figures: Readonly<Record<F, Text | ((of: number, result: R) => Text)>>
}

/** What a command says, in one language. */
