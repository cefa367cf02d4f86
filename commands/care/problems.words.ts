// What is said of readings, resistances and packs that tell too little, or nothing.

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

export const otherCount = told(
  ({ say, show }, readings: number, cells: number) =>
    say`There are ${show.number(readings, 0)} resistances for ${show.number(cells, 0)} cells.`,
)

export const oneOrEach = told(({ say, show }, cells: number) => say`one resistance, or ${show.number(cells, 0)}`)

export const resistanceWanted: Said = ({ say }) => say`I need the resistance of a cell, or the volts under two loads.`
export const resistanceOrLoads: Said = ({ say, own }) =>
  say`${own('resistance:')} as the charger shows it, or ${own('one:')} and ${own('other:')} with amps and pack volts`
export const moreShowFewer: Said = ({ say }) => say`More amps must show fewer volts; these two readings do not.`
export const twoLoads: Said = ({ say }) => say`two loads that differ, the volts of the pack under each`

export const bothReadings: Said = ({ say }) => say`I need both what the charger shows and what the meter says.`
export const bothOptions: Said = ({ say, own }) => say`${own('shown:')} and ${own('measured:')} in volts`

export const voltsWanted = told(({ say }, name: 'shown' | 'measured') =>
  name === 'shown' ? say`I need what the charger shows in volts.` : say`I need what the meter says in volts.`,
)

export const voltsOfCellOrPack: Said = ({ say }) => say`volts per cell, or pack volts where the pack is named`
