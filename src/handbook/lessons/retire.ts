// Lesson: when to retire a pack, and how to dispose of it.

import { adviseSetting } from '../../charging/setting/old-setting.ts'
import { lipo } from '../../charging/things/chemistries.ts'
import { type Condition, capacityLeft } from '../../charging/upkeep/age-signs.ts'
import type { ChargeNote } from '../../charging/upkeep/charge-note.ts'
import { judgeLog } from '../../charging/upkeep/pack-log.ts'
import { writePack } from '../../language/things/pack.ts'
import { askChoice } from './asking.ts'
import { drawnPack, packOf } from './drawn.ts'
import type { Lesson } from './lesson.ts'

const doing: Record<Condition, string> = {
  healthy: 'it is healthy: go on',
  ageing: 'it is ageing: gentle use',
  retire: 'retire it',
}

const example = packOf({ chemistry: lipo, series: 4, capacity_Ah: 1.5 })

/** Full cycles: three when the log began, three now. */
const cycles = (first_Ah: number, now_Ah: number): ChargeNote[] =>
  [first_Ah, first_Ah, first_Ah, now_Ah, now_Ah, now_Ah].map(charge_Ah => ({
    charge_Ah,
    from: { kind: 'soc', soc: 0 },
    to: { kind: 'soc', soc: 1 },
  }))

export const retire: Lesson = {
  key: 'retire',
  title: 'When to retire a pack, and how to dispose of it',
  concerns: { refusal: 'damaged cell' },
  teach: ({ show }) => {
    const { ageing, retire: least } = capacityLeft.value
    const { damage_V } = lipo
    return [
      `Retire a pack that is swollen, hurt or has grown hot, one with a cell that rested below ${show.perCell(damage_V.value)} (LiPo), and one that holds less than ${show.percent(least)} of what it did. Below ${show.percent(ageing)} it is ageing. The shares are common practice.`,
      'Three times the resistance of when it was new retires it as well; "log charge" and "log show" keep count of both for a pack that you have saved.',
      'Discharge a sound old pack with the charger, cover its plugs, and hand it in where batteries are taken back: never into the household rubbish, and never cut, pierced or burned.',
      'A pack that is hurt is not charged or discharged: outdoors with it, away from anything that burns, and ask the collection point how it wants it brought.',
    ]
  },
  example: ({ show }) => {
    const now_Ah = 0.78 * example.capacity_Ah
    const { condition = 'healthy', capacity } = judgeLog(example, cycles(example.capacity_Ah, now_Ah))
    return `A ${writePack(example)} took ${show.capacity(example.capacity_Ah)} from empty when new and takes ${show.capacity(now_Ah)} now: ${show.percent((capacity?.now_Ah ?? now_Ah) / example.capacity_Ah)}, so ${doing[condition]}.`
  },
  questions: [
    {
      key: 'capacity',
      draw: (draw, { show }) => {
        const { capacity_Ah } = drawnPack(draw)
        // Clear of the thresholds, so that no answer hangs on a rounding.
        const share = draw.pick([
          [60, 77],
          [82, 88],
          [92, 100],
        ])
        const now_Ah = (capacity_Ah * draw.int(share[0] as number, share[1] as number)) / 100
        const pack = { ...example, capacity_Ah }
        const { condition = 'healthy' } = judgeLog(pack, cycles(capacity_Ah, now_Ah))
        return askChoice(
          draw,
          {
            ask: `A pack took ${show.capacity(capacity_Ah)} from empty to full when new, and takes ${show.capacity(now_Ah)} now. What does that say?`,
            choices: [doing.healthy, doing.ageing, doing.retire],
            right: doing[condition],
            why: `${show.capacity(now_Ah)} ÷ ${show.capacity(capacity_Ah)} = ${show.percent(now_Ah / capacity_Ah)}: ${doing[condition]} (${capacityLeft.standing}: ${capacityLeft.source}).`,
          },
          true,
        )
      },
    },
    {
      key: 'low',
      draw: (draw, { house, show }) => {
        const pack = drawnPack(draw)
        const { damage_V, restFloor_V } = pack.chemistry
        const [from_V, to_V] = draw.pick([
          [damage_V.value - 0.8, damage_V.value - 0.05],
          [damage_V.value + 0.1, restFloor_V.value - 0.05],
          [restFloor_V.value + 0.02, restFloor_V.value + 0.2],
        ])
        const rest_V = draw.int(Math.ceil((from_V as number) * 100), Math.floor((to_V as number) * 100)) / 100
        const setting = adviseSetting({ pack, restPerCell_V: rest_V, limits: house })
        const [usual, careful, gone] = [
          'charge it as usual',
          'charge it with care, and watch every cell',
          'retire it',
        ] as const
        const right = 'refusal' in setting ? gone : setting.cares.length > 0 ? careful : usual
        return askChoice(
          draw,
          {
            ask: `The lowest cell of a ${pack.chemistry.name} pack rests at ${show.perCell(rest_V)}; cells of this kind are flown to ${show.perCell(restFloor_V.value)} and count as damaged below ${show.perCell(damage_V.value)}. What do you do?`,
            choices: [usual, careful, gone],
            right,
            why:
              right === gone
                ? `${show.perCell(rest_V)} is below ${show.perCell(damage_V.value)}: such a cell may short and burn when it is charged.`
                : right === careful
                  ? `${show.perCell(rest_V)} is below the floor of ${show.perCell(restFloor_V.value)} but not damaged: begin gently, and stop if a cell lags or grows warm.`
                  : `${show.perCell(rest_V)} is above the floor of ${show.perCell(restFloor_V.value)}.`,
          },
          true,
        )
      },
    },
    {
      key: 'dispose',
      draw: draw => {
        const right = draw.pick([
          'discharge it with the charger, cover its plugs, hand it in',
          'discharge it, tape the plugs, take it to where batteries are collected',
        ])
        const [one, two, three] = draw.shuffled([
          'cut the lead off and put it into the household rubbish',
          'pierce it outdoors, so that it is safe',
          'burn it in the open, far from people',
          'keep it full in the drawer, as a spare',
          'put it into the paper bin without its plug',
        ])
        return askChoice(draw, {
          ask: 'A sound but worn-out pack is to go. What do you do with it?',
          choices: [right, one as string, two as string, three as string],
          right,
          why: `An old pack still holds enough to burn: ${right}. The local rules say where.`,
        })
      },
    },
  ],
}
