// What is asked of a supply, and the situation that tells: a charger that hangs on it, with packs that nobody may have named.

import { type Asked, optional } from '../../src/assistant/command.ts'
import { inputOf } from '../../src/charging/setting/input.ts'
import type { Told } from '../../src/charging/situation/situation.ts'
import { type Chargers, chargersOf } from '../../src/charging/sources/load.ts'
import { behindCable } from '../../src/charging/sources/supply.ts'
import type { Charger } from '../../src/charging/things/charger.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Source } from '../../src/charging/things/source.ts'
import { sessionChargersKind } from '../../src/language/kinds/session-kinds.ts'
import {
  cellsKind,
  countKind,
  currentKind,
  drawnPowerKind,
  packKind,
  sourceKind,
  voltageKind,
} from '../../src/language/kinds/values.ts'
import { currentOn } from '../shared/charging.ts'
import { leadTold, ofLead } from '../shared/own-lead.ts'

export const takes = {
  source: optional(sourceKind),
  charger: optional(sessionChargersKind),
  count: optional(countKind),
  pack: optional(packKind),
  chemistry: optional(cellsKind),
  current: optional(currentKind),
  voltage: optional(voltageKind),
  cable: optional(currentKind),
  draws: optional(drawnPowerKind),
  ...ofLead,
}

export type AskedSupply = Asked<typeof takes>

/** A cable that carries 5 A is assumed out loud where an offer above 3 A hangs on it. */
const fullCable_A = 5
const least_V = 2

export function loadOf({ charger, count, draws }: Pick<AskedSupply, 'charger' | 'count' | 'draws'>): Chargers {
  const load = chargersOf(charger, count)
  return draws === undefined ? load : { ...load, flatOut_W: draws * load.count }
}

export const told = (asked: AskedSupply, house: HouseLimits): Told & { readonly pack: Pack } => {
  const { current, cable = fullCable_A } = asked
  const { charger, count } = loadOf(asked)
  const source = asked.source ? behindCable(asked.source, cable) : ofVolts(asked.voltage)
  const lead = leadTold(asked)
  const feed = source && inputOf({ source, house, charger, lead }).feed
  const around = {
    act: 'charge',
    charger,
    source,
    lead,
    sourceShare_W: feed && feed.power_W / count,
    current_A: current === undefined || !cellsOf(asked) ? undefined : currentOn(charger, current),
  } as const
  if (asked.pack) return { ...around, pack: asked.pack }
  return {
    ...around,
    pack: standIn(asked, charger),
    // No pack is meant, so none lacks the lead that the charger looks for.
    balanceLead: true,
    kindOnly: true,
    doubts: asked.chemistry || asked.draws || !asked.source ? [] : ['chemistryAssumed'],
  }
}

/** Volts that are looked for are judged as a supply that has all the amps that are wanted. */
const ofVolts = (voltage_V = 0): Source | undefined =>
  voltage_V < least_V ? undefined : { kind: 'supply', offers: [{ voltage_V, current_A: 1000 }] }

/** Cells in series, where they were told. */
export const cellsOf = ({ pack, chemistry }: AskedSupply): number | undefined => pack?.series ?? chemistry?.series

/** For packs that nobody named: so large that only charger and supply hold the current down. */
const standIn = ({ chemistry }: AskedSupply, charger: Charger | undefined): Pack => ({
  chemistry: chemistry?.chemistry ?? chemistries[0],
  series: chemistry?.series ?? charger?.minSeries ?? 1,
  parallel: 1,
  capacity_Ah: 60,
})
