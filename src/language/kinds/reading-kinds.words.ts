// What is said of meter readings that cannot be read.

import type { Said } from '../../ground/locale.ts'

export const volts: Said = ({ say }) => say`volts`
export const cutoffs: Said = ({ say }) => say`cutoffs`
export const resistances: Said = ({ say }) => say`resistances with their unit`

export const oneForEach =
  (many: Said, most: number): Said =>
  locale =>
    locale.say`${many(locale)}, one for each of 1 to ${locale.show.number(most, 0)} cells`

export const tooManyCells =
  (most: number): Said =>
  ({ say, show }) =>
    say`That is more than ${show.number(most, 0)} cells.`

export const noCondition: Said = ({ say }) => say`I cannot read that as when the cells were measured.`

export const restOrFull: Said = ({ say, own }) =>
  say`${own('rest')} (half an hour after any use) or ${own('full')} (at the end of a charge)`

export const noLoad: Said = ({ say }) => say`I cannot read that as a load and the volts of the pack under it.`

export const ampsAndVolts: Said = ({ say }) => say`amps and pack volts, or rest and pack volts`

export const noScale: Said = ({ say }) => say`That is no scale factor that I know of.`
