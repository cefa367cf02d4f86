// What a source puts on a charger's input: its volts, whether they lie in the charger's window, and what it gives for sure.

import type { SourceLead } from '../situation/situation.ts'
import { type BatteryStore, batteryStore, starterStore } from '../things/battery-store.ts'
import type { Charger } from '../things/charger.ts'
import type { HouseLimits } from '../things/house-limits.ts'
import { leadAcidRate_C, starterBlocks } from '../things/lead-acid.ts'
import { batterySourceRate_C, engineRunning_V, fuseShare, plainUsbOffer, wattsShare } from '../things/practice.ts'
import type { BatterySource, Offer, Source, VehicleOutlet } from '../things/source.ts'
import { pdOffers } from '../things/usb-pd.ts'

export interface Feed {
  /** Lowest and highest voltage while it feeds, in V; with the current absent where only watts were told. */
  readonly lowest_V?: number
  readonly highest_V?: number
  /** Most current it gives, in A. */
  readonly current_A?: number
  /** Power that it gives for sure, also at its lowest voltage, in W. */
  readonly power_W: number
  /** The chosen one of a supply's offers. */
  readonly offer?: Offer
  /** The battery behind it, where it can be drained. */
  readonly store?: BatteryStore
}

export interface Input {
  /** What it gives, lowest and highest. */
  readonly gives_V: readonly [number, number]
  /** How far that lies outside the charger's window, in V; 0 inside. */
  readonly outside_V: number
  /** Of a battery: how far it rests above the volts to stop at, in V. */
  readonly aboveFloor_V: number | undefined
  readonly floor_V: number | undefined
  /** Absent where the charger cannot take what the source gives. */
  readonly feed: Feed | undefined
}

interface Fed {
  readonly source: Source
  readonly charger?: Charger
  readonly house: HouseLimits
  /** State of charge of the battery that feeds, 0 to 1; full when absent, of a vehicle what is usual. */
  readonly sourceSoc?: number
  /** What of its label it is to keep, 0 to 1. */
  readonly sourceKeeps?: number
  readonly lead?: SourceLead | undefined
}

export function inputOf({ source, charger, house, sourceSoc, sourceKeeps = 0, lead = noLead }: Fed): Input {
  const keeping = (store: BatteryStore): BatteryStore => ({
    ...store,
    restFloor_V: Math.max(store.restFloor_V, store.rest_V(sourceKeeps)),
  })
  switch (source.kind) {
    case 'watts':
      return unbroken({ power_W: source.power_W * wattsShare[source.of].value })
    case 'supply':
      return behindLead(byOffer(source.offers, charger), lead, charger)
    case 'power bank':
      return byOffer(source.offers ?? (source.usbPd_W ? pdOffers(source.usbPd_W) : [plainUsbOffer.value]), charger)
    case 'vehicle outlet':
      return source.engine === 'running'
        ? behindLead(running(source, charger), lead, charger)
        : leadFed(keeping(starterStore(source, sourceSoc)), source, charger, lead)
    case 'battery':
      return packFed(keeping(batteryStore(source.pack, house, sourceSoc ?? 1)), source, charger, lead)
  }
}

function packFed(held: BatteryStore, { pack }: BatterySource, charger: Charger | undefined, lead: SourceLead): Input {
  const store = wired(held, lead)
  const most_A = Math.min(batterySourceRate_C.value * pack.capacity_Ah, through_A(store.loadFloor_V, lead, charger))
  return stored(store, most_A, charger)
}

/** Its fuse holds the current down, and what its label says that it holds. */
function leadFed(held: BatteryStore, source: VehicleOutlet, charger: Charger | undefined, lead: SourceLead): Input {
  const store = wired(held, lead)
  const { fuse_A, capacity_Ah = Number.POSITIVE_INFINITY } = source
  const most_A = Math.min(
    fuse_A * fuseShare.value,
    capacity_Ah * leadAcidRate_C.value,
    through_A(store.loadFloor_V, lead, charger),
  )
  return stored(store, most_A, charger, source.rest_V)
}

/** Whether a lead of one's own before the charger counts: a power bank has its cable, and of watts alone no volts are lost. */
export const countsLead = (source: Source | undefined): boolean =>
  source !== undefined && source.kind !== 'watts' && source.kind !== 'power bank'

export const noLead: SourceLead = { resistance_ohm: 0, most_A: Number.POSITIVE_INFINITY }

/** With a lead more to it. */
const wired = (store: BatteryStore, { resistance_ohm }: SourceLead): BatteryStore => ({
  ...store,
  resistance_ohm: store.resistance_ohm + resistance_ohm,
  leads_ohm: store.leads_ohm + resistance_ohm,
})

/** The most that a lead carries from so many volts: what is left keeps the charger going, and more would bring less power. */
function through_A(volts: number, { resistance_ohm, most_A }: SourceLead, { minInput_V = 0 }: Partial<Charger> = {}) {
  const lost_V = Math.max(0, volts - Math.max(minInput_V, volts / 2))
  return resistance_ohm > 0 ? Math.min(most_A, lost_V / resistance_ohm) : most_A
}

/** What reaches the charger of what is given at so many volts, at the most that it gives. */
function behindLead({ feed, ...input }: Input, lead: SourceLead, charger: Charger | undefined): Input {
  const { lowest_V, current_A: given_A } = feed ?? {}
  if (lowest_V === undefined || given_A === undefined) return { ...input, feed }
  const current_A = Math.min(given_A, through_A(lowest_V, lead, charger))
  const left_V = lowest_V - current_A * lead.resistance_ohm
  return { ...input, feed: { ...feed, lowest_V: left_V, current_A, power_W: left_V * current_A } }
}

/** Its volts are taken to suit the charger, and nothing of it is drained. */
const unbroken = (feed: Feed): Input => ({
  gives_V: [0, Number.POSITIVE_INFINITY],
  outside_V: 0,
  aboveFloor_V: undefined,
  floor_V: undefined,
  feed,
})

/** How far a span of volts lies outside what the charger takes. */
function outsideOf([low_V, high_V]: readonly [number, number], charger: Charger | undefined): number {
  const { minInput_V = 0, maxInput_V = Number.POSITIVE_INFINITY } = charger ?? {}
  return Math.max(0, minInput_V - low_V, high_V - maxInput_V)
}

/** The offer that carries most power inside the window; of two alike the higher voltage, for less current. */
function byOffer(offers: readonly Offer[], charger: Charger | undefined): Input {
  const power_W = ({ voltage_V, current_A }: Offer) => voltage_V * current_A
  const outside = ({ voltage_V }: Offer) => outsideOf([voltage_V, voltage_V], charger)
  const volts = offers.map(({ voltage_V }) => voltage_V)
  const [offer] = offers
    .filter(one => outside(one) === 0)
    .toSorted((a, b) => power_W(b) - power_W(a) || b.voltage_V - a.voltage_V)
  return {
    gives_V: [Math.min(...volts), Math.max(...volts)],
    outside_V: Math.min(...offers.map(outside)),
    aboveFloor_V: undefined,
    floor_V: undefined,
    feed: offer && {
      lowest_V: offer.voltage_V,
      highest_V: offer.voltage_V,
      current_A: offer.current_A,
      power_W: power_W(offer),
      offer,
    },
  }
}

function running(outlet: VehicleOutlet, charger: Charger | undefined): Input {
  const blocks = starterBlocks(outlet)
  const [lowest_V, highest_V] = engineRunning_V.value.map(volts => blocks * volts) as [number, number]
  const outside_V = outsideOf([lowest_V, highest_V], charger)
  const current_A = outlet.fuse_A * fuseShare.value
  return {
    gives_V: [lowest_V, highest_V],
    outside_V,
    aboveFloor_V: undefined,
    floor_V: undefined,
    feed: outside_V > 0 ? undefined : { lowest_V, highest_V, current_A, power_W: lowest_V * current_A },
  }
}

/**
 * A battery feeds from its resting voltage down to its floors, or to the charger's lowest input where that is higher,
 * and never more than what would sag to the floor at once. What was measured may lie beyond its curve.
 */
function stored(charged: BatteryStore, most_A: number, charger: Charger | undefined, measured_V?: number): Input {
  const highest_V = measured_V ?? charged.rest_V(charged.soc)
  const outside_V = outsideOf([highest_V, highest_V], charger)
  const { minInput_V = 0 } = charger ?? {}
  const { leads_ohm, resistance_ohm } = charged
  const loadFloor_V = Math.max(charged.loadFloor_V, minInput_V + most_A * leads_ohm)
  const floor_V = Math.max(loadFloor_V, charged.restFloor_V)
  const current_A = Math.min(most_A, (highest_V - loadFloor_V) / (resistance_ohm - leads_ohm))
  const lowest_V = Math.max(loadFloor_V - current_A * leads_ohm, minInput_V)
  const store = { ...charged, loadFloor_V }
  const feeds = outside_V === 0 && highest_V > floor_V
  return {
    gives_V: [highest_V, highest_V],
    outside_V,
    aboveFloor_V: highest_V - floor_V,
    floor_V,
    feed: feeds ? { lowest_V, highest_V, current_A, power_W: lowest_V * current_A, store } : undefined,
  }
}
