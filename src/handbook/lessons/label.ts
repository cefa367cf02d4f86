// Lesson: what the numbers on a pack mean.

import { lihv } from '../../charging/things/chemistries.ts'
import { labelEnergy_Wh } from '../../charging/upkeep/transport.ts'
import {
  readCount,
  readEnergy,
  readVoltage,
  writeCount,
  writeEnergy,
  writeVoltage,
} from '../../language/quantities/quantities.ts'
import { writePack } from '../../language/things/pack.ts'
import { askQuantity } from './asking.ts'
import { drawnChemistry, drawnPack, packOf } from './drawn.ts'
import type { Lesson } from './lesson.ts'

const example = packOf({ chemistry: lihv, series: 3, capacity_Ah: 0.72 })

export const label: Lesson = {
  key: 'label',
  title: 'What the numbers on a pack mean',
  concerns: { pack: { ...example, labelRate_C: 2 } },
  teach: () => [
    'S counts the cells in series, whose volts add up; P counts the cells in parallel, whose capacities add up. The mAh on a label are those of the whole pack.',
    'The volts on a label are nominal: cells in series times the nominal volts of one. A full pack has more, a flown one less.',
    'Watt-hours are nominal volts times amp-hours: what a pack holds, and what airlines count.',
    'The large C number beside the capacity is for discharge. Charge by the charge rate, where the label gives one.',
  ],
  example: ({ show }) => {
    const { nominal_V, full_V } = example.chemistry
    const volts = (cell_V: number) => show.voltage(cell_V * example.series)
    return `${writePack(example)}: ${example.series} × ${show.perCell(nominal_V.value)} = ${volts(nominal_V.value)} nominal, ${example.series} × ${show.perCell(full_V.value)} = ${volts(full_V.value)} full, and ${volts(nominal_V.value)} × ${show.number(example.capacity_Ah, 2)} Ah = ${show.energy(labelEnergy_Wh(example))}.`
  },
  questions: [
    {
      key: 'volts',
      draw: (draw, { show }) => {
        const { name, nominal_V } = drawnChemistry(draw)
        const series = draw.int(2, 8)
        const value = series * nominal_V.value
        return askQuantity({
          ask: `A ${name} cell has ${show.perCell(nominal_V.value)} nominal. How many volts does the label of a ${series}S ${name} pack give?`,
          value,
          tolerance: 0.01 * value,
          wanted: 'volts, within 1 %',
          read: readVoltage,
          write: writeVoltage,
          why: `Cells in series add their volts: ${series} × ${show.perCell(nominal_V.value)} = ${show.voltage(value)}.`,
        })
      },
    },
    {
      key: 'energy',
      draw: (draw, { show }) => {
        const pack = drawnPack(draw)
        const { nominal_V } = pack.chemistry
        const value = labelEnergy_Wh(pack)
        return askQuantity({
          ask: `How many watt-hours does a ${pack.series}S ${pack.chemistry.name} pack of ${show.capacity(pack.capacity_Ah)} hold, at ${show.perCell(nominal_V.value)} nominal per cell?`,
          value,
          tolerance: 0.02 * value,
          wanted: 'watt-hours, within 2 %',
          read: readEnergy,
          write: writeEnergy,
          why: `Volts times amp-hours: ${pack.series} × ${show.perCell(nominal_V.value)} × ${show.number(pack.capacity_Ah, 3)} Ah = ${show.energy(value)}.`,
        })
      },
    },
    {
      key: 'cells',
      draw: draw => {
        const [series, parallel] = [draw.int(2, 8), draw.int(2, 4)]
        return askQuantity({
          ask: `How many cells are in a ${series}S${parallel}P pack?`,
          value: series * parallel,
          tolerance: 0,
          wanted: 'a number',
          read: text => readCount(text.replace(/ ?cells?$/i, ''), { phrase: 'a number of cells' }),
          write: writeCount,
          why: `${series} in series, each of ${parallel} in parallel: ${series} × ${parallel} = ${series * parallel}.`,
        })
      },
    },
  ],
}
