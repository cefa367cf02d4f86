// Lesson: when to retire a pack, and how to dispose of it.

import { lipo } from '../../charging/things/chemistries.ts'
import { capacityLeft } from '../../charging/upkeep/age-signs.ts'
import type { ChargeNote } from '../../charging/upkeep/charge-note.ts'
import { judgeLog } from '../../charging/upkeep/pack-log.ts'
import type { Text } from '../../ground/text.ts'
import { writePack } from '../../language/things/pack.ts'
import { drawnPack, judged, packOf } from '../teaching/draw.ts'
import { lesson } from '../teaching/lesson.ts'

const example = packOf({ chemistry: lipo, series: 4, capacity_Ah: 1.5 })

/** Full cycles: three when the log began, three now. */
const cycles = (first_Ah: number, now_Ah: number): ChargeNote[] =>
  [first_Ah, first_Ah, first_Ah, now_Ah, now_Ah, now_Ah].map(charge_Ah => ({
    charge_Ah,
    from: { kind: 'soc', soc: 0 },
    to: { kind: 'soc', soc: 1 },
  }))

export const retire = lesson('retire', ({ say, show, own }, house) => {
  const conditions = {
    healthy: say`it is healthy: go on`,
    ageing: say`it is ageing: gentle use`,
    retire: say`retire it`,
  }
  const chargings = {
    usual: say`charge it as usual`,
    careful: say`charge it with care, and watch every cell`,
    gone: say`retire it`,
  }
  return {
    title: say`When to retire a pack, and how to dispose of it`,
    teach: [
      say`Retire a pack that is swollen, hurt or has grown hot, one with a cell that rested below ${show.perCell(lipo.damage_V.value)} (${own(lipo.name)}), and one that holds less than ${show.percent(capacityLeft.value.retire)} of what it did. Below ${show.percent(capacityLeft.value.ageing)} it is ageing. The shares are common practice.`,
      say`Three times the resistance of when it was new retires it as well; "log charge" and "log show" keep count of both for a pack that you have saved.`,
      say`Discharge a sound old pack with the charger, cover its plugs, and hand it in where batteries are taken back: never into the household rubbish, and never cut, pierced or burned.`,
      say`A pack that is hurt is not charged or discharged: outdoors with it, away from anything that burns, and ask the collection point how it wants it brought.`,
    ],
    example: () => {
      const first_Ah = example.capacity_Ah
      const now_Ah = 0.78 * first_Ah
      const { condition = 'healthy', capacity } = judgeLog(example, cycles(first_Ah, now_Ah))
      return say`A ${own(writePack(example))} took ${show.capacity(first_Ah)} from empty when new and takes ${show.capacity(now_Ah)} now: ${show.percent((capacity?.now_Ah ?? now_Ah) / first_Ah)}, so ${conditions[condition]}.`
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
        const right = conditions[condition]
        const { standing, source } = capacityLeft
        return {
          ask: say`A pack took ${show.capacity(capacity_Ah)} from empty to full when new, and takes ${show.capacity(now_Ah)} now. What does that say?`,
          choices: Object.values(conditions),
          right,
          why: say`${show.capacity(now_Ah)} ÷ ${show.capacity(capacity_Ah)} = ${show.percent(now_Ah / capacity_Ah)}: ${right} (${own(`${standing}: ${source}`)}).`,
        }
      },
      low: draw => {
        const pack = drawnPack(draw)
        const { damage_V, restFloor_V, name } = pack.chemistry
        const [low_V, floor_V] = [damage_V.value, restFloor_V.value]
        const [from_V, to_V] = draw.pick<readonly [number, number]>([
          [low_V - 0.8, low_V - 0.05],
          [low_V + 0.1, floor_V - 0.05],
          [floor_V + 0.02, floor_V + 0.2],
        ])
        const rest_V = draw.int(Math.ceil(from_V * 100), Math.floor(to_V * 100)) / 100
        const { found, permit } = judged({ act: 'charge', pack, from: { kind: 'rest', perCell_V: rest_V } }, house)
        const isLow = found.some(({ key }) => key === 'slowStart' || key === 'belowFloor')
        const right = permit ? (isLow ? 'careful' : 'usual') : 'gone'
        const [rests, floor, low] = [rest_V, floor_V, low_V].map(show.perCell) as [Text, Text, Text]
        const why = {
          gone: say`${rests} is below ${low}: such a cell may short and burn when it is charged.`,
          careful: say`${rests} is below the floor of ${floor} but not damaged: begin gently, and stop if a cell lags or grows warm.`,
          usual: say`${rests} is above the floor of ${floor}.`,
        }
        return {
          ask: say`The lowest cell of a ${own(name)} pack rests at ${rests}; cells of this kind are flown to ${floor} and count as damaged below ${low}. What do you do?`,
          choices: Object.values(chargings),
          right: chargings[right],
          why: why[right],
        }
      },
      dispose: draw => {
        const right = draw.pick([
          say`discharge it with the charger, cover its plugs, hand it in`,
          say`discharge it, tape the plugs, take it to where batteries are collected`,
        ])
        const wrong = draw.shuffled([
          say`cut the lead off and put it into the household rubbish`,
          say`pierce it outdoors, so that it is safe`,
          say`burn it in the open, far from people`,
          say`keep it full in the drawer, as a spare`,
          say`put it into the paper bin without its plug`,
        ])
        return {
          ask: say`A sound but worn-out pack is to go. What do you do with it?`,
          choices: draw.shuffled([right, ...wrong.slice(0, 3)]),
          right,
          why: say`An old pack still holds enough to burn: ${right}. The local rules say where.`,
        }
      },
    },
  }
})
