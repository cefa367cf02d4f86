// What is said of packs that cannot be read, and of what their readers had to assume.

import { type Said, told } from '../../ground/locale.ts'

export const aPack: Said = ({ say }) => say`a pack: cells in a row (1S to 14S), mAh and type, as 3S 720 LiHV`
export const aRate: Said = ({ say }) => say`a rate`
export const resistancePerCell: Said = ({ say }) => say`a resistance per cell`
export const capacityWithUnit: Said = ({ say }) => say`a capacity from 20 mAh to 60 Ah, with its unit`
export const mAhOrAh: Said = ({ say }) => say`That capacity could be in mAh or in Ah.`
type CellsCounted = 'series' | 'parallel'

export const cellsOutOfRange = told(({ say }, counted: CellsCounted) =>
  counted === 'series'
    ? say`I cannot work with that number of cells in series.`
    : say`I cannot work with that number of cells in parallel.`,
)

export const upToCells = told(
  ({ say, own }, most: number, letter: 'S' | 'P') => say`${own(`1${letter}`)} to ${own(`${most}${letter}`)}`,
)

/** Each with how it is written, where a pack lacks it. */
export const lackedParts = (
  chemistries: readonly string[],
): Readonly<Record<'series' | 'capacity_Ah' | 'chemistry', Said>> => ({
  series: ({ say }) => say`the cells in series (as 3S)`,
  capacity_Ah: ({ say }) => say`the capacity (as 720mAh)`,
  chemistry: ({ say, own }) => say`the chemistry (${own(chemistries.join(', '))})`,
})

export const packLacks = told((locale, missing: readonly Said[]) => {
  const [first, ...others] = missing.map(said => said(locale))
  const all = others.reduce((before, next) => locale.say`${before} and ${next}`, first ?? locale.own(''))
  return locale.say`That pack lacks ${all}.`
})

export const asMilliampHours = told(
  ({ say, own }, numeral: string) => say`${own(numeral)} is read as mAh, as pilots write it`,
)

export const asLabelLimit = told(
  ({ say, own }, rate: string) => say`${own(rate)} is read as the charge limit on the label`,
)

export const asDischargeRating = told(
  ({ say, own }, rate: string) => say`${own(rate)} is read as the discharge rating and not used for charging`,
)

export const energyNotUsed = told(
  ({ say, own }, energy: string) => say`${own(energy)} on the label is not used: it follows from cells and capacity`,
)

export const unknownChemistry: Said = ({ say }) => say`I do not know that chemistry.`

export const oneOfChemistries = told(({ say, own }, names: readonly string[]) => say`one of ${own(names.join(', '))}`)

export const moreKindsThan = told(
  ({ say, show }, most: number) => say`That is more than ${show.number(most, 0)} kinds of pack.`,
)

export const kindsOfPack = told(
  ({ say, show }, most: number) => say`1 to ${show.number(most, 0)} kinds of pack with ";" between them`,
)
