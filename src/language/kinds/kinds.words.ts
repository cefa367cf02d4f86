// What is said of values that options cannot read.

import { type Said, told } from '../../ground/locale.ts'

export const noSuchChoice: Said = ({ say }) => say`That is none of the choices.`

export type ListedReading = 'volts' | 'cutoffs' | 'resistances'

export const oneForEachCell = told(({ say, show }, listed: ListedReading, most: number) => {
  const cells = show.number(most, 0)
  switch (listed) {
    case 'volts':
      return say`volts, one for each of 1 to ${cells} cells`
    case 'cutoffs':
      return say`cutoffs, one for each of 1 to ${cells} cells`
    case 'resistances':
      return say`resistances with their unit, one for each of 1 to ${cells} cells`
  }
})

export const moreCellsThan = told(
  ({ say, show }, most: number) => say`That is more than ${show.number(most, 0)} cells.`,
)

export const voltsOfCell: Said = ({ say }) => say`volts of one cell`
export const cutoffOfCell: Said = ({ say }) => say`a cutoff of one cell`
export const resistanceOfCell: Said = ({ say }) => say`a resistance of one cell`
export const notACondition: Said = ({ say }) => say`I cannot read that as when the cells were measured.`
export const restOrFull: Said = ({ say }) => say`rest (half an hour after any use) or full (at the end of a charge)`
export const notALoad: Said = ({ say }) => say`I cannot read that as a load and the volts of the pack under it.`
export const ampsAndVolts: Said = ({ say }) => say`amps and pack volts, or rest and pack volts`
export const shareOfVolts: Said = ({ say }) => say`a share of the voltage`
export const dropInVolts: Said = ({ say }) => say`a drop in volts`
export const notAScale: Said = ({ say }) => say`That is no scale factor that I know of.`

export const scaleRange = told(
  ({ say, show }, least: number, most: number) =>
    say`a scale factor from ${show.number(least, 2)} to ${show.number(most, 0)}, without a unit`,
)

export const tooLong = told(
  ({ say, show }, characters: number) => say`That text is ${show.number(characters, 0)} characters long.`,
)

export const atMost = told(
  ({ say, show }, characters: number) =>
    say`at most ${show.number(characters, 0)} characters, so that it fits a message`,
)
export const notAPrice: Said = ({ say }) => say`I cannot read that as a price.`
export const aPrice: Said = ({ say }) => say`what a kWh costs`

export const noPhone: Said = ({ say }) => say`That is no telephone number.`
export const phoneWanted: Said = ({ say }) => say`3 to 20 digits, with a plus before them where it needs one`
export const noHours: Said = ({ say }) => say`I cannot read that as hours of the day.`
export const hoursWanted: Said = ({ say }) => say`from and to, on a clock of 24 hours`
