// Lesson: storage.

import { lihv, liIon, lipo } from '../../charging/things/chemistries.ts'
import { storageVoltage_V } from '../../charging/things/level.ts'
import { storageMove, storageTolerance_V } from '../../charging/upkeep/storage.ts'
import { drawnPack, packOf } from '../teaching/drawn.ts'
import { lessonData } from '../teaching/lesson.ts'

const example = packOf({ chemistry: lipo, series: 4, capacity_Ah: 1.5 })
const ways = ['charge', 'discharge', 'stay'] as const
export type Way = (typeof ways)[number]

export const storage = lessonData({
  key: 'storage',
  teach: house => ({
    chemistry: example.chemistry,
    storage_V: storageVoltage_V(example.chemistry, house),
    near_V: storageTolerance_V.value,
  }),
  example: house => ({ ...storageMove(example, { kind: 'soc', soc: 1 }, house), pack: example }),
  questions: {
    volts: (draw, house) => {
      const pack = drawnPack(draw)
      const cell_V = storageVoltage_V(pack.chemistry, house)
      return {
        quantity: 'voltage' as const,
        value: pack.series * cell_V,
        tolerance: storageTolerance_V.value * pack.series,
        near_V: storageTolerance_V.value,
        pack,
        cell_V,
      }
    },
    way: (draw, house) => {
      const { chemistry, ...pack } = drawnPack(draw, draw.pick([lipo, lihv, liIon]))
      const storage_V = storageVoltage_V(chemistry, house)
      const off_V = draw.pick([-20, -12, -1, 0, 1, 12, 20, 30]) / 100
      const rest_V = Math.min(chemistry.full_V.value, Number((storage_V + off_V).toFixed(2)))
      const { way } = storageMove({ ...pack, chemistry }, { kind: 'rest', perCell_V: rest_V }, house)
      return { choices: draw.shuffled(ways), right: way, chemistry, storage_V, rest_V }
    },
  },
})
