// The rules of a club, tightened by its moderators.

import { isDeepStrictEqual } from 'node:util'
import { changing } from '../../src/assistant/changing.ts'
import { type Asked, optional, service } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { ruleKind } from '../../src/assistant/naming/told-rules.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import { chemistryKind, rateKind, temperatureKind, voltageKind } from '../../src/language/kinds/values.ts'
import { writeQuestion } from '../../src/language/sentence/question.ts'
import type { HouseChange, HouseRules } from '../../src/memory/memory.ts'
import { written } from '../shared/next.ts'
import { changedCards } from './changed-cards.ts'
import { factChanges, factTakes } from './club-facts.ts'
import { endsKind } from './ends-kind.ts'
import { coldestChange, limitChanges, standingRules } from './house-changes.ts'
import {
  changesPinned,
  onlyEnglish,
  onlyModeratorsSet,
  type PlannedRules,
  replacesRules,
  whichRule,
} from './house-problems.words.ts'
import { orNone } from './or-none.ts'

const ruled = <T>(kind: ValueKind<T>) => optional(orNone(kind, ruleKind))

export const takes = {
  chemistry: optional(chemistryKind),
  rate: ruled(rateKind),
  full: ruled(voltageKind),
  storage: ruled(voltageKind),
  floor: ruled(voltageKind),
  coldest: ruled(temperatureKind),
  gentle: optional(choiceKind(ruleKind, ['yes', 'no'])),
  ends: ruled(endsKind),
  decimal: optional(choiceKind(ruleKind, ['point', 'comma'])),
  language: optional(choiceKind('language', ['English'], onlyEnglish)),
  'private-answers': optional(choiceKind(ruleKind, ['everyone', 'moderators'])),
  ...factTakes,
  pinned: optional(choiceKind('confirmation', ['change'])),
}

/** Lets moderators tighten the charging rules of their club, and choose how it is answered there. */
export const houseSet = service({
  name: 'house set',
  shelf: 'club set',
  takes,
  everyType: true,
  examples: [
    'house set chemistry: LiPo rate: 1C storage: 3.80V',
    'house set chemistry: Li-ion floor: 3.2V gentle: yes',
    'house set coldest: 10°C ends: twentieth',
    'house set decimal: comma private-answers: moderators',
    'house set emergency: 112 address: Field lane 3, Newtown collection: Steel box at the gate quiet: 22:00 to 07:00',
    'house set alerts: here digest: weekly',
    'house set clock: Europe/Vienna',
  ],
  changes: true,
  moderators: onlyModeratorsSet,
  confirm: async (asked, context) => {
    const { after, before, changed } = await plannedFrom(asked, context)
    const isKept = before.every(({ value }) => value === null) || isDeepStrictEqual(before, after)
    return isKept || changed.length > 0 ? undefined : replacesRules(before, after)
  },
  run: async (asked, context) => {
    const planned = await plannedFrom(asked, context)
    if (planned.changed.length > 0)
      throw changesPinned(
        planned,
        writeQuestion({ command: 'house set', options: { ...written(takes, asked), pinned: 'change' } }),
      )
    const { after } = planned
    const { id } = context.community
    return changing(context, async ({ house }) => {
      const before = standingRules(after, await house.rules(id))
      const isSame = isDeepStrictEqual(before, after)
      await house.change(id, after)
      return { result: { changes: after, before, isSame }, change: isSame ? undefined : { of: 'rules', before, after } }
    })
  },
})

/** Changes, what they change, and the pinned answers that would say otherwise, unless that is wanted. */
async function plannedFrom(asked: Asked<typeof takes>, context: Context): Promise<PlannedRules> {
  const after = changesFrom(asked, context.house, context.place.id)
  const changed = asked.pinned ? [] : await changedCards(after, context)
  return { after, before: standingRules(after, context.house), changed }
}

/** What is lifted and stands nowhere is left out, unless nothing stands. */
function changesFrom(asked: Asked<typeof takes>, rules: HouseRules, here: string): readonly HouseChange[] {
  const { chemistry, rate, full, storage, floor, coldest, gentle, ends, decimal, language } = asked
  const privateAnswers = asked['private-answers']
  const changes: HouseChange[] = [
    ...limitChanges({ rule: 'maxRate_C', option: 'rate', value: rate }, chemistry),
    ...limitChanges({ rule: 'fullPerCell_V', option: 'full', value: full }, chemistry),
    ...limitChanges({ rule: 'storagePerCell_V', option: 'storage', value: storage }, chemistry),
    ...limitChanges({ rule: 'sourceFloorPerCell_V', option: 'floor', value: floor }, chemistry),
    ...factChanges(asked, here),
  ]
  if (coldest !== undefined) changes.push(coldestChange(coldest))
  if (gentle) changes.push({ rule: 'gentleLiIon', value: gentle === 'yes' ? true : null })
  if (ends !== undefined) changes.push({ rule: 'chargeEnd', value: ends })
  if (decimal) changes.push({ rule: 'decimalMark', value: decimal === 'comma' ? ',' : '.' })
  if (language) changes.push({ rule: 'language', value: language })
  if (privateAnswers) changes.push({ rule: 'privateAnswers', value: privateAnswers })
  const standing = standingRules(changes, rules)
  const made = changes.filter(({ value }, at) => value !== null || standing[at]?.value !== null)
  if (changes.length > 0) return made.length > 0 ? made : changes
  throw whichRule(Object.keys(takes))
}
