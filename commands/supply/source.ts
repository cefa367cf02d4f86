// How many packs a source charges, what is left of it, and where to stop.

import { defineCommand, type Inputs, optional, required } from '../../src/assistant/old-command.ts'
import type { FollowUp } from '../../src/assistant/reply.ts'
import { cautionsFor } from '../../src/cautions/cautions.ts'
import { planSource, type SourcePlan } from '../../src/charging/sources/source-plan.ts'
import type { State } from '../../src/charging/things/level.ts'
import type { Show } from '../../src/ground/show.ts'
import {
  countKind,
  packKind,
  percentKind,
  sourceKind,
  stateKind,
  targetKind,
} from '../../src/language/kinds/values.ts'
import { cellTemperature, onCharger } from '../shared/charge-options.ts'
import { followUp, written } from '../shared/follow-up.ts'
import { houseBound } from '../shared/house-bound.ts'
import { levelsOf } from '../shared/levels.ts'
import { sourcePictures } from '../shared/pictures.ts'
import { refusedAnswer } from '../shared/refused.ts'
import { settingWorking } from '../shared/working.ts'
import { planFigures } from './source-figures.ts'
import { planWords } from './source-plan-words.ts'
import { sourceAssumed, sourceWorking } from './source-words.ts'
import { planWorking } from './source-working.ts'

const options = {
  source: required(sourceKind, {
    description: 'a supply, a vehicle outlet, a power bank or a battery',
    phrase: text => text,
  }),
  pack: required(packKind, { description: 'the packs to charge, all alike', phrase: text => `for ${text}` }),
  charger: onCharger,
  from: optional(stateKind, { description: 'where the packs stand now; their floor when not said' }),
  to: optional(targetKind, { description: 'where they are to go; full when not said' }),
  count: optional(countKind, {
    description: 'how many packs; as many as it carries when not said',
    phrase: text => `${text} of them`,
  }),
  charged: optional(percentKind, {
    description: 'how full the source battery is; full when not said',
    phrase: text => `the source at ${text}`,
  }),
  temperature: cellTemperature,
}

export const source = defineCommand({
  name: 'source',
  summary: 'How many packs a source charges, what is left of it, and where to stop.',
  options,
  examples: [
    'source source: 4S 5000 Li-ion pack: 3S 720 LiHV count: 6',
    'source source: power bank 74Wh PD 45W pack: 2S 450 LiPo charger: 0.5/1/2/4A 9-20V from: 3.7V per cell',
    'source source: car 10A engine running pack: 4S 1500 LiPo',
  ],
  plainWords: [
    'how many',
    'can my',
    'will my',
    'is it enough',
    'enough for',
    'source for',
    'charge from',
    'power from',
  ],
  meantBy: [
    ['pack', 'count'],
    ['pack', 'feeding pack'],
    ['pack', 'source', 'count'],
  ],
  answer: (inputs, { house, show }) => {
    const { source: feeding, pack, charger, count, temperature } = inputs
    const { from, target, restPerCell_V } = levelsOf(pack, house, inputs.from, inputs.to)
    const known = {
      pack,
      source: feeding,
      temperature_C: temperature,
      restPerCell_V,
    }
    const plan = planSource({
      ...known,
      charger,
      count,
      sourceSoc: inputs.charged,
      target,
      limits: house,
      from,
    })
    if ('refusal' in plan) return refusedAnswer(plan, known, show)

    const { setting } = plan
    const { current_A, input_A, feed } = setting
    return {
      verdict: plan.most === 0 ? 'do not charge' : plan.enough ? setting.verdict : 'go with care',
      headline: planWords(plan, inputs, show),
      figures: planFigures(plan, feeding, count, show),
      working: [
        ...planWorking(plan, show),
        ...(feed ? sourceWorking(feeding, feed, show) : []),
        ...settingWorking(setting, pack, show),
        ...houseBound(inputs, setting.cutoff, house, show),
      ],
      cautions: cautionsFor({ ...known, current_A, input_A }),
      followUps: followUps(inputs, plan),
      charts: sourcePictures(plan, feeding, pack, show),
      assumed: assumed(inputs, plan, from, show),
    }
  },
})

type Asked = Inputs<typeof options>

function followUps(inputs: Asked, { most, enough }: SourcePlan): FollowUp[] {
  const asked = written(options, inputs)
  const { count: _, ...unnumbered } = asked
  const storage = inputs.to?.kind === 'named' && inputs.to.name === 'storage'
  return [
    ...(most && !enough
      ? [followUp(`Only ${most}`, 'source', { ...asked, count: countKind.write(most) })]
      : []),
    ...(inputs.count !== undefined && most !== undefined
      ? [followUp('How many at most?', 'source', unnumbered)]
      : []),
    followUp(storage ? 'To full' : 'To storage', 'source', { ...asked, to: storage ? 'full' : 'storage' }),
  ]
}

function assumed(inputs: Asked, { setting }: SourcePlan, from: State, show: Show): string[] {
  const known: string[] = []
  if (inputs.from === undefined && from.kind === 'rest') {
    known.push(
      `the packs are taken to be flown down to their floor, ${show.perCell(from.perCell_V)} per cell at rest`,
    )
  }
  if (!inputs.charger) {
    known.push(
      `the charger is taken to pass on ${show.percent(setting.efficiency)} of its input, at any current and input voltage`,
    )
  }
  if (inputs.source.kind === 'battery' && inputs.charged === undefined) {
    known.push('the source battery is taken to be full and to hold what its label says')
  }
  return [...known, ...sourceAssumed(inputs.source, show)]
}
