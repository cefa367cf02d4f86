// Lesson: the cutoff voltage and the chemistry.

import { fullVoltage_V } from '../../charging/setting/cutoff.ts'
import { chemistries } from '../../charging/things/chemistries.ts'
import type { ChemistryName } from '../../charging/things/chemistry.ts'
import { readVoltage, writeVoltage } from '../../language/quantities/quantities.ts'
import { askChoice, askQuantity } from './asking.ts'
import { drawnChemistry, packOf } from './drawn.ts'
import type { Lesson, Telling } from './lesson.ts'

const full_V = (name: ChemistryName, house: Telling['house']): number =>
  fullVoltage_V(chemistries[name], house)

const names = Object.keys(chemistries) as ChemistryName[]

/** A setting that is too high, and the cells it would overcharge. */
type Mistake = readonly [set: ChemistryName, cells: ChemistryName]
const mistakes: readonly [Mistake, ...Mistake[]] = [
  ['LiHV', 'LiPo'],
  ['LiHV', 'Li-ion'],
  ['LiPo', 'LiFe'],
  ['LiHV', 'LiFe'],
]

export const cutoff: Lesson = {
  key: 'cutoff',
  title: 'The cutoff voltage and the chemistry',
  concerns: { pack: packOf({ chemistry: 'LiHV', series: 3, capacity_Ah: 0.72 }) },
  teach: ({ house, show }) => [
    `The charger must know the chemistry, because it decides where to stop: ${names.map(name => `${name} at ${show.perCell(full_V(name, house))}`).join(', ')} per cell.`,
    'It must know the cell count too. Compare what it shows with the label before every charge.',
    'A cutoff above full overcharges the cells: they swell, and they may burn, hours later too. A cutoff below full only leaves the pack less full.',
    'The charger holds the cutoff until the current has fallen to a small part: only then is the pack full.',
  ],
  example: ({ house, show }) => {
    const [right_V, wrong_V] = [full_V('LiPo', house), full_V('LiHV', house)]
    return `4S LiPo: 4 × ${show.perCell(right_V)} = ${show.voltage(4 * right_V)}. With the LiHV setting it would be driven to ${show.voltage(4 * wrong_V)}, ${show.perCell(wrong_V - right_V)} too much in every cell.`
  },
  questions: [
    {
      key: 'cell',
      draw: (draw, { house, show }) => {
        const name = drawnChemistry(draw)
        const right = show.perCell(full_V(name, house))
        const gentle_V = chemistries['Li-ion'].gentleFull_V?.value
        const volts = new Set([
          right,
          ...names.map(other => show.perCell(chemistries[other].full_V.value)),
          ...(gentle_V === undefined ? [] : [show.perCell(gentle_V)]),
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
        const name = drawnChemistry(draw)
        const series = draw.int(2, 8)
        const value = series * full_V(name, house)
        return askQuantity({
          ask: `At how many volts is a ${series}S ${name} pack full here?`,
          value,
          tolerance: 0.05,
          wanted: 'volts of the pack, within 0.05 V',
          read: readVoltage,
          write: writeVoltage,
          why: `${series} × ${show.perCell(full_V(name, house))} = ${show.voltage(value)}.`,
        })
      },
    },
    {
      key: 'wrong',
      draw: (draw, { house, show }) => {
        const [set, name] = draw.pick(mistakes)
        const set_V = chemistries[set].full_V.value
        const value = set_V - full_V(name, house)
        return askQuantity({
          ask: `Somebody charges a ${name} pack with the charger set to ${set}, which stops at ${show.perCell(set_V)}. How many volts above full would each cell be driven?`,
          value,
          tolerance: 0.005,
          wanted: 'volts of one cell, within 0.005 V',
          read: readVoltage,
          write: writeVoltage,
          why: `${show.perCell(set_V)} − ${show.perCell(full_V(name, house))} = ${show.perCell(value)}. Stop such a charge at once, take the pack outdoors and keep away from it.`,
        })
      },
    },
  ],
}
