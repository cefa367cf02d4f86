// How many charges a source carries, one after the other, and what is left of it.

import { chargeTimeBand } from '../setting/band.ts'
import { type Setting, settingFor } from '../setting/setting.ts'
import { chargeOf } from '../setting/timed-charge.ts'
import type { Draw } from '../simulation/drain.ts'
import { countedPacks, drawsOf, type SupplyRun, supplyOf, totalsOf } from '../simulation/supply-run.ts'
import type { Permit } from '../situation/permit.ts'
import type { Band } from '../things/chemistry.ts'
import { practice } from '../things/cited.ts'
import { efficienciesOf } from '../things/practice.ts'

/**
 * Simulates the charges on the source of the permit until `count` is reached (as many as it carries when absent) or
 * its floor is met.
 * @throws RangeError where the permit is for a charge without a source
 */
export function planSource(permit: Permit, count?: number) {
  const { pack, source, charger } = permit.situation
  if (!source) throw new RangeError('a plan on a source needs one')
  const setting = settingFor(permit)
  const request = chargeOf(permit, setting)
  const each = chargeTimeBand(request)
  const runAt = (efficiency: number) => {
    const draws = drawsOf(each.charge, pack.series, efficiency)
    return { draws, ...supplyOf(source, setting.feed?.store, draws, permit.situation) }
  }
  const { draws, most, after } = runAt(setting.efficiency)
  const { low, high } = efficienciesOf(charger)
  const worst = runAt(low)
  // What is left of a source that sags too far is nothing more that it carries.
  const surely = Math.min(most ?? 0, worst.most ?? 0)
  const between = most === undefined ? undefined : countsAbout(most, surely, carriedBy(worst), carriedBy(runAt(high)))
  const wanted = count ?? Math.max(1, between?.low ?? 1)
  const planned = Math.min(wanted, most ?? wanted)
  const intoPacks_Wh = planned * each.charge.energy_Wh
  const delivered_Wh = planned * totalsOf(draws).energy_Wh
  const { sourceLoss_Wh, left_Wh, leftSoc } = after(planned)
  const converterLoss_Wh = delivered_Wh - intoPacks_Wh
  return {
    setting,
    /** Where every pack stands at first. */
    from: request.from,
    /** One charge; every pack is taken to be alike. */
    each,
    /** Most packs that the source carries whole, rounded down; absent where it is not drained. */
    most,
    /** Of those, how many it carries where charger and source lose more than is usual, and how many where less. */
    between,
    /** Packs of this plan: the wanted count where the source carries it, else the most; where none is wanted, the sure ones. */
    planned,
    /** Whether the wanted count is carried; true where none was named and at least one is. */
    enough: planned >= wanted,
    /** Packs an hour that the sun feeds, of a panel. */
    perHour:
      source.kind === 'watts' && source.of === 'panel' ? givenIn(setting, 3600) / totalsOf(draws).energy_Wh : undefined,
    /** For the planned packs: out of the source's store is the sum of the other three. */
    balance: { sourceOut_Wh: delivered_Wh + sourceLoss_Wh, intoPacks_Wh, converterLoss_Wh, sourceLoss_Wh },
    /** Energy that it could still deliver above its floor after the planned packs, in Wh. */
    left_Wh,
    leftSoc,
  }
}

export type SourcePlan = ReturnType<typeof planSource>

/** Beside what the charger passes on. */
export const otherSpread = practice(0.05, 'sources and flown packs are a twentieth better or worse than is usual')

/** How often a source carries its draws, with the part that is left of it. */
const carriedBy = ({ draws, most = 0, after }: SupplyRun & { readonly draws: readonly Draw[] }): number =>
  most + (after(most).left_Wh ?? 0) / totalsOf(draws).energy_Wh

/** Around `most` packs: as many as where charger, source and packs are worse than is usual, and where they are better. */
function countsAbout(most: number, surely: number, least: number, best: number): Band {
  if (most === 0 || most >= countedPacks) return { low: most, high: most }
  return {
    low: Math.min(surely, Math.floor(least * (1 - otherSpread.value))),
    high: Math.max(most, Math.floor(best * (1 + otherSpread.value))),
  }
}

/** What the source gives in `time_s` at its full power, in Wh. */
const givenIn = ({ feed }: Setting, time_s: number): number => ((feed?.power_W ?? 0) * time_s) / 3600
