// What a supply carries: the charge current for each cell count, a cable's limit, and the smallest supply for a load.

import { currentBehind_A } from '../numbers/behind.ts'
import { boundsOf } from '../setting/bounds.ts'
import { inputOf, noLead } from '../setting/input.ts'
import type { Limit } from '../setting/limit.ts'
import { type Setting, settingFor } from '../setting/setting.ts'
import type { Permit } from '../situation/permit.ts'
import type { SourceLead } from '../situation/situation.ts'
import type { Charger } from '../things/charger.ts'
import { practice, published } from '../things/cited.ts'
import { noHouseLimits } from '../things/house-limits.ts'
import type { Pack } from '../things/pack.ts'
import { efficiencyOf } from '../things/practice.ts'
import type { Offer, Source } from '../things/source.ts'
import { anyCurrent, largestStep_A, nearestStep_A } from '../things/steps.ts'
import { pdOffers } from '../things/usb-pd.ts'

export interface Carried {
  readonly series: number
  readonly cutoffPack_V: number
  /** The charger's highest step that supply and charger carry at the cutoff, in A; absent where not even the lowest. */
  readonly current_A: number | undefined
}

/** Cell counts that a charger of unknown range is taken to have. */
const usualSeries = { min: 1, max: 6 }

/**
 * What the source of the permit gives its charger, whatever the pack may take.
 * @throws RangeError where the permit is for a charge without a source
 */
export function suppliedTo({ situation }: Permit) {
  const feed = boundsOf(situation).input?.feed
  if (!feed) throw new RangeError('what a source gives needs one that feeds the charger')
  const { sourceShare_W = Number.POSITIVE_INFINITY, charger, pack } = situation
  return { feed, carried: carriedBySeries(Math.min(feed.power_W, sourceShare_W), charger, pack) }
}

/** What the charger of the permit gives so many cells, whatever feeds it and whatever a pack may take. */
export const carriedAlone = ({ situation: { charger, pack } }: Permit, cells: number): Carried | undefined =>
  carriedBySeries(Number.POSITIVE_INFINITY, charger, pack).find(({ series }) => series === cells)

function carriedBySeries(given_W: number, charger: Charger | undefined, { chemistry, series: told }: Pack): Carried[] {
  const { minSeries = usualSeries.min, maxSeries = Math.max(usualSeries.max, told) } = charger ?? {}
  const currents = charger?.currents ?? anyCurrent
  const efficiency = efficiencyOf(charger)
  return Array.from({ length: maxSeries - minSeries + 1 }, (_, index) => {
    const series = minSeries + index
    const cutoffPack_V = chemistry.full_V.value * series
    const power_W = Math.min(given_W * efficiency, charger?.power_W ?? Number.POSITIVE_INFINITY)
    const limit_A = Math.min(power_W / cutoffPack_V, largestStep_A(currents))
    const current_A = charger ? nearestStep_A(currents, limit_A, limit_A + 1e-9) : shownDown_A(limit_A)
    return { series, cutoffPack_V, current_A }
  })
}

/** To the digits that are shown (0.01 A, from 10 A 0.1 A), down. */
function shownDown_A(limit_A: number): number | undefined {
  const perAmpere = limit_A < 10 ? 100 : 10
  const down_A = Math.floor(limit_A * perAmpere + 1e-9) / perAmpere
  return down_A > 0 ? down_A : undefined
}

/** Current of an ordinary USB-C cable, in A; a cable marked for 5 A carries that, and above 20 V too. */
export const plainCable_A = published(3, 'USB Type-C specification: 3 A without an electronic mark, 5 A with one')

/** The source as it is behind a USB-C cable for `cable_A`; other sources have leads of their own. */
export function behindCable(source: Source, cable_A: number): Source {
  if ((source.kind !== 'supply' && source.kind !== 'power bank') || source.usbPd_W === undefined) return source
  const offers = (source.kind === 'supply' ? source.offers : pdOffers(source.usbPd_W))
    .filter(({ voltage_V }) => voltage_V <= 20 || cable_A > plainCable_A.value)
    .map(({ voltage_V, current_A }) => ({ voltage_V, current_A: Math.min(current_A, cable_A) }))
  return { ...source, offers }
}

/** Power classes in which USB PD supplies are sold, in W. */
export const soldPowers_W = practice<readonly number[]>(
  [15, 20, 27, 30, 45, 60, 65, 100, 140, 180, 240],
  'USB PD supplies are sold in classes of 15 to 240 W',
)

export interface UsbChoice {
  readonly supply_W: number
  readonly offer: Offer
}

/** The smallest USB PD supply that gives `input_W` inside the charger's input window; undefined where none does. */
export function smallestUsbSupply(
  input_W: number,
  charger: Charger | undefined,
  lead?: SourceLead,
): UsbChoice | undefined {
  for (const supply_W of soldPowers_W.value) {
    const source = { kind: 'supply', offers: pdOffers(supply_W), usbPd_W: supply_W } as const
    const { feed } = inputOf({ source, charger, house: noHouseLimits, lead })
    if (feed?.offer && feed.power_W >= input_W - 1e-9) return { supply_W, offer: feed.offer }
  }
  return undefined
}

/** Bench and wall supplies come at these volts. */
const usualSupplies_V = practice<readonly number[]>(
  [12, 15, 19, 24],
  'bench and wall supplies are sold for 12, 15, 19 and 24 V',
)

/** A supply that runs at its limit has no room for the dip of a lead or a warm day. */
const headroom = 1.2

export interface Bench extends Offer {
  readonly drawn_A: number
}

/** The supplies that give so many watts. */
export interface Supplies {
  readonly input_W: number
  readonly usb: UsbChoice | undefined
  /** Supplies of one voltage inside the charger's window, rated a fifth above what is drawn, rounded up to 0.1 A. */
  readonly benches: readonly Bench[]
}

export interface Needed extends Supplies {
  readonly setting: Setting
  /** Into the pack: the one asked for, as far as charger and its power go, or the advised one. */
  readonly current_A: number
  /** What held it below the one that was asked for. */
  readonly heldBy: Limit | undefined
}

/** What a supply has to fit. */
export interface Wanted {
  /** The only volts that are of interest; those that supplies are sold for when absent. */
  readonly voltage_V?: number | undefined
  /** Chargers that hang on it at once, all alike; 1 when absent. */
  readonly count?: number | undefined
  /** One's own between it and the chargers. */
  readonly lead?: SourceLead | undefined
}

/** What charging the pack of the permit takes from a supply, and the supplies that carry it. */
export function neededFor(permit: Permit, wanted: Wanted = {}): Needed {
  const { charger, current_A: asked_A } = permit.situation
  const setting = settingFor(permit)
  const { cutoffPack_V, efficiency, limits } = setting
  const ofCharger = limits.find(({ kind }) => kind === 'charger' || kind === 'charger power')
  const isHeld = asked_A !== undefined && ofCharger !== undefined && ofCharger.value_A < asked_A
  const current_A = isHeld ? ofCharger.value_A : (asked_A ?? setting.current_A)
  return {
    setting,
    current_A,
    heldBy: isHeld ? ofCharger : undefined,
    ...suppliesFor((cutoffPack_V * current_A * (wanted.count ?? 1)) / efficiency, charger, wanted),
  }
}

/** `input_W` is what all `count` chargers take. */
export function suppliesFor(
  input_W: number,
  charger: Charger | undefined,
  { voltage_V, count = 1, lead = noLead }: Wanted,
): Supplies {
  const { minInput_V = 0, maxInput_V = Number.POSITIVE_INFINITY } = charger ?? {}
  const volts = voltage_V === undefined ? usualSupplies_V.value : [voltage_V]
  return {
    input_W,
    usb: count > 1 || voltage_V !== undefined ? undefined : smallestUsbSupply(input_W, charger, lead),
    benches: volts.flatMap(one_V => {
      const drawn_A = drawnBehind_A(one_V, lead, input_W)
      if (drawn_A === undefined || one_V > maxInput_V) return []
      if (one_V - drawn_A * lead.resistance_ohm < minInput_V) return []
      return [{ voltage_V: one_V, drawn_A, current_A: Math.ceil(drawn_A * headroom * 10 - 1e-6) / 10 }]
    }),
  }
}

/** What a supply of so many volts gives; undefined where the lead does not bear that, or never brings it. */
function drawnBehind_A(volts: number, { resistance_ohm, most_A }: SourceLead, input_W: number): number | undefined {
  if (volts <= 0) return undefined
  const drawn_A = currentBehind_A(volts, resistance_ohm, input_W)
  return drawn_A !== undefined && drawn_A <= most_A ? drawn_A : undefined
}
