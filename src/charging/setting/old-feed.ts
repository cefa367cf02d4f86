// What a source can give a charger's input: at which voltages, and how much power for sure.

import { type BatteryStore, batteryStore, starterStore } from '../things/battery-store.ts'
import type { Charger } from '../things/charger.ts'
import { type HouseLimits, noHouseLimits } from '../things/house-limits.ts'
import { starterBlocks } from '../things/lead-acid.ts'
import { batterySourceRate_C, engineRunning_V, fuseShare, plainUsbOffer } from '../things/practice.ts'
import type { Offer, Source, VehicleOutlet } from '../things/source.ts'
import { pdOffers } from '../things/usb-pd.ts'
import { type Refused, refuse } from './refusal.ts'

export interface Feed {
  /** Lowest and highest voltage while it feeds, in V. */
  readonly lowest_V: number
  readonly highest_V: number
  /** Most current it gives, in A. */
  readonly current_A: number
  /** Power that it gives for sure, also at its lowest voltage, in W. */
  readonly power_W: number
  /** The chosen one of a supply's offers. */
  readonly offer?: Offer
  /** The battery behind it, where it can be drained. */
  readonly store?: BatteryStore
}

export interface FeedRequest {
  readonly source: Source
  readonly charger?: Charger
  readonly limits?: HouseLimits
  /** State of charge of a battery source, 0 to 1; full when absent. */
  readonly sourceSoc?: number
}

/** What `source` gives inside the charger's input window, or why it cannot feed it. */
export function feedOf({
  source,
  charger,
  limits = noHouseLimits,
  sourceSoc = 1,
}: FeedRequest): Feed | Refused {
  switch (source.kind) {
    case 'supply':
      return offerFeed(source.offers, charger)
    case 'power bank':
      return offerFeed(
        source.offers ?? (source.usbPd_W ? pdOffers(source.usbPd_W) : [plainUsbOffer.value]),
        charger,
      )
    case 'vehicle outlet':
      return source.engine === 'running'
        ? runningFeed(source, charger)
        : storeFeed(starterStore(source), source.fuse_A * fuseShare.value, charger)
    case 'battery': {
      const store = batteryStore(source.pack, limits, sourceSoc)
      return storeFeed(store, batterySourceRate_C.value * source.pack.capacity_Ah, charger)
    }
  }
}

const window = (charger: Charger | undefined): [number, number] => [
  charger?.minInput_V ?? 0,
  charger?.maxInput_V ?? Number.POSITIVE_INFINITY,
]

function outside(gives_V: readonly [number, number], charger: Charger | undefined): Refused {
  const [minInput_V, maxInput_V] = window(charger)
  return refuse({ kind: 'input window', gives_V, minInput_V, maxInput_V })
}

/** The offer that carries most power inside the window; of two alike the higher voltage, for less current. */
function offerFeed(offers: readonly Offer[], charger: Charger | undefined): Feed | Refused {
  const [minInput_V, maxInput_V] = window(charger)
  const power_W = ({ voltage_V, current_A }: Offer) => voltage_V * current_A
  const offer = offers
    .filter(({ voltage_V }) => voltage_V >= minInput_V && voltage_V <= maxInput_V)
    .sort((a, b) => power_W(b) - power_W(a) || b.voltage_V - a.voltage_V)[0]
  if (!offer) {
    const voltages_V = offers.map(({ voltage_V }) => voltage_V)
    return outside([Math.min(...voltages_V), Math.max(...voltages_V)], charger)
  }
  const { voltage_V, current_A } = offer
  return { lowest_V: voltage_V, highest_V: voltage_V, current_A, power_W: power_W(offer), offer }
}

function runningFeed(outlet: VehicleOutlet, charger: Charger | undefined): Feed | Refused {
  const blocks = starterBlocks(outlet)
  const [lowest_V, highest_V] = engineRunning_V.value.map(volts => blocks * volts) as [number, number]
  const [minInput_V, maxInput_V] = window(charger)
  if (lowest_V < minInput_V || highest_V > maxInput_V) return outside([lowest_V, highest_V], charger)
  const current_A = outlet.fuse_A * fuseShare.value
  return { lowest_V, highest_V, current_A, power_W: lowest_V * current_A }
}

/** A battery feeds from its resting voltage down to its floor, or to the charger's lowest input where that is higher. */
function storeFeed(charged: BatteryStore, current_A: number, charger: Charger | undefined): Feed | Refused {
  const [minInput_V, maxInput_V] = window(charger)
  const highest_V = charged.rest_V(charged.soc)
  const sagging_V = charged.restFloor_V - current_A * charged.resistance_ohm
  const lowest_V = Math.max(charged.loadFloor_V, sagging_V, minInput_V)
  if (highest_V > maxInput_V || highest_V <= minInput_V) return outside([lowest_V, highest_V], charger)
  const floor_V = Math.max(charged.loadFloor_V, charged.restFloor_V)
  if (highest_V <= floor_V) return refuse({ kind: 'source at its floor', source_V: highest_V, floor_V })
  const store = { ...charged, loadFloor_V: Math.max(charged.loadFloor_V, minInput_V) }
  return { lowest_V, highest_V, current_A, power_W: lowest_V * current_A, store }
}
