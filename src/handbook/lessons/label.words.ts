// What the lesson on the numbers of a pack says.

import { writePack } from '../../language/things/pack.ts'
import type { WordsOf } from '../teaching/lesson.ts'
import type { label } from './label.ts'

export const labelWords: WordsOf<typeof label> = ({ say, show, own }) => {
  const count = (value: number) => show.number(value, 0)
  return {
    title: say`What the numbers on a pack mean`,
    teach: () => [
      say`S counts the cells in series, whose volts add up; P counts the cells in parallel, whose capacities add up. The mAh on a label are those of the whole pack.`,
      say`The volts on a label are nominal: cells in series times the nominal volts of one. A full pack has more, a flown one less.`,
      say`Watt-hours are nominal volts times amp-hours: what a pack holds, and what airlines count.`,
      say`The large C number beside the capacity is for discharge. Charge by the charge rate, where the label gives one.`,
    ],
    example: ({ pack, energy_Wh }) => {
      const { nominal_V, full_V } = pack.chemistry
      const series = count(pack.series)
      const volts = (cell_V: number) => show.voltage(cell_V * pack.series)
      const nominal = volts(nominal_V.value)
      return say`${own(writePack(pack))}: ${series} × ${show.perCell(nominal_V.value)} = ${nominal} nominal, ${series} × ${show.perCell(full_V.value)} = ${volts(full_V.value)} full, and ${nominal} × ${show.number(pack.capacity_Ah, 2)} Ah = ${show.energy(energy_Wh)}.`
    },
    questions: {
      volts: ({ chemistry, series, value }) => {
        const cell = show.perCell(chemistry.nominal_V.value)
        const name = own(chemistry.name)
        return {
          ask: say`A ${name} cell has ${cell} nominal. How many volts does the label of a ${own(`${series}S`)} ${name} pack give?`,
          wanted: say`volts, within ${show.percent(0.01)}`,
          why: say`Cells in series add their volts: ${count(series)} × ${cell} = ${show.voltage(value)}.`,
        }
      },
      energy: ({ pack, value }) => {
        const { nominal_V, name } = pack.chemistry
        const cell = show.perCell(nominal_V.value)
        return {
          ask: say`How many watt-hours does a ${own(`${pack.series}S`)} ${own(name)} pack of ${show.capacity(pack.capacity_Ah)} hold, at ${cell} nominal per cell?`,
          wanted: say`watt-hours, within ${show.percent(0.02)}`,
          why: say`Volts times amp-hours: ${count(pack.series)} × ${cell} × ${show.number(pack.capacity_Ah, 3)} Ah = ${show.energy(value)}.`,
        }
      },
      cells: ({ series, parallel, value }) => ({
        ask: say`How many cells are in a ${own(`${series}S${parallel}P`)} pack?`,
        wanted: say`a number`,
        why: say`${count(series)} in series, each of ${count(parallel)} in parallel: ${count(series)} × ${count(parallel)} = ${count(value)}.`,
      }),
    },
  }
}
