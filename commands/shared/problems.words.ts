// What is said of currents that no charge can have, and where no pack is named.

import { type Said, told } from '../../src/ground/locale.ts'
import { anyChemistry } from '../../src/language/things/chemistry.ts'

export const tooLow: Said = ({ say }) => say`This charger cannot be set that low.`

export const stepsBetween = told(
  ({ say, show }, least_A: number, most_A: number) => say`${show.number(least_A, 2)} to ${show.current(most_A)}`,
)

export const endsFirst: Said = ({ say }) => say`The charge would end before it has begun.`

export const endBelow = told(
  ({ say, show }, current_A: number) => say`an end current below the charge current of ${show.current(current_A)}`,
)

export const packWanted: Said = ({ say }) => say`I need the pack or its chemistry: the same volts mean other charges.`
export const packOrItsKind: Said = ({ say, own }) =>
  say`pack: cells, capacity and chemistry, or chemistry: ${own(anyChemistry)}, with the cells before it if you like (${own('3S LiPo')})`
