// Lesson: what the numbers on a pack mean.

import { lihv } from '../../charging/things/chemistries.ts'
import { labelEnergy_Wh } from '../../charging/upkeep/transport.ts'
import { drawnChemistry, drawnPack, packOf } from '../teaching/drawn.ts'
import { lessonData } from '../teaching/lesson.ts'

export const label = lessonData({
  key: 'label',
  teach: () => undefined,
  example: () => {
    const pack = packOf({ chemistry: lihv, series: 3, capacity_Ah: 0.72 })
    return { pack, energy_Wh: labelEnergy_Wh(pack) }
  },
  questions: {
    volts: draw => {
      const chemistry = drawnChemistry(draw)
      const series = draw.int(2, 8)
      const value = series * chemistry.nominal_V.value
      return { quantity: 'voltage' as const, value, tolerance: 0.01 * value, chemistry, series }
    },
    energy: draw => {
      const pack = drawnPack(draw)
      const value = labelEnergy_Wh(pack)
      return { quantity: 'energy' as const, value, tolerance: 0.02 * value, pack }
    },
    cells: draw => {
      const [series, parallel] = [draw.int(2, 8), draw.int(2, 4)]
      return { quantity: 'count' as const, value: series * parallel, tolerance: 0, series, parallel }
    },
  },
})
