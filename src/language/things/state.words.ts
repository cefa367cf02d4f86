// What is said of states and targets that cannot be read, and of what their readers had to assume.

import { type Said, told } from '../../ground/locale.ts'

export const startWanted: Said = ({ say }) => say`volts per cell, pack volts, a percentage, full, storage or empty`
export const goalWanted: Said = ({ say }) => say`full, storage, volts per cell, pack volts or a percentage`
export const socPhrase: Said = ({ say }) => say`a state of charge`
export const notALevel: Said = ({ say }) => say`I cannot read that as a state of charge.`
export const voltsOrPercent: Said = ({ say }) => say`That number could be volts or a percentage.`
export const cannotEndEmpty: Said = ({ say }) => say`A charge cannot end at empty.`
export const tooLittleTold: Said = ({ say }) =>
  say`That tells too little: the volts of its cells decide whether it may be charged.`
export const voltsOfLowest: Said = ({ say }) => say`volts per cell at rest, of the lowest cell`

export const asPerCell = told(({ say, show }, volts: number) => say`${show.voltage(volts)} is read as volts per cell`)

export const bareAsPerCell = told(
  ({ say, own, show }, typed: string, volts: number) => say`${own(typed)} is read as ${show.voltage(volts)} per cell`,
)

export const emptyIsLanded = told(
  ({ say, own }, typed: string) => say`${own(typed)} is read as landed: at the volts at rest where flying ends`,
)

export const noCellSoHigh: Said = ({ say }) => say`No cell of these chemistries goes that high.`

export const upToPerCell = told(({ say, show }, most_V: number) => say`0 to ${show.voltage(most_V)} per cell`)

export const noPackSoHigh = told(({ say, own }, series: number) => say`No ${own(`${series}S`)} pack goes that high.`)

export const needsPack: Said = ({ say }) => say`Pack volts need the pack to be known.`

export const voltsUpTo = told(({ say, show }, cell_V: number, pack_V: number | undefined) =>
  pack_V === undefined
    ? say`volts per cell up to ${show.voltage(cell_V)}`
    : say`volts per cell up to ${show.voltage(cell_V)}, or pack volts up to ${show.voltage(pack_V)}`,
)

export const cellOrPack: Said = ({ say }) => say`That could be the volts of one cell or of the whole pack.`
export const sayWhich: Said = ({ say }) => say`the volts with "per cell" or "pack" behind them`
