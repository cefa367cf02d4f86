// Lesson: the cutoff voltage and the chemistry.

import { chemistries, liFe, lihv, liIon, lipo } from '../../charging/things/chemistries.ts'
import type { Chemistry } from '../../charging/things/chemistry.ts'
import { fullVoltage_V } from '../../charging/things/level.ts'
import { joined } from '../../ground/text.ts'
import { drawnChemistry } from '../teaching/draw.ts'
import { lesson } from '../teaching/lesson.ts'

/** A setting that is too high, and the cells it would overcharge. */
type Mistake = readonly [set: Chemistry, cells: Chemistry]
const mistakes: readonly [Mistake, ...Mistake[]] = [
  [lihv, lipo],
  [lihv, liIon],
  [lipo, liFe],
  [lihv, liFe],
]

const packTolerance_V = 0.05
const cellTolerance_V = 0.005
const twoDecimals = (value_V: number): number => Number(value_V.toFixed(2))

export const cutoff = lesson('cutoff', ({ say, show, own }, house) => {
  const fullOf_V = (chemistry: Chemistry) => fullVoltage_V(chemistry, house)
  return {
    title: say`The cutoff voltage and the chemistry`,
    teach: [
      say`The charger must know the chemistry, because it decides where to stop: ${joined(
        chemistries.map(one => say`${own(one.name)} at ${show.perCell(fullOf_V(one))}`),
        ', ',
      )} per cell.`,
      say`It must know the cell count too. Compare what it shows with the label before every charge.`,
      say`A cutoff above full overcharges the cells: they swell, and they may burn, hours later too. A cutoff below full only leaves the pack less full.`,
      say`The charger holds the cutoff until the current has fallen to a small part: only then is the pack full.`,
    ],
    example: () => {
      const [series, right_V, wrong_V] = [4, fullOf_V(lipo), fullOf_V(lihv)]
      return say`${own(`${series}S`)} ${own(lipo.name)}: ${show.number(series, 0)} × ${show.perCell(right_V)} = ${show.voltage(series * right_V)}. With the ${own(lihv.name)} setting it would be driven to ${show.voltage(series * wrong_V)}, ${show.perCell(wrong_V - right_V)} too much in every cell.`
    },
    questions: {
      cell: draw => {
        const chemistry = drawnChemistry(draw)
        const right = twoDecimals(fullOf_V(chemistry))
        const others = chemistries.flatMap(({ full_V, gentleFull_V = full_V }) => [full_V, gentleFull_V])
        const volts = new Set([right, ...others.map(({ value }) => twoDecimals(value))])
        return {
          ask: say`To how many volts per cell is ${own(chemistry.name)} charged here?`,
          choices: [...volts].toSorted((a, b) => a - b).map(show.perCell),
          right: show.perCell(right),
          why: say`${own(chemistry.name)} is full at ${show.perCell(right)} per cell here.`,
        }
      },
      pack: draw => {
        const chemistry = drawnChemistry(draw)
        const full_V = fullOf_V(chemistry)
        const series = draw.int(2, 8)
        const value = series * full_V
        return {
          ask: say`At how many volts is a ${own(`${series}S`)} ${own(chemistry.name)} pack full here?`,
          wanted: say`volts of the pack, within ${show.voltage(packTolerance_V)}`,
          why: say`${show.number(series, 0)} × ${show.perCell(full_V)} = ${show.voltage(value)}.`,
          quantity: 'voltage',
          value,
          tolerance: packTolerance_V,
        }
      },
      wrong: draw => {
        const [set, cells] = draw.pick(mistakes)
        const [set_V, full_V] = [set.full_V.value, fullOf_V(cells)]
        const value = set_V - full_V
        return {
          ask: say`Somebody charges a ${own(cells.name)} pack with the charger set to ${own(set.name)}, which stops at ${show.perCell(set_V)}. How many volts above full would each cell be driven?`,
          wanted: say`volts of one cell, within ${show.number(cellTolerance_V, 3)} V`,
          why: say`${show.perCell(set_V)} − ${show.perCell(full_V)} = ${show.perCell(value)}. Stop such a charge at once, take the pack outdoors and keep away from it.`,
          quantity: 'voltage',
          value,
          tolerance: cellTolerance_V,
        }
      },
    },
  }
})
