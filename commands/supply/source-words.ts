// What a source gives a charger, in words: what was taken for granted, and how its power came about.

import type { Feed } from '../../src/charging/setting/old-feed.ts'
import {
  leadAcidRest,
  starterBlocks,
  starterCapacity_Ah,
  starterFloor_V,
  starterResistance_ohm,
  starterRest_V,
} from '../../src/charging/things/lead-acid.ts'
import {
  batterySourceRate_C,
  engineRunning_V,
  fuseShare,
  plainUsbOffer,
  powerBankEfficiency,
} from '../../src/charging/things/practice.ts'
import type { Source } from '../../src/charging/things/source.ts'
import type { Show } from '../../src/ground/show.ts'
import { cite } from '../shared/working.ts'

const usbPd = 'USB Power Delivery Specification R3.x, power rules; IEC 62680-1-2:2022'

/** What had to be assumed about the source because the question did not say it. */
export function sourceAssumed(source: Source, show: Show): string[] {
  if (source.kind === 'power bank' && !source.offers && source.usbPd_W === undefined) {
    const { voltage_V, current_A } = plainUsbOffer.value
    return [
      `the power bank is taken to give ${show.voltage(voltage_V)}, ${show.current(current_A)} (${cite(plainUsbOffer)})`,
    ]
  }
  if (source.kind !== 'vehicle outlet' || source.engine === 'running') return []
  const assumed: string[] = []
  if (source.rest_V === undefined) {
    assumed.push(
      `the starter battery is taken to rest at ${show.voltage(starterBlocks(source) * starterRest_V.value)} (${cite(starterRest_V)})`,
    )
  }
  if (source.capacity_Ah === undefined) {
    assumed.push(
      `the starter battery is taken to hold ${show.capacity(starterCapacity_Ah.value)} (${cite(starterCapacity_Ah)})`,
    )
  }
  return assumed
}

/** How the power of the source came about. */
export function sourceWorking(
  source: Source,
  { offer, current_A, lowest_V, power_W, store }: Feed,
  show: Show,
): string[] {
  const lines: string[] = []
  if (offer) {
    const most =
      source.kind === 'supply' && source.offers.length > 1
        ? ', the most inside the input window of the charger'
        : ''
    const rule = 'usbPd_W' in source && source.usbPd_W !== undefined ? ` (${usbPd})` : ''
    lines.push(
      `Offer taken: ${show.voltage(offer.voltage_V)} × ${show.current(offer.current_A)} = ${show.power(power_W)}${most}${rule}.`,
    )
  }
  switch (source.kind) {
    case 'supply':
      break
    case 'power bank': {
      const usable_Wh = source.label_Wh * powerBankEfficiency.value
      lines.push(
        `Usable: ${show.energy(source.label_Wh)} × ${show.number(powerBankEfficiency.value, 2)} = ${show.energy(usable_Wh)} (${cite(powerBankEfficiency)}).`,
      )
      break
    }
    case 'vehicle outlet':
      lines.push(
        `Fuse: ${show.current(source.fuse_A)} × ${show.number(fuseShare.value, 1)} = ${show.current(current_A)} (${cite(fuseShare)}); at ${show.voltage(lowest_V)} that is ${show.power(power_W)}.`,
      )
      if (source.engine === 'running') lines.push(`Voltage: ${cite(engineRunning_V)}.`)
      else if (store) {
        lines.push(
          `Starter battery: ${show.percent(store.soc)} at ${show.voltage(store.rest_V(store.soc))} at rest (${cite(leadAcidRest)}); stop at ${show.voltage(store.restFloor_V)} at rest (${cite(starterFloor_V)}).`,
          `Its sag: ${show.resistance(store.resistance_ohm)} (${cite(starterResistance_ohm)}).`,
        )
      }
      break
    case 'battery':
      lines.push(
        `Source current: at most ${show.rate(batterySourceRate_C.value)} × ${show.capacity(source.pack.capacity_Ah)} = ${show.current(current_A)} (${cite(batterySourceRate_C)}).`,
      )
      if (store) {
        const { loadFloor_V } = source.pack.chemistry
        lines.push(
          `Its floor: ${show.perCell(store.loadFloor_V / source.pack.series)} per cell under load, ${show.voltage(store.loadFloor_V)} in all; ${source.pack.chemistry.name} must not go below ${show.perCell(loadFloor_V.value)} (${cite(loadFloor_V)}), and the charger and the house may ask for more.`,
          `Its sag: ${show.resistance(store.resistance_ohm)} in all.`,
        )
      }
  }
  return lines
}
