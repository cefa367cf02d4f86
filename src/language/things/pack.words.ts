// What is said of packs that cannot be read, and of what their readers had to assume.

import type { Said } from '../../ground/locale.ts'

export const aPack: Said = ({ say }) => say`a pack: cells in series (1S to 14S), capacity and chemistry`
export const aRate: Said = ({ say }) => say`a rate`
export const resistancePerCell: Said = ({ say }) => say`a resistance per cell`
export const capacityWithUnit: Said = ({ say }) => say`a capacity from 20 mAh to 60 Ah, with its unit`
export const mAhOrAh: Said = ({ say }) => say`That capacity could be in mAh or in Ah.`
export type CellsCounted = 'series' | 'parallel'

export const cellsOutOfRange =
  (counted: CellsCounted): Said =>
  ({ say }) =>
    counted === 'series'
      ? say`I cannot work with that number of cells in series.`
      : say`I cannot work with that number of cells in parallel.`

export const upToCells =
  (most: number, letter: 'S' | 'P'): Said =>
  ({ say, own }) =>
    say`${own(`1${letter}`)} to ${own(`${most}${letter}`)}`

/** Each with how it is written, where a pack lacks it. */
export const lackedParts = (
  chemistries: readonly string[],
): Readonly<Record<'series' | 'capacity_Ah' | 'chemistry', Said>> => ({
  series: ({ say }) => say`the cells in series (as 3S)`,
  capacity_Ah: ({ say }) => say`the capacity (as 720mAh)`,
  chemistry: ({ say, own }) => say`the chemistry (${own(chemistries.join(', '))})`,
})

export const packLacks =
  (missing: readonly Said[]): Said =>
  locale => {
    const [first, ...others] = missing.map(said => said(locale))
    const all = others.reduce((before, next) => locale.say`${before} and ${next}`, first ?? locale.own(''))
    return locale.say`That pack lacks ${all}.`
  }

export const asMilliampHours =
  (numeral: string): Said =>
  ({ say, own }) =>
    say`${own(numeral)} is read as mAh, as pilots write it`

export const asLabelLimit =
  (rate: string): Said =>
  ({ say, own }) =>
    say`${own(rate)} is read as the charge limit on the label`

export const asDischargeRating =
  (rate: string): Said =>
  ({ say, own }) =>
    say`${own(rate)} is read as the discharge rating and not used for charging`

export const energyNotUsed =
  (energy: string): Said =>
  ({ say, own }) =>
    say`${own(energy)} on the label is not used: it follows from cells and capacity`

export const unknownChemistry: Said = ({ say }) => say`I do not know that chemistry.`

export const oneOfChemistries =
  (names: readonly string[]): Said =>
  ({ say, own }) =>
    say`one of ${own(names.join(', '))}`

export const moreKindsThan =
  (most: number): Said =>
  ({ say, show }) =>
    say`That is more than ${show.number(most, 0)} kinds of pack.`

export const kindsOfPack =
  (most: number): Said =>
  ({ say, show }) =>
    say`1 to ${show.number(most, 0)} kinds of pack with ";" between them`
