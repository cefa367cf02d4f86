// What is said of readings, resistances and packs that tell too little, or nothing.

import type { Pack } from '../../src/charging/things/pack.ts'
import type { ReadingFault } from '../../src/charging/upkeep/cell-spread.ts'
import type { LoadReading } from '../../src/charging/upkeep/health.ts'
import { told } from '../../src/ground/locale.ts'
import { Problem } from '../../src/ground/problem.ts'
import { cellResistancesKind, cellVoltsKind, loadKind } from '../../src/language/kinds/reading-kinds.ts'
import { anyChemistry } from '../../src/language/parts/chemistry.ts'

export const chemistryWanted = (read: string): Problem =>
  new Problem({
    what: ({ say }) => say`Of which type are these cells? The same volts are sound in one and a danger in another.`,
    token: read,
    expected: ({ say, own }) => say`${own(anyChemistry)} before the volts, or the pack`,
    example: `cells LiPo ${read}`,
  })

const faultWords = told(({ say, show, own }, fault: ReadingFault) =>
  fault.kind === 'lead'
    ? say`Do not charge: no cell reads ${show.perCell(fault.cell_V)}. The balance lead does not connect at cell ${show.number(fault.cell + 1, 0)}; mend the plug or the wire and measure again.`
    : say`Do not charge as ${own(`${fault.series}S`)}: there are ${show.number(fault.readings, 0)} readings. Check the label, the balance plug and the cell count on the charger.`,
)

/** Its example has readings as sound cells of the pack show them. */
export const faultyReadings = (fault: ReadingFault, volts: readonly number[], { series, chemistry }: Pack): Problem =>
  new Problem({
    what: faultWords(fault),
    token: cellVoltsKind.write(volts),
    expected: ({ say, show }) =>
      say`readings of ${show.number(series, 0)} cells, one each, in the order of the balance plug`,
    example: `volts: ${Array.from({ length: series }, () => chemistry.storage_V.value.toFixed(2)).join(' ')}`,
    verdict: 'do not charge',
  })

export const otherCount = (readings_ohm: readonly number[], cells: number): Problem =>
  new Problem({
    what: ({ say, show }) =>
      say`There are ${show.number(readings_ohm.length, 0)} resistances for ${show.number(cells, 0)} cells.`,
    token: cellResistancesKind.write(readings_ohm),
    expected: ({ say, show }) => say`one resistance, or ${show.number(cells, 0)}`,
    example: 'resistance: 12mΩ',
  })

export const resistanceWanted = (): Problem =>
  new Problem({
    what: ({ say }) => say`I need the resistance of a cell, or the volts under two loads.`,
    expected: ({ say, own }) =>
      say`${own('resistance:')} as the charger shows it, or ${own('one:')} and ${own('other:')} with amps and pack volts`,
    example: 'health pack: 6S 1300 LiPo one: rest 23.8V other: 20A 21.9V',
  })

export const moreShowFewer = (one: LoadReading, other: LoadReading): Problem =>
  new Problem({
    what: ({ say }) => say`More amps must show fewer volts; these two readings do not.`,
    token: `${loadKind.write(one)}, ${loadKind.write(other)}`,
    expected: ({ say }) => say`two loads that differ, the volts of the pack under each`,
    example: 'one: rest 23.8V other: 20A 21.9V',
  })

export const bothReadings = (example: string): Problem =>
  new Problem({
    what: ({ say }) => say`I need both what the charger shows and what the meter says.`,
    expected: ({ say, own }) => say`${own('shown:')} and ${own('measured:')} in volts`,
    example,
  })

export const voltsWanted = (name: 'shown' | 'measured'): Problem =>
  new Problem({
    what: ({ say }) =>
      name === 'shown' ? say`I need what the charger shows in volts.` : say`I need what the meter says in volts.`,
    expected: ({ say }) => say`volts per cell, or pack volts where the pack is named`,
    example: `${name}: 4.20V`,
  })
