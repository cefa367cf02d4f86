// Lesson: the C-rate, and the current to set.

import { lihv, liIon, lipo } from '../../charging/things/chemistries.ts'
import type { HouseLimits } from '../../charging/things/house-limits.ts'
import type { Pack } from '../../charging/things/pack.ts'
import { drawnCapacity_Ah, drawnPack, packOf, settingOf } from '../teaching/drawn.ts'
import { lessonData } from '../teaching/lesson.ts'

const exampleSteps_A = [0.5, 1, 2, 4] as const

/** A step of the charger, in A, or none of them. */
type Step = number | 'none'

export const cRate = lessonData({
  key: 'c-rate',
  teach: () => [lipo, liIon] as const,
  example: house => {
    const pack = packOf({ chemistry: lihv, series: 3, capacity_Ah: 0.72 })
    return { pack, steps_A: exampleSteps_A, setting: setOn(pack, exampleSteps_A, house) }
  },
  questions: {
    amps: draw => {
      const capacity_Ah = drawnCapacity_Ah(draw)
      const rate_C = draw.pick([0.5, 1, 1.5, 2])
      const value = rate_C * capacity_Ah
      return { quantity: 'current' as const, value, tolerance: 0.02 * value, capacity_Ah, rate_C }
    },
    rate: draw => {
      const capacity_Ah = drawnCapacity_Ah(draw)
      const current_A = Number((capacity_Ah * draw.pick([0.4, 0.5, 0.8, 1, 1.2, 1.5, 2, 3])).toFixed(2))
      const value = current_A / capacity_Ah
      return { quantity: 'rate' as const, value, tolerance: 0.03 * value, capacity_Ah, current_A }
    },
    step: (draw, house) => {
      const pack = drawnPack(draw)
      const steps_A: readonly number[] = draw.pick([
        [0.5, 1, 2, 4],
        [1, 2, 3, 5],
        [0.5, 1, 1.5, 3],
      ])
      const setting = setOn(pack, steps_A, house)
      const choices: readonly Step[] = [...steps_A, 'none']
      const right: Step = setting?.current_A ?? 'none'
      return { choices, right, pack, steps_A, setting }
    },
  },
})

const setOn = (pack: Pack, steps_A: readonly number[], house: HouseLimits) =>
  settingOf({ pack, charger: { currents: { kind: 'list', steps_A } } }, house)
