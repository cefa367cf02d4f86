// What the lesson on the cutoff voltage says.

import { joined } from '../../ground/text.ts'
import type { WordsOf } from '../teaching/lesson.ts'
import { cellTolerance_V, type cutoff, packTolerance_V } from './cutoff.ts'

export const cutoffWords: WordsOf<typeof cutoff> = ({ say, show, own }) => ({
  title: say`The cutoff voltage and the chemistry`,
  teach: fulls => [
    say`The charger must know the chemistry, because it decides where to stop: ${joined(
      fulls.map(({ chemistry, full_V }) => say`${own(chemistry.name)} at ${show.perCell(full_V)}`),
      ', ',
    )} per cell.`,
    say`It must know the cell count too. Compare what it shows with the label before every charge.`,
    say`A cutoff above full overcharges the cells: they swell, and they may burn, hours later too. A cutoff below full only leaves the pack less full.`,
    say`The charger holds the cutoff until the current has fallen to a small part: only then is the pack full.`,
  ],
  example: ({ cells, set, series, right_V, wrong_V }) =>
    say`${own(`${series}S`)} ${own(cells.name)}: ${show.number(series, 0)} × ${show.perCell(right_V)} = ${show.voltage(series * right_V)}. With the ${own(set.name)} setting it would be driven to ${show.voltage(series * wrong_V)}, ${show.perCell(wrong_V - right_V)} too much in every cell.`,
  questions: {
    cell: ({ chemistry, right }) => ({
      ask: say`To how many volts per cell is ${own(chemistry.name)} charged here?`,
      choice: show.perCell,
      why: say`${own(chemistry.name)} is full at ${show.perCell(right)} per cell here.`,
    }),
    pack: ({ chemistry, series, full_V, value }) => ({
      ask: say`At how many volts is a ${own(`${series}S`)} ${own(chemistry.name)} pack full here?`,
      wanted: say`volts of the pack, within ${show.voltage(packTolerance_V)}`,
      why: say`${show.number(series, 0)} × ${show.perCell(full_V)} = ${show.voltage(value)}.`,
    }),
    wrong: ({ set, cells, set_V, full_V, value }) => ({
      ask: say`Somebody charges a ${own(cells.name)} pack with the charger set to ${own(set.name)}, which stops at ${show.perCell(set_V)}. How many volts above full would each cell be driven?`,
      wanted: say`volts of one cell, within ${show.number(cellTolerance_V, 3)} V`,
      why: say`${show.perCell(set_V)} − ${show.perCell(full_V)} = ${show.perCell(value)}. Stop such a charge at once, take the pack outdoors and keep away from it.`,
    }),
  },
})
