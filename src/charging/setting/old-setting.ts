// What to set on the charger for a pack: the cutoff voltage and the current, every limit, and which one bound.

import type { Charger } from '../things/charger.ts'
import { type HouseLimits, noHouseLimits } from '../things/house-limits.ts'
import type { Target } from '../things/level.ts'
import type { Pack } from '../things/pack.ts'
import { chargerEfficiency } from '../things/practice.ts'
import type { Source } from '../things/source.ts'
import { anyCurrent, nearestStep_A, smallestStep_A } from '../things/steps.ts'
import { type Care, caresOf, isHurried, type Situated, whyUnfit } from './fitness.ts'
import { currentLimits, type Limit, type Provenance, theLabel } from './limit.ts'
import { type Cutoff, chooseCutoff } from './old-cutoff.ts'
import { type Feed, feedOf } from './old-feed.ts'
import { type Refused, refuse } from './refusal.ts'
import { temperatureAllowance } from './temperature.ts'

export interface SettingRequest extends Situated {
  readonly source?: Source
  /** State of charge of a battery source, 0 to 1; full when absent. */
  readonly sourceSoc?: number
  /** Full when absent. */
  readonly target?: Target
  readonly limits?: HouseLimits
  /** Cell temperature, in °C; taken for 25 when absent. */
  readonly temperature_C?: number
}

export interface Setting {
  readonly verdict: 'go' | 'go with care'
  readonly cares: readonly Care[]
  readonly cutoff: Cutoff
  readonly cutoffPack_V: number
  /** What the label or the chemistry recommends at this temperature, and who says so. */
  readonly wanted_A: number
  readonly wantedRate_C: number
  readonly wantedFrom: Provenance
  readonly current_A: number
  readonly rate_C: number
  /** Smallest first. */
  readonly limits: readonly [Limit, ...Limit[]]
  /** What kept the current from the wanted one: a limit, or the steps that the charger has. */
  readonly bound?: Limit | 'steps'
  readonly efficiency: number
  /** Power into the charger at its highest, at the cutoff, in W. */
  readonly input_W: number
  /** The same in A, at the source's lowest voltage; absent where no source is known. */
  readonly input_A?: number
  readonly feed?: Feed
}

/**
 * The setting for `request.pack`, or why there is none. The set current exceeds no limit: where charger or
 * source have too little power at the cutoff the current is lowered, as a supply asked for more switches off.
 */
export function adviseSetting(request: SettingRequest): Setting | Refused {
  const { pack, charger, limits: house = noHouseLimits } = request
  const chemistry = pack.chemistry
  const unfit = whyUnfit(request)
  if (unfit) return unfit
  const allowance = temperatureAllowance(chemistry, request.temperature_C)
  if ('refusal' in allowance) return allowance
  const cutoff = chooseCutoff(chemistry, request.target, house, charger?.cutoffs_V, allowance.maxPerCell_V)
  if ('refusal' in cutoff) return cutoff
  const feed = request.source && feedOf({ ...request, source: request.source, limits: house })
  if (feed && 'refusal' in feed) return feed

  const cutoffPack_V = cutoff.perCell_V * pack.series
  const efficiency = charger?.efficiency ?? chargerEfficiency.value
  const limits = currentLimits({ pack, charger, house, allowance, cutoffPack_V, efficiency, feed })
  const [limit] = limits
  const { wanted_A, ...wish } = wantedCurrent(pack, allowance.share)
  const current_A = settableCurrent_A(charger, wanted_A, limit.value_A)
  if (current_A === undefined) return tooLarge(request, limits)

  const input_W = (cutoffPack_V * current_A) / efficiency
  const bound = limit.value_A < wanted_A ? limit : charger && current_A !== wanted_A ? 'steps' : undefined
  const cares = caresOf(request, { cutoff, cold: allowance.reduced, hurried: isHurried(current_A, wanted_A) })
  return {
    verdict: cares.length > 0 ? 'go with care' : 'go',
    cares,
    cutoff,
    cutoffPack_V,
    wanted_A,
    ...wish,
    current_A,
    rate_C: current_A / pack.capacity_Ah,
    limits,
    bound,
    efficiency,
    input_W,
    ...(feed && { feed, input_A: input_W / feed.lowest_V }),
  }
}

const cappedLabel: Provenance = { source: 'the label, held to the limit of the chemistry' }

/** The label's charge rate where it gives one, within what the chemistry takes; else the recommended one. */
function wantedCurrent({ chemistry, capacity_Ah, labelRate_C }: Pack, share: number) {
  const { recommendedRate_C, highestRate_C } = chemistry
  const labelled_C = labelRate_C && Math.min(labelRate_C, highestRate_C.value)
  const wantedRate_C = (labelled_C ?? recommendedRate_C.value) * share
  return {
    wanted_A: wantedRate_C * capacity_Ah,
    wantedRate_C,
    wantedFrom:
      labelled_C === undefined ? recommendedRate_C : labelled_C === labelRate_C ? theLabel : cappedLabel,
  }
}

/** Without a charger any current to the digits that are shown (0.01 A, from 10 A 0.1 A), rounded down. */
function settableCurrent_A(
  charger: Charger | undefined,
  wanted_A: number,
  limit_A: number,
): number | undefined {
  if (charger) return nearestStep_A(charger.currents, wanted_A, limit_A)
  const highest_A = Math.min(wanted_A, limit_A)
  const perAmpere = highest_A < 10 ? 100 : 10
  const down_A = Math.floor(highest_A * perAmpere + 1e-9) / perAmpere
  return down_A > 0 ? down_A : undefined
}

/** A larger pack helps only against limits that grow with capacity. */
function tooLarge({ charger }: SettingRequest, limits: readonly [Limit, ...Limit[]]): Refused {
  const smallest_A = smallestStep_A(charger?.currents ?? anyCurrent)
  const fixed_A = Math.min(
    ...limits.map(({ rate_C, value_A }) => (rate_C === undefined ? value_A : Number.POSITIVE_INFINITY)),
  )
  const rate_C = Math.min(...limits.map(({ rate_C }) => rate_C ?? Number.POSITIVE_INFINITY))
  return refuse({
    kind: 'steps too large',
    smallest_A,
    limit: limits[0],
    ...(fixed_A >= smallest_A && { smallestCapacity_Ah: smallest_A / rate_C }),
  })
}
