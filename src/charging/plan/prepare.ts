// From a field session to its numbers: what each port could do for each kind of pack, on each source and share.

import type { Limit } from '../setting/limit.ts'
import type { Setting } from '../setting/old-setting.ts'
import type { Refusal } from '../setting/refusal.ts'
import type { Charger } from '../things/charger.ts'
import { chargerEfficiency } from '../things/practice.ts'
import { budgetOf, feedsOf } from './budget.ts'
import type { FieldSession, PackGroup } from './field.ts'
import { jobMaker, type Pace, settingFor } from './jobs.ts'
import type { Hookup, Session, SourceBudget } from './model.ts'
import { sharesOf } from './shares.ts'

/** A hookup that remembers the settings behind its numbers. */
export interface SetHookup extends Hookup {
  readonly settings: readonly (Setting | undefined)[]
}

export interface Prepared {
  readonly session: Session
  /** By kind: why no port can charge it; undefined where one can. */
  readonly refusals: readonly (Refusal | undefined)[]
}

const unlimited: SourceBudget = { power_W: Number.POSITIVE_INFINITY, energy_Wh: Number.POSITIVE_INFINITY }

/** `groups` are the packs to be charged, by their index in the field session; `wanted` is how many of them. */
export function prepare(
  field: FieldSession,
  groups: readonly number[],
  wanted: number,
  pace: Pace,
): Prepared {
  const kinds = groups.map(group => field.packs[group] as PackGroup)
  const { hookupOn, refusals } = hookupMaker(field, kinds, pace)
  const firstAlike = indexOfFirstAlike(field.chargers)
  const ways: SetHookup[][] = field.chargers.map(() => [])
  const sources = [...(field.sources.length > 0 ? field.sources : [undefined]).entries()].map(
    ([source, fed]) => {
      const full = field.chargers.map(charger => hookupOn(charger, source))
      const demands_W = full.map(hookup => hookup.power_W)
      const feeds = fed && feedsOf(fed, field.chargers, field.limits)
      const usable = feeds?.filter(feed => feed !== undefined) ?? []
      const budget = fed ? budgetOf(fed, usable, sum(demands_W)) : unlimited
      for (const [port, charger] of field.chargers.entries()) {
        if (demands_W[port] === 0 || firstAlike[port] !== port) continue
        const shares_W = sharesOf(budget.power_W, demands_W, port)
        ways[port]?.push(...distinct(shares_W.map(share_W => hookupOn(charger, source, share_W))))
      }
      return budget
    },
  )
  return {
    session: {
      counts: kinds.map(({ count }) => count),
      ports: firstAlike.map(first => ways[first] as SetHookup[]),
      sources,
      deadline_min: Math.floor((field.readyBy_s ?? Number.POSITIVE_INFINITY) / 60),
      wanted,
    },
    refusals: kinds.map((_, kind) =>
      ways.flat().some(({ jobs }) => jobs[kind]) ? undefined : refusals[kind],
    ),
  }
}

/** `refusals` fills up with the first reason against each kind as hookups are made. */
function hookupMaker(field: FieldSession, kinds: readonly PackGroup[], pace: Pace) {
  const jobOf = jobMaker(field)
  const refusals: (Refusal | undefined)[] = kinds.map(() => undefined)
  const hookupOn = (charger: Charger, source: number, share_W = Number.POSITIVE_INFINITY): SetHookup => {
    const output_W = share_W * (charger.efficiency ?? chargerEfficiency.value)
    const settings = kinds.map((kind, index) => {
      const setting = settingFor(field, kind, held(charger, output_W), field.sources[source], pace)
      if (!('refusal' in setting)) return withShareNamed(setting, output_W)
      refusals[index] ??= setting.refusal
      return undefined
    })
    return {
      source,
      power_W: Math.max(0, ...settings.map(setting => setting?.input_W ?? 0)),
      jobs: settings.map((setting, index) => setting && jobOf(kinds[index] as PackGroup, setting)),
      settings,
    }
  }
  return { hookupOn, refusals }
}

/** The charger held to what its share of the source's power lets it put out. */
function held(charger: Charger, output_W: number): Charger {
  const { power_W = Number.POSITIVE_INFINITY } = charger
  return output_W < power_W ? { ...charger, power_W: output_W } : charger
}

/** What holds the current is then the source and not the charger. */
function withShareNamed(setting: Setting, output_W: number): Setting {
  const named = (limit: Limit): Limit =>
    limit.power_W === output_W
      ? { ...limit, kind: 'source', from: { source: 'its share of the source' } }
      : limit
  const [first, ...rest] = setting.limits
  return {
    ...setting,
    limits: [named(first), ...rest.map(named)],
    ...(typeof setting.bound === 'object' && { bound: named(setting.bound) }),
  }
}

/** One of those that set the same currents, and none that charges nothing. */
function distinct(hookups: readonly SetHookup[]): SetHookup[] {
  const currents = ({ settings }: SetHookup) => settings.map(setting => setting?.current_A).join()
  return hookups.filter(
    (hookup, index) =>
      hookup.power_W > 0 && hookups.findIndex(other => currents(other) === currents(hookup)) === index,
  )
}

function indexOfFirstAlike(chargers: readonly Charger[]): number[] {
  const texts = chargers.map(charger => JSON.stringify(charger))
  return texts.map(text => texts.indexOf(text))
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)
