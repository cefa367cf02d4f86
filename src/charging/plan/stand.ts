// How the packs of a session stand: full already, to be charged here, or left out, and by which rule.

import { type Found, judge } from '../envelope/judge.ts'
import { type Situation, situationOf } from '../situation/situation.ts'
import type { Charger } from '../things/charger.ts'
import { socAt } from '../things/curve.ts'
import { fullVoltage_V, socOf, startOf } from '../things/level.ts'
import type { FieldSession, FieldSource, PackGroup } from './field.ts'

/** What feeds a port: nothing that is known, or a share of a source. */
interface Fed {
  readonly fieldSource: FieldSource | undefined
  /** In W; all of it when absent. */
  readonly share_W?: number
}

/** Charging a pack of the group: on this charger and source, or, without a charger, at all. */
export function chargingOf(
  { around, temperature_C, apart_V, lead }: FieldSession,
  { pack, from, dangers, current_A }: PackGroup,
  charger?: Charger,
  { fieldSource, share_W }: Fed = { fieldSource: undefined },
): Situation {
  return situationOf(
    {
      act: 'charge',
      pack,
      from,
      dangers,
      charger,
      source: fieldSource?.source,
      sourceSoc: fieldSource?.soc,
      sourceShare_W: share_W,
      lead,
      temperature_C,
      apart_V,
      current_A,
    },
    around,
  )
}

export interface Stand {
  readonly kind: 'full' | 'here' | 'nowhere' | 'never'
  /** What is to be judged of the group: its first place that permits it, or what speaks against it. */
  readonly situation: Situation
  /** Why it is left out. */
  readonly found: Found | undefined
}

export function standOf(field: FieldSession, group: PackGroup): Stand {
  const situation = chargingOf(field, group)
  const refusals = refusalsOf(situation)
  if (isFull(field, group) && refusals.every(({ key }) => key === 'nothingToCharge'))
    return { kind: 'full', situation: { ...situation, act: 'look' }, found: undefined }
  const [found] = refusals
  if (found) return { kind: 'never', situation, found }
  const places = field.chargers.flatMap(charger =>
    sourcesOf(field).map(fieldSource => chargingOf(field, group, charger, { fieldSource })),
  )
  const place = places.find(one => judge(one).permit)
  if (place) return { kind: 'here', situation: place, found: undefined }
  const [first = situation] = places
  return { kind: 'nowhere', situation: first, found: refusalsOf(first)[0] }
}

/** Where no source is told there is one of which nothing is known. */
export const sourcesOf = ({ sources }: FieldSession): readonly (FieldSource | undefined)[] =>
  sources.length > 0 ? sources : [undefined]
const refusalsOf = (situation: Situation): readonly Found[] =>
  judge(situation).found.filter(({ weight }) => weight === 'refuse')

/** A pack this full needs no charge to fly. */
const fullShare = 0.99

function isFull({ around: { house } }: FieldSession, { pack: { chemistry }, from }: PackGroup): boolean {
  if (!from) return false
  const start = startOf(from, chemistry, house)
  const soc = socOf(start, chemistry)
  return soc >= fullShare * socAt(chemistry, fullVoltage_V(chemistry, house))
}
