// Lesson: what feeds the charger, and where to stop.

import { planSource } from '../../charging/sources/source-plan.ts'
import { sourceFloor_V } from '../../charging/things/battery-store.ts'
import { lihv, liIon } from '../../charging/things/chemistries.ts'
import { fullVoltage_V } from '../../charging/things/level.ts'
import { chargerEfficiency, fuseShare } from '../../charging/things/practice.ts'
import { drawnChemistry, judged, packOf } from '../teaching/drawn.ts'
import { lessonData } from '../teaching/lesson.ts'

const battery = packOf({ chemistry: liIon, series: 4, capacity_Ah: 5 })
const flown = packOf({ chemistry: lihv, series: 3, capacity_Ah: 0.72 })

export const sources = lessonData({
  key: 'sources',
  teach: () => ({ efficiency: chargerEfficiency.value, fuseShare: fuseShare.value }),
  example: house => {
    const { permit } = judged(
      {
        act: 'charge',
        pack: flown,
        from: { kind: 'named', name: 'empty' },
        source: { kind: 'battery', pack: battery },
      },
      house,
    )
    const floor_V = sourceFloor_V(battery, house)
    return { battery, flown, floor_V, charges: permit && planSource(permit).planned }
  },
  questions: {
    floor: (draw, house) => {
      const pack = packOf({ chemistry: drawnChemistry(draw), series: draw.int(3, 6), capacity_Ah: 5 })
      const value = sourceFloor_V(pack, house)
      return { quantity: 'voltage' as const, value, tolerance: floorTolerance_V, pack, cell_V: value / pack.series }
    },
    input: (draw, house) => {
      const chemistry = drawnChemistry(draw)
      const series = draw.int(2, 4)
      const current_A = draw.pick([1, 2, 3])
      const supply_V = draw.pick([12, 13.8, 20, 24])
      const efficiency = chargerEfficiency.value
      const full_V = series * fullVoltage_V(chemistry, house)
      const input_W = (current_A * full_V) / efficiency
      const value = input_W / supply_V
      return {
        quantity: 'current' as const,
        value,
        tolerance: 0.03 * value,
        chemistry,
        series,
        current_A,
        supply_V,
        efficiency,
        full_V,
        input_W,
      }
    },
  },
})

export const floorTolerance_V = 0.05
