// Lesson: the cutoff voltage and the chemistry.

import { chemistries, liFe, lihv, liIon, lipo } from '../../charging/things/chemistries.ts'
import type { Chemistry } from '../../charging/things/chemistry.ts'
import { fullVoltage_V } from '../../charging/things/level.ts'
import { drawnChemistry } from '../teaching/drawn.ts'
import { lessonData } from '../teaching/lesson.ts'

/** A setting that is too high, and the cells it would overcharge. */
type Mistake = readonly [set: Chemistry, cells: Chemistry]
const mistakes: readonly [Mistake, ...Mistake[]] = [
  [lihv, lipo],
  [lihv, liIon],
  [lipo, liFe],
  [lihv, liFe],
]

const twoDecimals = (value_V: number): number => Number(value_V.toFixed(2))

export const cutoff = lessonData({
  key: 'cutoff',
  teach: house => chemistries.map(chemistry => ({ chemistry, full_V: fullVoltage_V(chemistry, house) })),
  example: house => ({
    cells: lipo,
    set: lihv,
    series: 4,
    right_V: fullVoltage_V(lipo, house),
    wrong_V: fullVoltage_V(lihv, house),
  }),
  questions: {
    cell: (draw, house) => {
      const chemistry = drawnChemistry(draw)
      const right = twoDecimals(fullVoltage_V(chemistry, house))
      const others = chemistries.flatMap(({ full_V, gentleFull_V = full_V }) => [full_V, gentleFull_V])
      const volts = new Set([right, ...others.map(({ value }) => twoDecimals(value))])
      return { choices: [...volts].toSorted((a, b) => a - b), right, chemistry }
    },
    pack: (draw, house) => {
      const chemistry = drawnChemistry(draw)
      const full_V = fullVoltage_V(chemistry, house)
      const series = draw.int(2, 8)
      return {
        quantity: 'voltage' as const,
        value: series * full_V,
        tolerance: packTolerance_V,
        chemistry,
        series,
        full_V,
      }
    },
    wrong: (draw, house) => {
      const [set, cells] = draw.pick(mistakes)
      const set_V = set.full_V.value
      const full_V = fullVoltage_V(cells, house)
      return {
        quantity: 'voltage' as const,
        value: set_V - full_V,
        tolerance: cellTolerance_V,
        set,
        cells,
        set_V,
        full_V,
      }
    },
  },
})

export const packTolerance_V = 0.05
export const cellTolerance_V = 0.005
