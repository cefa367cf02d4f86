// Lesson: the C-rate, and the current to set.

import { lihv, liIon, lipo } from '../../charging/things/chemistries.ts'
import type { Chemistry } from '../../charging/things/chemistry.ts'
import type { Pack } from '../../charging/things/pack.ts'
import { joined } from '../../ground/text.ts'
import { writePack } from '../../language/things/pack.ts'
import { drawnCapacity_Ah, drawnPack, packOf, settingOf } from '../teaching/draw.ts'
import { lesson } from '../teaching/lesson.ts'

export const cRate = lesson('c-rate', ({ say, show, own }, house) => {
  const usual = ({ name, recommendedRate_C }: Chemistry) =>
    say`${own(name)} packs are charged at ${show.rate(recommendedRate_C.value)}`
  const noStep = say`none of them: another charger`
  const setOn = (pack: Pack, steps_A: readonly number[]) =>
    settingOf({ pack, charger: { currents: { kind: 'list', steps_A } } }, house)
  return {
    title: say`The C-rate, and the current to set`,
    teach: [
      say`1C is the current that would move the whole capacity in an hour: the amp-hours of the pack, read as amps. Most ${usual(lipo)}, most ${usual(liIon)}, unless the label says otherwise.`,
      say`Charge slower and it takes longer, nothing worse. Charge faster than the label or the cells allow and the pack heats, swells and may burn.`,
      say`A charger with fixed steps is set to the step nearest to the wanted current that no limit forbids. Where even the smallest step is too much, use another charger.`,
      say`A charge at 1C takes longer than an hour: near its end the charger holds the voltage and the current falls.`,
    ],
    example: () => {
      const pack = packOf({ chemistry: lihv, series: 3, capacity_Ah: 0.72 })
      const steps_A = [0.5, 1, 2, 4]
      const setting = setOn(pack, steps_A)
      const wanted = say`${own(writePack(pack))} on a charger with ${joined(steps_A.map(show.current), ', ')}`
      if (!setting) return say`${wanted}: ${noStep}.`
      const { wantedRate_C, wanted_A, current_A, rate_C } = setting
      return say`${wanted}: ${show.rate(wantedRate_C)} × ${show.number(pack.capacity_Ah, 2)} Ah = ${show.current(wanted_A)} wanted, ${show.current(current_A)} set, which is ${show.rate(rate_C)}.`
    },
    questions: {
      amps: draw => {
        const capacity_Ah = drawnCapacity_Ah(draw)
        const rate_C = draw.pick([0.5, 1, 1.5, 2])
        const value = rate_C * capacity_Ah
        return {
          ask: say`How many amps are ${show.rate(rate_C)} on a pack of ${show.capacity(capacity_Ah)}?`,
          wanted: say`amps, within ${show.percent(0.02)}`,
          why: say`The rate times the amp-hours: ${show.number(rate_C, 1)} × ${show.number(capacity_Ah, 3)} Ah = ${show.current(value)}.`,
          quantity: 'current',
          value,
          tolerance: 0.02 * value,
        }
      },
      rate: draw => {
        const capacity_Ah = drawnCapacity_Ah(draw)
        const current_A = Number((capacity_Ah * draw.pick([0.4, 0.5, 0.8, 1, 1.2, 1.5, 2, 3])).toFixed(2))
        const value = current_A / capacity_Ah
        return {
          ask: say`A pack of ${show.capacity(capacity_Ah)} is charged with ${show.current(current_A)}. What C-rate is that?`,
          wanted: say`a C-rate such as ${show.rate(0.5)}, within ${show.percent(0.03)}`,
          why: say`Amps over amp-hours: ${show.number(current_A, 2)} A ÷ ${show.number(capacity_Ah, 3)} Ah = ${show.rate(value)}.`,
          quantity: 'rate',
          value,
          tolerance: 0.03 * value,
        }
      },
      step: draw => {
        const pack = drawnPack(draw)
        const steps_A: readonly number[] = draw.pick([
          [0.5, 1, 2, 4],
          [1, 2, 3, 5],
          [0.5, 1, 1.5, 3],
        ])
        const setting = setOn(pack, steps_A)
        return {
          ask: say`Which step do you set for a ${own(writePack(pack))} at the recommended rate?`,
          choices: [...steps_A.map(show.current), noStep],
          right: setting ? show.current(setting.current_A) : noStep,
          why: setting
            ? say`${show.rate(setting.wantedRate_C)} × ${show.number(pack.capacity_Ah, 3)} Ah = ${show.current(setting.wanted_A)} is wanted, ${show.current(setting.limits[0].value_A)} is the most, so the step is ${show.current(setting.current_A)}.`
            : say`Even the smallest step, ${show.current(Math.min(...steps_A))}, is more than this pack takes.`,
        }
      },
    },
  }
})
