// How long a charge takes, from where the pack stands to where it is to go.

import { defineCommand, type Inputs, optional } from '../../src/assistant/command.ts'
import type { FollowUp } from '../../src/assistant/reply.ts'
import { cautionsFor } from '../../src/cautions/cautions.ts'
import { whoLimits } from '../../src/cautions/refusals.ts'
import { whyNothingToCharge } from '../../src/charging/setting/charged-already.ts'
import { adviseSetting, type Setting } from '../../src/charging/setting/setting.ts'
import { type TimedCharge, timedCharge } from '../../src/charging/setting/timed-charge.ts'
import type { State } from '../../src/charging/simulation/charge.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Show } from '../../src/ground/show.ts'
import {
  capacityKind,
  currentKind,
  resistanceKind,
  stateKind,
  targetKind,
} from '../../src/language/kinds/values.ts'
import { writeQuestion } from '../../src/language/sentence/question.ts'
import { recallFromLog } from '../log/log-recall.ts'
import { currentOn, refuseLateEnd } from '../shared/asked-current.ts'
import { chargeFigures } from '../shared/charge-figures.ts'
import { cellTemperature, chargedPack, fedBy, onCharger } from '../shared/charge-options.ts'
import { chargeWorking, clockWords } from '../shared/charge-words.ts'
import { followUp, written } from '../shared/follow-up.ts'
import { houseBound } from '../shared/house-bound.ts'
import { levelsOf } from '../shared/levels.ts'
import { chargePictures } from '../shared/pictures.ts'
import { refusedAnswer } from '../shared/refused.ts'
import { timeWords } from '../shared/time-words.ts'
import { sourceAssumed, sourceWorking } from '../supply/source-words.ts'

const options = {
  pack: chargedPack,
  current: optional(currentKind, {
    description: 'set on the charger; the advised one when not said',
    phrase: text => `at ${text}`,
  }),
  charger: onCharger,
  source: fedBy,
  from: optional(stateKind, { description: 'where the pack stands now; its floor when not said' }),
  to: optional(targetKind, { description: 'where it is to go; full when not said' }),
  until: optional(currentKind, {
    description: 'current at which the charge ends; a tenth of the set one when not said',
    phrase: text => `until the current is down to ${text}`,
  }),
  resistance: optional(resistanceKind, {
    description: 'measured, of one cell',
    phrase: text => `${text} a cell`,
  }),
  capacity: optional(capacityKind, {
    description: 'measured, of the whole pack',
    phrase: text => `measured to hold ${text}`,
  }),
  temperature: cellTemperature,
}

export const time = defineCommand({
  name: 'time',
  summary: 'How long a charge takes, with its stages and what goes into the pack.',
  options,
  examples: [
    'time pack: 3S 720 LiHV current: 1A from: 3.7V per cell to: full',
    'time pack: 6S 1300 LiPo charger: 0.1-10A by 0.1 80W from: 20% to: storage',
    'time pack: 2S 2600 Li-ion current: 1.3A from: 10% resistance: 30mΩ',
  ],
  plainWords: [
    'how long',
    'what time',
    'time to charge',
    'time for',
    'charge time',
    'when will',
    'how many minutes',
  ],
  meantBy: [
    ['pack', 'current'],
    ['pack', 'level'],
    ['pack', 'current', 'to storage'],
  ],
  recall: recallFromLog,
  answer: (inputs, { house, show, now, speaksFirst }) => {
    const { charger, source, to, temperature } = inputs
    const pack = asMeasured(inputs)
    const { from, target, restPerCell_V } = levelsOf(pack, house, inputs.from, to)
    const known = {
      pack,
      source,
      temperature_C: temperature,
      restPerCell_V,
    }
    const request = { ...known, charger, target, limits: house, from }
    const setting = adviseSetting(request)
    if ('refusal' in setting) return refusedAnswer(setting, known, show)
    const charged = whyNothingToCharge(pack, from, target)
    if (charged) return refusedAnswer(charged, known, show)

    const current_A = inputs.current === undefined ? setting.current_A : currentOn(charger, inputs.current)
    if (inputs.until !== undefined) refuseLateEnd(inputs.until, current_A)
    const details = {
      ...request,
      current_A,
      termination_A: inputs.until,
      measuredCapacity_Ah: inputs.capacity,
    }
    const timed = timedCharge(details, setting)
    const { above } = timed
    return {
      verdict: timed.verdict,
      headline: timeWords(timed, setting, request, show),
      figures: chargeFigures(timed, setting, show),
      working: [
        ...chargeWorking(details, timed, show),
        ...(source && setting.feed ? sourceWorking(source, setting.feed, show) : []),
        ...houseBound(inputs, setting.cutoff, house, show),
        ...(now ? [clockWords(timed.time_s, now)] : []),
      ],
      cautions: cautionsFor({
        ...known,
        current_A,
        ...(above && { highest_A: above.value_A }),
        ...(setting.feed && {
          input_A: timed.charge.peakPower_W / setting.efficiency / setting.feed.lowest_V,
        }),
      }),
      followUps: followUps(inputs, timed, setting, speaksFirst),
      charts: chargePictures(timed, pack, target, show),
      assumed: assumed(inputs, timed, setting, from, show),
    }
  },
})

type Asked = Inputs<typeof options>

/** A resistance given apart counts as one on the pack. */
const asMeasured = ({ pack, resistance }: Asked): Pack =>
  resistance === undefined ? pack : { ...pack, cellResistance_ohm: resistance }

function followUps(
  inputs: Asked,
  { current_A, verdict }: TimedCharge,
  setting: Setting,
  reminds: boolean,
): FollowUp[] {
  const asked = written(options, inputs)
  const storage = inputs.to?.kind === 'named' && inputs.to.name === 'storage'
  return [
    ...(current_A === setting.current_A
      ? []
      : [
          followUp(`At the advised current`, 'time', {
            ...asked,
            current: currentKind.write(setting.current_A),
          }),
        ]),
    followUp(storage ? 'To full' : 'To storage', 'time', { ...asked, to: storage ? 'full' : 'storage' }),
    ...(reminds && verdict !== 'do not charge'
      ? [followUp('Remind me', 'remind me', { for: writeQuestion({ command: 'time', options: asked }) })]
      : []),
  ]
}

function assumed(
  inputs: Asked,
  { current_A }: TimedCharge,
  { bound }: Setting,
  from: State,
  show: Show,
): string[] {
  const { current, charger, source } = inputs
  const known: string[] = []
  if (inputs.from === undefined && from.kind === 'rest') {
    known.push(
      `the pack is taken to be flown down to its floor, ${show.perCell(from.perCell_V)} per cell at rest`,
    )
  }
  if (current === undefined) {
    const why = bound && bound !== 'steps' ? `, all that ${whoLimits[bound.kind]}` : ''
    known.push(`set to the advised current, ${show.current(current_A)}${why}`)
  } else if (charger && current !== current_A) {
    known.push(`the charger has no step of ${show.current(current)}; ${show.current(current_A)} is taken`)
  }
  return [...known, ...(source ? sourceAssumed(source, show) : [])]
}
