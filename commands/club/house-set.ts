// Lets moderators tighten the charging rules of their club, and choose how it is answered there.

import { isDeepStrictEqual } from 'node:util'
import { changing } from '../../src/assistant/changing.ts'
import { type Asked, optional, service } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { lifted, ruleKind } from '../../src/assistant/naming/told-rules.ts'
import { Problem } from '../../src/ground/problem.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import { chemistryKind, rateKind, temperatureKind, voltageKind } from '../../src/language/kinds/values.ts'
import type { HouseChange } from '../../src/memory/memory.ts'
import { coldestChange, limitChanges, standingRules } from './house-changes.ts'
import {
  moderatorsOnly,
  moderatorsOnlyExpected,
  oneOrMoreOf,
  onlyEnglish,
  replacesRules,
  whichRule,
} from './house-problems.words.ts'

/** A value of the kind, or "none" to lift the rule. */
function orNone<T>(kind: ValueKind<T>): ValueKind<T | null> {
  return {
    ...kind,
    name: ruleKind,
    read: (text, earlier) =>
      text.trim().toLowerCase() === lifted ? { value: null, assumed: [] } : kind.read(text, earlier),
    write: value => (value === null ? lifted : kind.write(value)),
    complete: prefix => [...kind.complete(prefix), lifted].filter(text => text.startsWith(prefix.trim())),
  }
}

const takes = {
  chemistry: optional(chemistryKind),
  rate: optional(orNone(rateKind)),
  full: optional(orNone(voltageKind)),
  storage: optional(orNone(voltageKind)),
  floor: optional(orNone(voltageKind)),
  coldest: optional(orNone(temperatureKind)),
  gentle: optional(choiceKind(ruleKind, ['yes', 'no'])),
  decimal: optional(choiceKind(ruleKind, ['point', 'comma'])),
  language: optional(choiceKind('language', ['English'], onlyEnglish)),
  'private-answers': optional(choiceKind(ruleKind, ['everyone', 'moderators'])),
}

export const houseSet = service({
  name: 'house set',
  takes,
  everyType: true,
  examples: [
    'house set chemistry: LiPo rate: 1C storage: 3.80V',
    'house set chemistry: Li-ion floor: 3.2V gentle: yes',
    'house set coldest: 10°C',
    'house set decimal: comma private-answers: moderators',
  ],
  changes: true,
  confirm: async (asked, context) => {
    refuseMembers(context)
    const after = changesFrom(asked)
    const before = standingRules(after, context.house)
    const isKept = before.every(({ value }) => value === null) || isDeepStrictEqual(before, after)
    return isKept ? undefined : replacesRules(before, after)
  },
  run: async (asked, context) => {
    refuseMembers(context)
    const after = changesFrom(asked)
    const { id } = context.community
    return changing(context, async ({ house }) => {
      const before = standingRules(after, await house.rules(id))
      const isSame = isDeepStrictEqual(before, after)
      await house.change(id, after)
      return { result: { changes: after, before, isSame }, change: isSame ? undefined : { of: 'rules', before, after } }
    })
  },
})

function refuseMembers({ asker }: Context): void {
  if (asker.moderates) return
  throw new Problem({ what: moderatorsOnly, expected: moderatorsOnlyExpected, example: 'house show' })
}

function changesFrom(asked: Asked<typeof takes>): readonly HouseChange[] {
  const { chemistry, rate, full, storage, floor, coldest, gentle, decimal, language } = asked
  const privateAnswers = asked['private-answers']
  const changes: HouseChange[] = [
    ...limitChanges({ rule: 'maxRate_C', option: 'rate', value: rate }, chemistry),
    ...limitChanges({ rule: 'fullPerCell_V', option: 'full', value: full }, chemistry),
    ...limitChanges({ rule: 'storagePerCell_V', option: 'storage', value: storage }, chemistry),
    ...limitChanges({ rule: 'sourceFloorPerCell_V', option: 'floor', value: floor }, chemistry),
  ]
  if (coldest !== undefined) changes.push(coldestChange(coldest))
  if (gentle) changes.push({ rule: 'gentleLiIon', value: gentle === 'yes' ? true : null })
  if (decimal) changes.push({ rule: 'decimalMark', value: decimal === 'comma' ? ',' : '.' })
  if (language) changes.push({ rule: 'language', value: language })
  if (privateAnswers) changes.push({ rule: 'privateAnswers', value: privateAnswers })
  if (changes.length > 0) return changes
  throw new Problem({
    what: whichRule,
    expected: oneOrMoreOf(Object.keys(takes)),
    example: 'house set chemistry: LiPo rate: 1C',
  })
}
