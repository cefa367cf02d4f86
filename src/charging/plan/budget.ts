// What a source can give to a whole session: power at any moment, and energy above its floor.

import { type Feed, inputOf } from '../setting/input.ts'
import { drain } from '../simulation/drain.ts'
import type { Situation } from '../situation/situation.ts'
import type { Charger } from '../things/charger.ts'
import { powerBankEfficiency } from '../things/practice.ts'
import type { FieldSource, SourceUse } from './field.ts'
import type { SourceBudget } from './model.ts'

/** What the source gives to each charger; undefined where it cannot feed it. */
export function feedsOf(
  { source, soc }: FieldSource,
  chargers: readonly Charger[],
  { house, lead }: Pick<Situation, 'house' | 'lead'>,
): (Feed | undefined)[] {
  return chargers.map(charger => inputOf({ source, charger, house, sourceSoc: soc, lead }).feed)
}

/**
 * A supply shares the power of its strongest offer. A battery gives its current at the lowest voltage that one of
 * the chargers needs, all the time: it sags and loses more than in the real session, so the energy is on the safe side.
 * `most_W` is what all chargers together could draw.
 */
export function budgetOf({ source, soc = 1 }: FieldSource, feeds: readonly Feed[], most_W: number): SourceBudget {
  const powers_W = feeds.map(feed => feed.power_W)
  if (powers_W.length === 0) return { power_W: 0, energy_Wh: 0 }
  const power_W = feeds.every(feed => feed.offer) ? Math.max(...powers_W) : Math.min(...powers_W)
  if (source.kind === 'power bank') {
    return { power_W, energy_Wh: source.label_Wh * soc * powerBankEfficiency.value }
  }
  const drawn_W = Math.min(power_W, most_W)
  const energies_Wh = feeds.map(feed => deliverable_Wh(feed, drawn_W))
  return { power_W, energy_Wh: Math.min(...energies_Wh) }
}

/** Energy down to the floor at a constant power, in Wh; Infinity where nothing is drained. */
function deliverable_Wh({ store }: Feed, power_W: number): number {
  if (!store) return Number.POSITIVE_INFINITY
  const longest_s = (store.energyBetween_Wh(0, store.soc) * 3600) / power_W
  return drain(store, store.soc, [{ power_W, duration_s: longest_s }]).delivered_Wh
}

/** Where to stop the battery behind the source: the highest floor among those of the chargers it feeds. */
export function stopOf(feeds: readonly Feed[]): NonNullable<SourceUse['stop']> | undefined {
  const stores = feeds.flatMap(({ store }) => (store ? [store] : []))
  if (stores.length === 0) return undefined
  const load_V = Math.max(...stores.map(store => store.loadFloor_V))
  // Behind the wiring of a vehicle nobody sees the volts under load.
  return stores.every(store => store.leads_ohm === 0)
    ? { volts: load_V, at: 'load' }
    : { volts: Math.max(...stores.map(store => store.restFloor_V)), at: 'rest' }
}
