// What is said of readings that are none of the cells of a pack.

import type { ReadingFault } from '../../src/charging/upkeep/cell-spread.ts'
import { type Said, told } from '../../src/ground/locale.ts'
import { anyChemistry } from '../../src/language/things/chemistry.ts'

export const chemistryWanted: Said = ({ say }) =>
  say`Which chemistry are these cells? The same volts are sound in one and a danger in another.`
export const chemistryOrPack: Said = ({ say, own }) => say`${own(anyChemistry)} before the volts, or the pack`

export const faultWords = told(({ say, show, own }, fault: ReadingFault) =>
  fault.kind === 'lead'
    ? say`Do not charge: no cell reads ${show.perCell(fault.cell_V)}. The balance lead does not connect at cell ${show.number(fault.cell + 1, 0)}; mend the plug or the wire and measure again.`
    : say`Do not charge as ${own(`${fault.series}S`)}: there are ${show.number(fault.readings, 0)} readings. Check the label, the balance plug and the cell count on the charger.`,
)

export const faultMended = told(
  ({ say, show }, series: number) =>
    say`readings of ${show.number(series, 0)} cells, one each, in the order of the balance plug`,
)
