// Lesson: the cutoff voltage and the chemistry.

import { fullVoltage_V } from '../../charging/setting/old-cutoff.ts'
import { chemistries, liFe, lihv, liIon, lipo } from '../../charging/things/chemistries.ts'
import type { Chemistry } from '../../charging/things/chemistry.ts'
import { readVoltage, writeVoltage } from '../../language/quantities/quantities.ts'
import { askChoice, askQuantity } from './asking.ts'
import { drawnChemistry, packOf } from './drawn.ts'
import type { Lesson } from './lesson.ts'

/** A setting that is too high, and the cells it would overcharge. */
type Mistake = readonly [set: Chemistry, cells: Chemistry]
const mistakes: readonly [Mistake, ...Mistake[]] = [
  [lihv, lipo],
  [lihv, liIon],
  [lipo, liFe],
  [lihv, liFe],
]

export const cutoff: Lesson = {
  key: 'cutoff',
  title: 'The cutoff voltage and the chemistry',
  concerns: { pack: packOf({ chemistry: lihv, series: 3, capacity_Ah: 0.72 }) },
  teach: ({ house, show }) => [
    `The charger must know the chemistry, because it decides where to stop: ${chemistries.map(chemistry => `${chemistry.name} at ${show.perCell(fullVoltage_V(chemistry, house))}`).join(', ')} per cell.`,
    'It must know the cell count too. Compare what it shows with the label before every charge.',
    'A cutoff above full overcharges the cells: they swell, and they may burn, hours later too. A cutoff below full only leaves the pack less full.',
    'The charger holds the cutoff until the current has fallen to a small part: only then is the pack full.',
  ],
  example: ({ house, show }) => {
    const [right_V, wrong_V] = [fullVoltage_V(lipo, house), fullVoltage_V(lihv, house)]
    return `4S LiPo: 4 × ${show.perCell(right_V)} = ${show.voltage(4 * right_V)}. With the LiHV setting it would be driven to ${show.voltage(4 * wrong_V)}, ${show.perCell(wrong_V - right_V)} too much in every cell.`
  },
  questions: [
    {
      key: 'cell',
      draw: (draw, { house, show }) => {
        const chemistry = drawnChemistry(draw)
        const { name } = chemistry
        const right = show.perCell(fullVoltage_V(chemistry, house))
        const volts = new Set([
          right,
          ...chemistries.flatMap(({ full_V, gentleFull_V = full_V }) => [
            show.perCell(full_V.value),
            show.perCell(gentleFull_V.value),
          ]),
        ])
        const [first, second, ...others] = [...volts].sort()
        return askChoice(
          draw,
          {
            ask: `To how many volts per cell is ${name} charged here?`,
            choices: [first as string, second as string, ...others],
            right,
            why: `${name} is full at ${right} per cell here.`,
          },
          true,
        )
      },
    },
    {
      key: 'pack',
      draw: (draw, { house, show }) => {
        const chemistry = drawnChemistry(draw)
        const { name } = chemistry
        const full_V = fullVoltage_V(chemistry, house)
        const series = draw.int(2, 8)
        const value = series * full_V
        return askQuantity({
          ask: `At how many volts is a ${series}S ${name} pack full here?`,
          value,
          tolerance: 0.05,
          wanted: 'volts of the pack, within 0.05 V',
          read: readVoltage,
          write: writeVoltage,
          why: `${series} × ${show.perCell(full_V)} = ${show.voltage(value)}.`,
        })
      },
    },
    {
      key: 'wrong',
      draw: (draw, { house, show }) => {
        const [set, cells] = draw.pick(mistakes)
        const set_V = set.full_V.value
        const full_V = fullVoltage_V(cells, house)
        const value = set_V - full_V
        return askQuantity({
          ask: `Somebody charges a ${cells.name} pack with the charger set to ${set.name}, which stops at ${show.perCell(set_V)}. How many volts above full would each cell be driven?`,
          value,
          tolerance: 0.005,
          wanted: 'volts of one cell, within 0.005 V',
          read: readVoltage,
          write: writeVoltage,
          why: `${show.perCell(set_V)} − ${show.perCell(full_V)} = ${show.perCell(value)}. Stop such a charge at once, take the pack outdoors and keep away from it.`,
        })
      },
    },
  ],
}
