// Which cutoff and current to set for a pack, on this charger and this source.

import { defineCommand, type Inputs, optional } from '../../src/assistant/command.ts'
import type { FollowUp } from '../../src/assistant/reply.ts'
import { cautionsFor } from '../../src/cautions/cautions.ts'
import { whyNothingToCharge } from '../../src/charging/setting/charged-already.ts'
import { adviseSetting, type Setting } from '../../src/charging/setting/setting.ts'
import { neighbourStep_A } from '../../src/charging/things/steps.ts'
import { currentKind, stateKind, targetKind } from '../../src/language/kinds/values.ts'
import { cellTemperature, chargedPack, fedBy, onCharger } from '../shared/charge-options.ts'
import { figuresIn } from '../shared/figure.ts'
import { followUp, written } from '../shared/follow-up.ts'
import { houseBound } from '../shared/house-bound.ts'
import { levelsOf } from '../shared/levels.ts'
import { refusedAnswer } from '../shared/refused.ts'
import { settingWords } from '../shared/setting-words.ts'
import { inputWorking, settingWorking } from '../shared/working.ts'
import { sourceAssumed, sourceWorking } from '../supply/source-words.ts'

const options = {
  pack: chargedPack,
  charger: onCharger,
  source: fedBy,
  from: optional(stateKind, { description: 'where the pack stands now' }),
  to: optional(targetKind, { description: 'where it is to go; full when not said' }),
  temperature: cellTemperature,
}

export const current = defineCommand({
  name: 'current',
  summary: 'Which cutoff voltage and current to set for a pack.',
  options,
  examples: [
    'current pack: 3S 720 LiHV charger: 0.5/1/2/4A',
    'current pack: 2S 2600 Li-ion charger: 1/2/3/5A source: PD 45W',
    'current pack: 6S 1300 LiPo source: 12V 10A temperature: 8°C',
  ],
  plainWords: [
    'what current',
    'how much current',
    'max current',
    'best current',
    'right current',
    'how many amp',
    'amps for',
    'amp for',
    'best amps',
    'charge rate',
    'which setting',
    'settings for',
    'what should i charge',
    'what do i charge',
    'what can i charge',
    'how fast',
    'which current',
    'what amps',
    'how many amps',
    'should i set',
    'what to set',
    'what setting',
  ],
  meantBy: [['pack']],
  answer: (inputs, { house, show }) => {
    const { pack, charger, source, from, to, temperature } = inputs
    const { target, restPerCell_V, ...levels } = levelsOf(pack, house, from, to)
    const known = {
      pack,
      source,
      temperature_C: temperature,
      restPerCell_V,
    }
    const setting = adviseSetting({ ...known, charger, target, limits: house })
    if ('refusal' in setting) return refusedAnswer(setting, known, show)
    const charged = from && whyNothingToCharge(pack, levels.from, target)
    if (charged) return refusedAnswer(charged, known, show)

    const { current_A, input_A, feed, limits } = setting
    const figure = figuresIn(show)
    return {
      verdict: setting.verdict,
      headline: settingWords(setting, pack, show),
      figures: [
        figure.current('setCurrent', 'current to set', current_A),
        figure.perCell('cutoffPerCell', 'cutoff per cell', setting.cutoff.perCell_V),
        figure.voltage('cutoffPack', 'cutoff of the pack', setting.cutoffPack_V),
        figure.rate('cRate', 'rate', setting.rate_C),
        figure.current('wantedCurrent', 'recommended current', setting.wanted_A),
        figure.current('highestCurrent', 'highest current', limits[0].value_A),
        figure.power('inputPower', 'input power at most', setting.input_W),
        ...(input_A === undefined ? [] : [figure.current('inputCurrent', 'input current at most', input_A)]),
      ],
      working: [
        ...settingWorking(setting, pack, show),
        ...houseBound(inputs, setting.cutoff, house, show),
        ...(source && feed ? sourceWorking(source, feed, show) : []),
        ...inputWorking(setting, show),
      ],
      cautions: cautionsFor({ ...known, current_A, input_A }),
      followUps: followUps(inputs, setting),
      assumed: source ? sourceAssumed(source, show) : [],
    }
  },
})

function followUps(inputs: Inputs<typeof options>, { current_A, limits }: Setting): FollowUp[] {
  const asked = written(options, inputs)
  const steps = inputs.charger?.currents
  const inTime = (label: string, value_A: number) =>
    followUp(label, 'time', { ...asked, current: currentKind.write(value_A) })
  const higher_A = steps && neighbourStep_A(steps, current_A, 1)
  const lower_A = steps && neighbourStep_A(steps, current_A, -1)
  return [
    inTime('How long?', current_A),
    ...(higher_A !== undefined && higher_A <= limits[0].value_A ? [inTime('One step up', higher_A)] : []),
    ...(lower_A !== undefined ? [inTime('One step down', lower_A)] : []),
    inputs.to?.kind === 'named' && inputs.to.name === 'storage'
      ? followUp('To full', 'current', { ...asked, to: 'full' })
      : followUp('To storage', 'current', { ...asked, to: 'storage' }),
  ]
}
