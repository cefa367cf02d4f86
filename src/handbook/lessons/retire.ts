// Lesson: when to retire a pack, and how to dispose of it.

import { lipo } from '../../charging/things/chemistries.ts'
import { type Condition, capacityLeft } from '../../charging/upkeep/age-signs.ts'
import type { ChargeNote } from '../../charging/upkeep/charge-note.ts'
import { judgeLog } from '../../charging/upkeep/pack-log.ts'
import { drawnPack, judged, packOf } from '../teaching/drawn.ts'
import { lessonData } from '../teaching/lesson.ts'

const example = packOf({ chemistry: lipo, series: 4, capacity_Ah: 1.5 })

/** Full cycles: three when the log began, three now. */
const cycles = (first_Ah: number, now_Ah: number): ChargeNote[] =>
  [first_Ah, first_Ah, first_Ah, now_Ah, now_Ah, now_Ah].map(charge_Ah => ({
    charge_Ah,
    from: { kind: 'soc', soc: 0 },
    to: { kind: 'soc', soc: 1 },
  }))

const conditions: readonly Condition[] = ['healthy', 'ageing', 'retire']
const chargings = ['usual', 'careful', 'gone'] as const
export type Charging = (typeof chargings)[number]
const goodWays = ['hand in', 'tape'] as const
const badWays = ['rubbish', 'pierce', 'burn', 'spare', 'paper bin'] as const
export type GoodWay = (typeof goodWays)[number]
export type BadWay = (typeof badWays)[number]

export const retire = lessonData({
  key: 'retire',
  teach: () => ({ chemistry: lipo, damage_V: lipo.damage_V.value, ...capacityLeft.value }),
  example: () => {
    const first_Ah = example.capacity_Ah
    const now_Ah = 0.78 * first_Ah
    const { condition = 'healthy', capacity } = judgeLog(example, cycles(first_Ah, now_Ah))
    return { pack: example, first_Ah, now_Ah, left: (capacity?.now_Ah ?? now_Ah) / first_Ah, condition }
  },
  questions: {
    capacity: draw => {
      const { capacity_Ah } = drawnPack(draw)
      // Clear of the thresholds, so that no answer hangs on a rounding.
      const [least, most] = draw.pick<readonly [number, number]>([
        [60, 77],
        [82, 88],
        [92, 100],
      ])
      const now_Ah = (capacity_Ah * draw.int(least, most)) / 100
      const { condition = 'healthy' } = judgeLog({ ...example, capacity_Ah }, cycles(capacity_Ah, now_Ah))
      return { choices: conditions, right: condition, first_Ah: capacity_Ah, now_Ah, from: capacityLeft }
    },
    low: (draw, house) => {
      const pack = drawnPack(draw)
      const [damage_V, floor_V] = [pack.chemistry.damage_V.value, pack.chemistry.restFloor_V.value]
      const [from_V, to_V] = draw.pick<readonly [number, number]>([
        [damage_V - 0.8, damage_V - 0.05],
        [damage_V + 0.1, floor_V - 0.05],
        [floor_V + 0.02, floor_V + 0.2],
      ])
      const rest_V = draw.int(Math.ceil(from_V * 100), Math.floor(to_V * 100)) / 100
      const { found, permit } = judged({ act: 'charge', pack, from: { kind: 'rest', perCell_V: rest_V } }, house)
      const isLow = found.some(({ key }) => key === 'slowStart' || key === 'belowFloor')
      const right: Charging = permit ? (isLow ? 'careful' : 'usual') : 'gone'
      return { choices: chargings, right, chemistry: pack.chemistry, rest_V, damage_V, floor_V }
    },
    dispose: draw => {
      const right: GoodWay | BadWay = draw.pick(goodWays)
      const bad = draw.shuffled(badWays).slice(0, 3)
      return { choices: draw.shuffled([right, ...bad]), right }
    },
  },
})
