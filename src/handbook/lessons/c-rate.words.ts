// What the lesson on the C-rate says.

import type { Chemistry } from '../../charging/things/chemistry.ts'
import { joined } from '../../ground/text.ts'
import { writePack } from '../../language/things/pack.ts'
import type { WordsOf } from '../teaching/lesson.ts'
import type { cRate } from './c-rate.ts'

export const cRateWords: WordsOf<typeof cRate> = ({ say, show, own }) => {
  const usual = ({ name, recommendedRate_C }: Chemistry) =>
    say`${own(name)} packs are charged at ${show.rate(recommendedRate_C.value)}`
  const noStep = say`none of them: another charger`
  return {
    title: say`The C-rate, and the current to set`,
    teach: ([one, other]) => [
      say`1C is the current that would move the whole capacity in an hour: the amp-hours of the pack, read as amps. Most ${usual(one)}, most ${usual(other)}, unless the label says otherwise.`,
      say`Charge slower and it takes longer, nothing worse. Charge faster than the label or the cells allow and the pack heats, swells and may burn.`,
      say`A charger with fixed steps is set to the step nearest to the wanted current that no limit forbids. Where even the smallest step is too much, use another charger.`,
      say`A charge at 1C takes longer than an hour: near its end the charger holds the voltage and the current falls.`,
    ],
    example: ({ pack, steps_A, setting }) => {
      const wanted = say`${own(writePack(pack))} on a charger with ${joined(steps_A.map(show.current), ', ')}`
      if (!setting) return say`${wanted}: ${noStep}.`
      const { wantedRate_C, wanted_A, current_A, rate_C } = setting
      return say`${wanted}: ${show.rate(wantedRate_C)} × ${show.number(pack.capacity_Ah, 2)} Ah = ${show.current(wanted_A)} wanted, ${show.current(current_A)} set, which is ${show.rate(rate_C)}.`
    },
    questions: {
      amps: ({ rate_C, capacity_Ah, value }) => ({
        ask: say`How many amps are ${show.rate(rate_C)} on a pack of ${show.capacity(capacity_Ah)}?`,
        wanted: say`amps, within ${show.percent(0.02)}`,
        why: say`The rate times the amp-hours: ${show.number(rate_C, 1)} × ${show.number(capacity_Ah, 3)} Ah = ${show.current(value)}.`,
      }),
      rate: ({ current_A, capacity_Ah, value }) => ({
        ask: say`A pack of ${show.capacity(capacity_Ah)} is charged with ${show.current(current_A)}. What C-rate is that?`,
        wanted: say`a C-rate such as ${show.rate(0.5)}, within ${show.percent(0.03)}`,
        why: say`Amps over amp-hours: ${show.number(current_A, 2)} A ÷ ${show.number(capacity_Ah, 3)} Ah = ${show.rate(value)}.`,
      }),
      step: ({ pack, steps_A, setting }) => ({
        ask: say`Which step do you set for a ${own(writePack(pack))} at the recommended rate?`,
        choice: step => (step === 'none' ? noStep : show.current(step)),
        why: setting
          ? say`${show.rate(setting.wantedRate_C)} × ${show.number(pack.capacity_Ah, 3)} Ah = ${show.current(setting.wanted_A)} is wanted, ${show.current(setting.limits[0].value_A)} is the most, so the step is ${show.current(setting.current_A)}.`
          : say`Even the smallest step, ${show.current(Math.min(...steps_A))}, is more than this pack takes.`,
      }),
    },
  }
}
