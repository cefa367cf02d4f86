// Lesson: where and how to charge, and what never to do.

import type { RuleKey } from '../../charging/envelope/judge.ts'
import type { Danger } from '../../charging/situation/dangers.ts'
import { lipo } from '../../charging/things/chemistries.ts'
import { labelEnergy_Wh } from '../../charging/upkeep/transport.ts'
import type { Draw } from '../teaching/draw.ts'
import { drawnCapacity_Ah, judged, packOf, settingOf } from '../teaching/drawn.ts'
import { lessonData } from '../teaching/lesson.ts'

const large = packOf({ chemistry: lipo, series: 6, capacity_Ah: 1.3 })
const coldExample_C = 5
const goodPlaces = ['concrete', 'stone', 'tray'] as const
const badPlaces = ['car seat', 'carpet', 'bed', 'fuel', 'case', 'roof', 'shopping'] as const
export type GoodPlace = (typeof goodPlaces)[number]
export type BadPlace = (typeof badPlaces)[number]
const doing = ['charge', 'wait', 'never'] as const
export type Doing = (typeof doing)[number]

/** What can be seen of a pack, and the danger that it tells. */
const marks = {
  swollen: 'swollen',
  punctured: 'pierced',
  dented: 'pierced',
  leaking: 'pierced',
} as const satisfies Readonly<Record<string, Danger>>
export type Mark = keyof typeof marks | 'sound'

/** What passes when the pack comes to the temperature of the room. */
const passing: readonly RuleKey[] = ['tooCold', 'tooHot']
const bands = lipo.temperatureBands.value
/** Where cells take a charge, and how fast in the cold. */
export const warmth = {
  from_C: Math.min(...bands.map(({ from_C }) => from_C)),
  to_C: Math.max(...bands.map(({ to_C }) => to_C)),
  cold: bands.slice(0, -1),
}

export const place = lessonData({
  key: 'place',
  teach: () => warmth,
  example: house => ({
    pack: large,
    energy_Wh: labelEnergy_Wh(large),
    cold_C: coldExample_C,
    cold: settingOf({ pack: large, temperature_C: coldExample_C }, house),
    warm: settingOf({ pack: large }, house),
  }),
  questions: {
    fit: (draw, house) => {
      const pack = drawnLipo(draw)
      const found = drawnFinding(draw)
      const { mark, temperature_C, rest_V } = found
      const from = { kind: 'rest' as const, perCell_V: rest_V }
      const dangers = mark === 'sound' ? [] : [marks[mark]]
      const judgement = judged({ act: 'charge', pack, from, temperature_C, dangers }, house)
      const refused = judgement.found.filter(({ weight }) => weight === 'refuse').map(({ key }) => key)
      const right: Doing =
        refused.length === 0 ? 'charge' : refused.every(key => passing.includes(key)) ? 'wait' : 'never'
      return { choices: draw.shuffled(doing), right, pack, ...found }
    },
    where: draw => {
      const right: GoodPlace | BadPlace = draw.pick(goodPlaces)
      const bad = draw.shuffled(badPlaces).slice(0, 3)
      return { choices: draw.shuffled([right, ...bad]), right }
    },
    cold: (draw, house) => {
      const pack = drawnLipo(draw)
      const temperature_C = draw.int(1, 9)
      const setting = settingOf({ pack, temperature_C }, house)
      if (!setting) throw new RangeError('a sound pack is refused in the cold')
      const { current_A, wantedRate_C, wanted_A } = setting
      return {
        quantity: 'current' as const,
        value: current_A,
        tolerance: Math.max(least_A, 0.03 * current_A),
        pack,
        temperature_C,
        wantedRate_C,
        wanted_A,
      }
    },
  },
})

/** So near an answer need only be, in A. */
export const least_A = 0.01
const drawnLipo = (draw: Draw) =>
  packOf({ chemistry: lipo, series: draw.int(2, 6), capacity_Ah: drawnCapacity_Ah(draw) })

interface Finding {
  readonly mark: Mark
  readonly temperature_C: number
  readonly rest_V: number
}

/** As often sound as hurt, and sometimes too cold or too hot. */
function drawnFinding(draw: Draw): Finding {
  const sound: Finding = { mark: 'sound', temperature_C: draw.int(12, 38), rest_V: 3.82 }
  switch (draw.int(0, 4)) {
    case 0:
      return { ...sound, mark: draw.pick(['swollen', 'punctured', 'dented', 'leaking']) }
    case 1:
      return { ...sound, rest_V: draw.int(120, 235) / 100 }
    case 2:
      return { ...sound, temperature_C: draw.pick([-8, -4, 50, 55, 60]) }
    default:
      return { ...sound, rest_V: draw.int(370, 410) / 100 }
  }
}
