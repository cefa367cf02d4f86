// The rule sheet of this club on one card: its numbers, and what always holds.

import type { Context } from '../../src/assistant/context.ts'
import { defineCommand } from '../../src/assistant/old-command.ts'
import type { Figure } from '../../src/assistant/reply.ts'
import { ruleSheet } from '../../src/cautions/rule-sheet.ts'
import { fullVoltage_V } from '../../src/charging/setting/old-cutoff.ts'
import { sourceFloor_V } from '../../src/charging/things/battery-store.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import type { Chemistry } from '../../src/charging/things/chemistry.ts'
import { storageVoltage_V } from '../../src/charging/upkeep/storage.ts'
import { followUp } from '../shared/follow-up.ts'
import { cite } from '../shared/working.ts'
import { inKey } from './chemistry-key.ts'

export const rules = defineCommand({
  name: 'rules',
  summary: 'The charging rules of this club on one card.',
  options: {},
  examples: ['rules'],
  plainWords: [
    'rule sheet',
    'unattended',
    'overnight',
    'while i sleep',
    'leave it charging',
    'leave the room',
    'walk away',
    'how low',
    'minimum voltage',
    'lowest voltage',
    'stop flying',
  ],
  meantBy: [['chemistry', 'temperature']],
  answer: (_, context) => ({
    headline: 'Charge here only what is sound, in sight, with the right setting, where nothing can burn.',
    figures: chemistries.map(chemistry => chemistryLine(chemistry, context)),
    working: [
      `Where a label or datasheet says less, less holds. The highest rate is for labels that give none (${cite(chemistries[0].highestRate_C)}).`,
      `Temperatures: ${cite(chemistries[0].temperatureBands)}.`,
      'What this club has tightened itself: house show.',
    ],
    cautions: ruleSheet,
    followUps: [followUp('What this club has set', 'house show', {}), followUp('Lessons', 'lesson list', {})],
  }),
})

/** Everything that is set by the chemistry, in one line each. */
function chemistryLine(chemistry: Chemistry, { house, show }: Context): Figure {
  const { name } = chemistry
  const pack = { chemistry, series: 1, parallel: 1, capacity_Ah: 1 }
  const full_V = fullVoltage_V(chemistry, house)
  const highest_C = Math.min(
    chemistry.highestRate_C.value,
    house.maxRate_C?.[name] ?? Number.POSITIVE_INFINITY,
  )
  const [coldest] = chemistry.temperatureBands.value
  const hottest = chemistry.temperatureBands.value.at(-1)
  const parts = [
    `full ${show.perCell(full_V)} per cell`,
    `storage ${show.perCell(storageVoltage_V(pack, house))}`,
    `${show.rate(highest_C)} at most`,
    `flown to ${show.perCell(chemistry.restFloor_V.value)} at rest`,
    `as a source to ${show.perCell(sourceFloor_V(pack, house))} under load`,
    `${show.temperature(coldest?.from_C ?? 0)} to ${show.temperature(hottest?.to_C ?? 0)}, half the rate below ${show.temperature(coldest?.to_C ?? 0)}`,
  ]
  return {
    key: `full${inKey(name)}`,
    label: name,
    value: full_V,
    unit: 'V',
    text: parts.join('; '),
  }
}
