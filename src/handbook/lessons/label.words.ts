// Lesson: what the numbers on a pack mean.

import { lihv } from '../../charging/things/chemistries.ts'
import { labelEnergy_Wh } from '../../charging/upkeep/transport.ts'
import { writePack } from '../../language/things/pack.ts'
import { drawnChemistry, drawnPack, packOf } from '../teaching/draw.ts'
import { lesson } from '../teaching/lesson.ts'

export const label = lesson('label', ({ say, show, own }) => {
  const count = (value: number) => show.number(value, 0)
  return {
    title: say`What the numbers on a pack mean`,
    teach: [
      say`S counts the cells in series, whose volts add up; P counts the cells in parallel, whose capacities add up. The mAh on a label are those of the whole pack.`,
      say`The volts on a label are nominal: cells in series times the nominal volts of one. A full pack has more, a flown one less.`,
      say`Watt-hours are nominal volts times amp-hours: what a pack holds, and what airlines count.`,
      say`The large C number beside the capacity is for discharge. Charge by the charge rate, where the label gives one.`,
    ],
    example: () => {
      const pack = packOf({ chemistry: lihv, series: 3, capacity_Ah: 0.72 })
      const { nominal_V, full_V } = pack.chemistry
      const series = count(pack.series)
      const volts = (cell_V: number) => show.voltage(cell_V * pack.series)
      const nominal = volts(nominal_V.value)
      return say`${own(writePack(pack))}: ${series} × ${show.perCell(nominal_V.value)} = ${nominal} nominal, ${series} × ${show.perCell(full_V.value)} = ${volts(full_V.value)} full, and ${nominal} × ${show.number(pack.capacity_Ah, 2)} Ah = ${show.energy(labelEnergy_Wh(pack))}.`
    },
    questions: {
      volts: draw => {
        const { name, nominal_V } = drawnChemistry(draw)
        const series = draw.int(2, 8)
        const value = series * nominal_V.value
        const cell = show.perCell(nominal_V.value)
        return {
          ask: say`A ${own(name)} cell has ${cell} nominal. How many volts does the label of a ${own(`${series}S`)} ${own(name)} pack give?`,
          wanted: say`volts, within ${show.percent(0.01)}`,
          why: say`Cells in series add their volts: ${count(series)} × ${cell} = ${show.voltage(value)}.`,
          quantity: 'voltage',
          value,
          tolerance: 0.01 * value,
        }
      },
      energy: draw => {
        const pack = drawnPack(draw)
        const { nominal_V, name } = pack.chemistry
        const value = labelEnergy_Wh(pack)
        const cell = show.perCell(nominal_V.value)
        return {
          ask: say`How many watt-hours does a ${own(`${pack.series}S`)} ${own(name)} pack of ${show.capacity(pack.capacity_Ah)} hold, at ${cell} nominal per cell?`,
          wanted: say`watt-hours, within ${show.percent(0.02)}`,
          why: say`Volts times amp-hours: ${count(pack.series)} × ${cell} × ${show.number(pack.capacity_Ah, 3)} Ah = ${show.energy(value)}.`,
          quantity: 'energy',
          value,
          tolerance: 0.02 * value,
        }
      },
      cells: draw => {
        const [series, parallel] = [draw.int(2, 8), draw.int(2, 4)]
        const value = series * parallel
        return {
          ask: say`How many cells are in a ${own(`${series}S${parallel}P`)} pack?`,
          wanted: say`a number`,
          why: say`${count(series)} in series, each of ${count(parallel)} in parallel: ${count(series)} × ${count(parallel)} = ${count(value)}.`,
          quantity: 'count',
          value,
          tolerance: 0,
        }
      },
    },
  }
})
