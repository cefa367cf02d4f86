// Lets moderators tighten the charging rules of their club, and choose how it is answered there.

import type { Context } from '../../src/assistant/context.ts'
import { defineCommand, type Inputs, optional } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { Show } from '../../src/ground/show.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import { chemistryKind, rateKind, voltageKind } from '../../src/language/kinds/values.ts'
import type { HouseChange } from '../../src/memory/memory.ts'
import { limitChanges } from './house-changes.ts'
import { changeText } from './house-words.ts'

const lifted = 'none'

/** A value of the kind, or "none" to lift the rule. */
function orNone<T>(kind: ValueKind<T>): ValueKind<T | null> {
  return {
    ...kind,
    read: (text, earlier) =>
      text.trim().toLowerCase() === lifted ? { value: null, assumed: [] } : kind.read(text, earlier),
    write: value => (value === null ? lifted : kind.write(value)),
    complete: prefix => [...kind.complete(prefix), lifted].filter(text => text.startsWith(prefix.trim())),
  }
}

const options = {
  chemistry: optional(chemistryKind, { description: 'which cells rate, storage and floor are for' }),
  rate: optional(orNone(rateKind), { description: 'highest charge rate, or none to lift the rule' }),
  storage: optional(orNone(voltageKind), { description: 'storage voltage per cell, or none' }),
  floor: optional(orNone(voltageKind), {
    description: 'voltage per cell at which a battery used as a source is stopped, or none',
  }),
  gentle: optional(choiceKind('choice', ['yes', 'no']), {
    description: 'yes: Li-ion is charged to 4.10 V per cell only',
  }),
  decimal: optional(choiceKind('decimal mark', ['point', 'comma']), { description: 'point or comma' }),
  language: optional(choiceKind('language', ['English'], 'So far I answer in English only.'), {
    description: 'English; no other so far',
  }),
  'private-answers': optional(choiceKind('choice', ['everyone', 'moderators']), {
    description: 'who may have an answer that only they see',
  }),
}

export const houseSet = defineCommand({
  name: 'house set',
  summary: 'Tightens the charging rules of this club; for moderators.',
  options,
  examples: [
    'house set chemistry: LiPo rate: 1C storage: 3.80V',
    'house set chemistry: Li-ion floor: 3.2V gentle: yes',
    'house set decimal: comma private-answers: moderators',
  ],
  changes: true,
  answer: async (inputs, context) => {
    refuseMembers(context)
    const changes = changesFrom(inputs, context.show)
    await context.memory.house.change(context.community.id, changes)
    const texts = changes.map(change => changeText(change, context.show))
    return {
      headline: `The rules of this house are changed. ${texts.join('; ')}.`,
      working: [
        '"house show" shows them all. A rule only ever tightens what the chemistry and the label allow.',
      ],
      cautions: [generalCaution],
    }
  },
})

function refuseMembers({ asker }: Context): void {
  if (asker.moderates) return
  throw new Problem({
    what: 'Only moderators change the rules of this house.',
    expected: 'a moderator to ask for it; anyone can look at the rules',
    example: 'house show',
  })
}

function changesFrom(inputs: Inputs<typeof options>, show: Show): readonly HouseChange[] {
  const { chemistry, rate, storage, floor, gentle, decimal, language } = inputs
  const privateAnswers = inputs['private-answers']
  const changes: HouseChange[] = [
    ...limitChanges({ rule: 'maxRate_C', option: 'rate', value: rate }, chemistry, show),
    ...limitChanges({ rule: 'storagePerCell_V', option: 'storage', value: storage }, chemistry, show),
    ...limitChanges({ rule: 'sourceFloorPerCell_V', option: 'floor', value: floor }, chemistry, show),
  ]
  if (gentle) changes.push({ rule: 'gentleLiIon', value: gentle === 'yes' ? true : null })
  if (decimal) changes.push({ rule: 'decimalMark', value: decimal === 'comma' ? ',' : '.' })
  if (language) changes.push({ rule: 'language', value: language })
  if (privateAnswers) changes.push({ rule: 'privateAnswers', value: privateAnswers })
  if (changes.length > 0) return changes
  throw new Problem({
    what: 'I need to know which rule to set.',
    expected: `one or more of: ${Object.keys(options).join(', ')}`,
    example: 'house set chemistry: LiPo rate: 1C',
  })
}
