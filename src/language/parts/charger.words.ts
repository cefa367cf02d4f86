// What is said of chargers that cannot be read, and of what their readers had to assume.

import { type Said, told } from '../../ground/locale.ts'

export const aCharger: Said = ({ say }) =>
  say`a charger: the currents it offers, then what else you know (power, cells, input volts)`
export const lacksCurrents: Said = ({ say }) => say`That charger lacks its currents.`
export const neitherCutoffNorInput: Said = ({ say }) =>
  say`That voltage is neither a cutoff per cell nor an input range.`

export const cutoffsOrInput = told(
  ({ say, show }, min: number, max: number) =>
    say`cutoffs from ${show.number(min, 2)} to ${show.number(max, 2)} V per cell, or the input as two ends`,
)

export const noSuchCells: Said = ({ say }) => say`I know no charger for that number of cells.`

export const cellsOfCharger = told(
  ({ say, own }, most: number) => say`1S to ${own(`${most}S`)}, the smaller number first`,
)

export const cutoffsPhrase: Said = ({ say }) => say`cutoff voltages per cell`
export const inputPhrase: Said = ({ say }) => say`an input voltage`
export const balancePhrase: Said = ({ say }) => say`a balance current`
export const efficiencyPhrase: Said = ({ say }) => say`an efficiency`
export const incrementTooWide: Said = ({ say }) => say`The increment is wider than the range.`
export const rangeAndIncrement: Said = ({ say }) => say`a range of currents and the increment between two settings`

export const stepTaken = told(
  ({ say, show }, increment_A: number) => say`the charger is taken to step by ${show.current(increment_A)}, as most do`,
)

export const currentsTaken = told(({ say, show }, power_W: number | undefined, from_A: number, to_A: number) =>
  power_W === undefined
    ? say`the charger is taken to offer ${show.current(from_A)} to ${show.current(to_A)} in steps of ${show.current(from_A)}`
    : say`a charger of ${show.power(power_W)} is taken to offer ${show.current(from_A)} to ${show.current(to_A)} in steps of ${show.current(from_A)}`,
)
