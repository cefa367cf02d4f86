// From a field session to its numbers: what each port could do for each kind of pack, on each source and share.

import { sumOf } from '../numbers/sum.ts'
import type { Charger } from '../things/charger.ts'
import { budgetOf, feedsOf } from './budget.ts'
import type { FieldSession, Pace, PackGroup, SetCharge } from './field.ts'
import { jobMaker, permitted } from './jobs.ts'
import type { Hookup, Session, SourceBudget } from './model.ts'
import { sharesOf } from './shares.ts'
import { chargingOf, sourcesOf } from './stand.ts'

/** A hookup that remembers the permitted charges behind its numbers. */
export interface SetHookup extends Hookup {
  readonly charges: readonly (SetCharge | undefined)[]
}

const unlimited: SourceBudget = { power_W: Number.POSITIVE_INFINITY, energy_Wh: Number.POSITIVE_INFINITY }

/** `groups` are the packs to be charged, by their index in the field session; `wanted` is how many of them. */
export function prepare(field: FieldSession, groups: readonly number[], wanted: number, pace: Pace): Session {
  const kinds = groups.map(group => field.packs[group] as PackGroup)
  const hookupOn = hookupMaker(field, kinds, pace)
  const firstAlike = indexOfFirstAlike(field.chargers)
  const ways: SetHookup[][] = field.chargers.map(() => [])
  const sources = sourcesOf(field).map((fed, source) => {
    const full = field.chargers.map(charger => hookupOn(charger, source))
    const demands_W = full.map(hookup => hookup.power_W)
    const feeds = fed && feedsOf(fed, field.chargers, { house: field.around.house, lead: field.lead })
    const usable = feeds?.filter(feed => feed !== undefined) ?? []
    const budget = fed ? budgetOf(fed, usable, sumOf(demands_W)) : unlimited
    for (const [port, charger] of field.chargers.entries()) {
      if (demands_W[port] === 0 || firstAlike[port] !== port) continue
      const shares_W = sharesOf(budget.power_W, demands_W, port)
      ways[port]?.push(...distinct(shares_W.map(share_W => hookupOn(charger, source, share_W))))
    }
    return budget
  })
  return {
    counts: kinds.map(({ count }) => count),
    ports: firstAlike.map(first => ways[first] as SetHookup[]),
    sources,
    deadline_min: Math.floor((field.readyBy_s ?? Number.POSITIVE_INFINITY) / 60),
    wanted,
  }
}

/** Each kind of pack on each charger, source and share of it is judged by itself; what is not permitted is no job. */
function hookupMaker(field: FieldSession, kinds: readonly PackGroup[], pace: Pace) {
  const jobOf = jobMaker()
  return (charger: Charger, source: number, share_W?: number): SetHookup => {
    const fed = { fieldSource: field.sources[source], share_W }
    const charges = kinds.map(kind => permitted(chargingOf(field, kind, charger, fed), pace))
    return {
      source,
      power_W: Math.max(0, ...charges.map(charge => charge?.setting.input_W ?? 0)),
      jobs: charges.map((charge, kind) => charge && jobOf(kind, charge)),
      charges,
    }
  }
}

/** One of those that set the same currents, and none that charges nothing. */
function distinct(hookups: readonly SetHookup[]): SetHookup[] {
  const currents = ({ charges }: SetHookup) => charges.map(charge => charge?.setting.current_A).join()
  return hookups.filter(
    (hookup, index) => hookup.power_W > 0 && hookups.findIndex(other => currents(other) === currents(hookup)) === index,
  )
}

function indexOfFirstAlike(chargers: readonly Charger[]): number[] {
  const texts = chargers.map(charger => JSON.stringify(charger))
  return texts.map(text => texts.indexOf(text))
}
