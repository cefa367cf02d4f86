// What quantities are called, and what is said of those that cannot be read.

import { type Said, told } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'
import type { DimensionName } from './dimensions.ts'

export interface DimensionWords {
  readonly name: Said
  /** With an article, as in "expected a current from …". */
  readonly phrase: Said
}

export const dimensionWords: Readonly<Record<DimensionName, DimensionWords>> = {
  current: { name: ({ say }) => say`current`, phrase: ({ say }) => say`a current` },
  voltage: { name: ({ say }) => say`voltage`, phrase: ({ say }) => say`a voltage` },
  capacity: { name: ({ say }) => say`capacity`, phrase: ({ say }) => say`a capacity` },
  energy: { name: ({ say }) => say`energy`, phrase: ({ say }) => say`an energy` },
  power: { name: ({ say }) => say`power`, phrase: ({ say }) => say`a power` },
  resistance: { name: ({ say }) => say`resistance`, phrase: ({ say }) => say`a resistance` },
  temperature: { name: ({ say }) => say`temperature`, phrase: ({ say }) => say`a temperature` },
  share: { name: ({ say }) => say`percentage`, phrase: ({ say }) => say`a percentage` },
  rate: { name: ({ say }) => say`C-rate`, phrase: ({ say }) => say`a C-rate` },
  length: { name: ({ say }) => say`length`, phrase: ({ say }) => say`a length` },
  mass: { name: ({ say }) => say`mass`, phrase: ({ say }) => say`a mass` },
}

/** Ends in the unit in which the dimension is written, as notation. */
export const between = told(
  (locale, phrase: Said, from: string, to: string) =>
    locale.say`${phrase(locale)} from ${locale.own(from)} to ${locale.own(to)}`,
)

export const outOfRange = told((locale, name: Said, side: 'below' | 'above') =>
  side === 'below'
    ? locale.say`That ${name(locale)} is below the range I work with.`
    : locale.say`That ${name(locale)} is above the range I work with.`,
)

export const needsUnit: Said = ({ say }) => say`That number needs a unit.`

export const cannotReadAs = told((locale, phrase: Said) => locale.say`I cannot read that as ${phrase(locale)}.`)

export const wholeNumber = told(
  (locale, phrase: Said, min: number, max: number) =>
    locale.say`${phrase(locale)}, a whole number from ${count(locale, min)} to ${count(locale, max)}`,
)

const count = ({ show }: Parameters<Said>[0], value: number): Text => show.number(value, 0)
export const numberOfPacks: Said = ({ say }) => say`a number of packs`
export const notAGauge: Said = ({ say }) => say`I cannot read that as a wire gauge.`
export const gaugeRange: Said = ({ say }) => say`an American wire gauge from 0 to 40, or a cross-section in mm²`
export const durationRange: Said = ({ say }) => say`a duration from 1 s to 366 days`
export const durationOutside: Said = ({ say }) => say`That duration is outside the range I work with.`
export const colonUnclear: Said = ({ say }) => say`A colon could part hours from minutes or minutes from seconds.`
export const notADuration: Said = ({ say }) => say`I cannot read that as a duration.`

export const fahrenheitIs = told(
  ({ say, own, show }, typed: string, celsius: number) => say`${own(typed)} is ${show.temperature(celsius)}`,
)

export const gaugeTaken = told(
  ({ say, own, show }, typed: string, gauge: number) =>
    say`${own(typed)} is taken for AWG ${show.number(gauge, 0)}, the next thinner`,
)

export const notAClock: Said = ({ say }) => say`I cannot read that as a time of day.`
export const aTimeOfDay: Said = ({ say }) => say`a time of day, a weekday or both`
export const noZone: Said = ({ say }) => say`I know no time zone of that name.`
export const aZone: Said = ({ say, own }) =>
  say`a time zone by its name, by a large city in it, or as ${own('UTC+2')}, which knows no summer time`
