// What a club says of itself: whom to call, where it flies, where batteries go, when it is quiet, what its clock shows.

import { type Asked, optional } from '../../src/assistant/command.ts'
import { ruleKind } from '../../src/assistant/naming/told-rules.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import { hoursKind, ownWordsKind, phoneKind, zoneKind } from '../../src/language/kinds/club-kinds.ts'
import type { ClubFact, HouseChange } from '../../src/memory/memory.ts'
import { orNone } from './or-none.ts'

export const factTakes = {
  emergency: optional(orNone(phoneKind)),
  address: optional(orNone(ownWordsKind)),
  collection: optional(orNone(ownWordsKind)),
  quiet: optional(orNone(hoursKind)),
  clock: optional(orNone(zoneKind, ruleKind)),
  alerts: optional(orNone(choiceKind('room', ['here']))),
  digest: optional(orNone(choiceKind('digest', ['weekly']))),
}

const facts = {
  emergency: 'emergencyNumber',
  address: 'fieldAddress',
  collection: 'collectionPoint',
  quiet: 'quietHours',
  clock: 'clock',
  alerts: 'moderatorsRoom',
  digest: 'digest',
} as const satisfies Readonly<Record<keyof typeof factTakes, ClubFact>>

/** In the order in which they are shown. */
export const clubFacts: readonly ClubFact[] = Object.values(facts)

/** `here` is where it is asked. */
export const factChanges = (asked: Asked<typeof factTakes>, here: string): readonly HouseChange[] =>
  (Object.keys(facts) as (keyof typeof facts)[]).flatMap(name => {
    const value = asked[name]
    if (value === undefined) return []
    return [{ rule: facts[name], value: name === 'alerts' && value !== null ? here : value }]
  })
