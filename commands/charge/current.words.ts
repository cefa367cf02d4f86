// What is said of a setting, and what could be asked next.

import type { WordsOf } from '../../src/assistant/command.ts'
import { countsLead } from '../../src/charging/setting/input.ts'
import type { Setting } from '../../src/charging/setting/setting.ts'
import { heldBelow } from '../../src/charging/setting/shared-charger.ts'
import type { Charger } from '../../src/charging/things/charger.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { largestStep_A, neighbourStep_A } from '../../src/charging/things/steps.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { currentKind } from '../../src/language/kinds/values.ts'
import { logWords } from '../log/learned.words.ts'
import { costWords, startWords } from '../shared/charge.words.ts'
import { isToStorage } from '../shared/charging.ts'
import { ofChargeWords, stopFigureNames } from '../shared/charging.words.ts'
import { asksAgain } from '../shared/next.ts'
import { leadAssumed, leadWorking, ofLeadWords } from '../shared/own-lead.words.ts'
import { heldDown, houseWorking, inputWorking, menuWords, settingWorking } from '../shared/setting.words.ts'
import { sourceAssumed, sourceWorking } from '../shared/source.words.ts'
import { current } from './current.ts'

export const currentWords: WordsOf<typeof current> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`Which cutoff voltage and current to set for a pack.`,
    asks: [own('what current for a 4S 1500 LiPo'), own('what do I set for a 3S 720 LiHV on a 0.3/0.8/1.5/3A charger')],
    takes: {
      ...ofChargeWords(locale),
      ...ofLeadWords(locale),
      current: { about: say`one that you have in mind; the advised one when not said`, as: text => say`at ${text}` },
      ...logWords(locale),
    },
    answer: (setting, { pack, charger, current: asked }) => [
      menuWords(setting, pack, locale),
      asked === undefined ? undefined : rateWords(setting, pack, locale),
      costWords(setting, locale),
      ...heldDown(setting, locale),
      wattsWords(setting, charger, locale),
      typeof setting.bound !== 'object' &&
      setting.askable.kind === 'label' &&
      setting.askable.value_A > setting.limits[0].value_A
        ? say`The label allows up to ${show.current(setting.askable.value_A)}; less is gentler.`
        : undefined,
    ],
    start: (setting, { pack, from }) => startWords(pack, setting, from !== undefined, locale),
    figures: {
      ...stopFigureNames(locale),
      setCurrent: say`current to set`,
      cutoffPerCell: say`cutoff, a cell`,
      cutoffPack: say`cutoff of the pack`,
      cRate: say`rate`,
      wantedCurrent: say`recommended current`,
      highestCurrent: say`highest current`,
      labelCurrent: say`allowed by the label`,
      inputPower: say`input power at most`,
      inputCurrent: say`input current at most`,
    },
    working: (setting, { pack, source }) => [
      ...settingWorking(setting, pack, locale),
      ...houseWorking(setting.permit.situation, setting.cutoff, locale),
      ...sourceWorking(source, setting.feed, locale),
      leadWorking(setting.permit.situation.lead, setting.input_A, locale),
      inputWorking(setting, locale),
    ],
    assumed: (_, asked) => [
      leadAssumed(asked, countsLead(asked.source), locale),
      ...sourceAssumed(asked.source, locale),
    ],
    next: ({ current_A, limits: [limit] }, asked) => {
      const again = asksAgain(current.takes, asked)
      const at = (value_A: number) => ({ current: currentKind.write(value_A) })
      const steps = asked.charger?.currents
      const higher_A = steps && neighbourStep_A(steps, current_A, 1)
      const lower_A = steps && neighbourStep_A(steps, current_A, -1)
      return [
        again(say`How long?`, 'time', at(current_A)),
        higher_A !== undefined && higher_A <= limit.value_A ? again(say`One step up`, 'time', at(higher_A)) : undefined,
        lower_A === undefined ? undefined : again(say`One step down`, 'time', at(lower_A)),
        isToStorage(asked.to)
          ? again(say`To full`, 'current', { to: 'full' })
          : again(say`To storage`, 'current', { to: 'storage' }),
      ]
    },
  }
}

/** How hard the asked current is for the cells. */
function rateWords({ current_A, rate_C }: Setting, { chemistry, capacity_Ah }: Pack, { say, show }: Locale): Text {
  const usual_C = chemistry.recommendedRate_C.value
  const rate = say`${show.current(current_A)} is ${show.rate(rate_C)}`
  return rate_C <= usual_C + 1e-9
    ? say`${rate}: no more than the usual ${show.rate(usual_C)}.`
    : say`${rate}; the usual ${show.rate(usual_C)} is ${show.current(usual_C * capacity_Ah)}.`
}

/** What a charger gives whose watts end below its amps, where that is not what held the current down. */
function wattsWords(setting: Setting, charger: Charger | undefined, { say, show }: Locale): Text | undefined {
  const held = charger && heldBelow(setting, largestStep_A(charger.currents))
  if (held?.power_W === undefined || held === setting.bound) return undefined
  const whose = held.kind === 'source' ? say`the source lets the charger give` : say`the charger gives`
  return say`For this pack ${whose} up to ${show.current(Math.floor(held.value_A * 100) / 100)}: ${show.power(held.power_W)} at ${show.voltage(setting.cutoffPack_V)}.`
}
