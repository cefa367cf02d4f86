// Lesson: the C-rate, and the current to set.

import { adviseSetting } from '../../charging/setting/old-setting.ts'
import { lihv, liIon, lipo } from '../../charging/things/chemistries.ts'
import type { Chemistry } from '../../charging/things/chemistry.ts'
import { readCurrent, readRate, writeCurrent, writeRate } from '../../language/quantities/quantities.ts'
import { writePack } from '../../language/things/pack.ts'
import { askChoice, askQuantity } from './asking.ts'
import { drawnCapacity_Ah, drawnPack, packOf } from './drawn.ts'
import type { Lesson, Telling } from './lesson.ts'

const example = packOf({ chemistry: lihv, series: 3, capacity_Ah: 0.72 })
const steps_A = [0.5, 1, 2, 4] as const
const noStep = 'none of them: another charger'

export const cRate: Lesson = {
  key: 'c-rate',
  title: 'The C-rate, and the current to set',
  concerns: { pack: example },
  teach: ({ show }) => [
    `1C is the current that would move the whole capacity in an hour: the amp-hours of the pack, read as amps. Most ${rateWords(lipo, show)}, most ${rateWords(liIon, show)}, unless the label says otherwise.`,
    'Charge slower and it takes longer, nothing worse. Charge faster than the label or the cells allow and the pack heats, swells and may burn.',
    'A charger with fixed steps is set to the step nearest to the wanted current that no limit forbids. Where even the smallest step is too much, use another charger.',
    'A charge at 1C takes longer than an hour: near its end the charger holds the voltage and the current falls.',
  ],
  example: ({ house, show }) => {
    const setting = setOn(example, steps_A, house)
    const wanted = `${writePack(example)} on a charger with ${steps_A.map(show.current).join(', ')}`
    if ('refusal' in setting) return `${wanted}: ${noStep}.`
    return `${wanted}: ${show.rate(setting.wantedRate_C)} × ${show.number(example.capacity_Ah, 2)} Ah = ${show.current(setting.wanted_A)} wanted, ${show.current(setting.current_A)} set, which is ${show.rate(setting.rate_C)}.`
  },
  questions: [
    {
      key: 'amps',
      draw: (draw, { show }) => {
        const capacity_Ah = drawnCapacity_Ah(draw)
        const rate_C = draw.pick([0.5, 1, 1.5, 2])
        const value = rate_C * capacity_Ah
        return askQuantity({
          ask: `How many amps are ${show.rate(rate_C)} on a pack of ${show.capacity(capacity_Ah)}?`,
          value,
          tolerance: 0.02 * value,
          wanted: 'amps, within 2 %',
          read: readCurrent,
          write: writeCurrent,
          why: `The rate times the amp-hours: ${show.number(rate_C, 1)} × ${show.number(capacity_Ah, 3)} Ah = ${show.current(value)}.`,
        })
      },
    },
    {
      key: 'rate',
      draw: (draw, { show }) => {
        const capacity_Ah = drawnCapacity_Ah(draw)
        const current_A = Number((capacity_Ah * draw.pick([0.4, 0.5, 0.8, 1, 1.2, 1.5, 2, 3])).toFixed(2))
        const value = current_A / capacity_Ah
        return askQuantity({
          ask: `A pack of ${show.capacity(capacity_Ah)} is charged with ${show.current(current_A)}. What C-rate is that?`,
          value,
          tolerance: 0.03 * value,
          wanted: 'a C-rate such as 0.5C, within 3 %',
          read: readRate,
          write: writeRate,
          why: `Amps over amp-hours: ${show.number(current_A, 2)} A ÷ ${show.number(capacity_Ah, 3)} Ah = ${show.rate(value)}.`,
        })
      },
    },
    {
      key: 'step',
      draw: (draw, { house, show }) => {
        const pack = drawnPack(draw)
        const steps = draw.pick([
          [0.5, 1, 2, 4],
          [1, 2, 3, 5],
          [0.5, 1, 1.5, 3],
        ])
        const setting = setOn(pack, steps, house)
        const right = 'refusal' in setting ? noStep : show.current(setting.current_A)
        const [first, second, ...others] = [...steps.map(show.current), noStep]
        return askChoice(
          draw,
          {
            ask: `Which step do you set for a ${writePack(pack)} at the recommended rate?`,
            choices: [first as string, second as string, ...others],
            right,
            why:
              'refusal' in setting
                ? `Even the smallest step, ${show.current(steps[0] as number)}, is more than this pack takes.`
                : `${show.rate(setting.wantedRate_C)} × ${show.number(pack.capacity_Ah, 3)} Ah = ${show.current(setting.wanted_A)} is wanted, ${show.current(setting.limits[0].value_A)} is the most, so the step is ${right}.`,
          },
          true,
        )
      },
    },
  ],
}

const setOn = (pack: Parameters<typeof writePack>[0], steps: readonly number[], house: Telling['house']) =>
  adviseSetting({ pack, charger: { currents: { kind: 'list', steps_A: steps } }, limits: house })

const rateWords = ({ name, recommendedRate_C }: Chemistry, show: Telling['show']): string =>
  `${name} packs are charged at ${show.rate(recommendedRate_C.value)}`
