// What a source gives a charger, in words: what was taken for granted.

import { starterBlocks, starterCapacity_Ah, starterRest_V } from '../../src/charging/things/lead-acid.ts'
import { plainUsbOffer } from '../../src/charging/things/practice.ts'
import type { Source } from '../../src/charging/things/source.ts'
import type { Show } from '../../src/ground/show.ts'
import { cite } from '../shared/working.ts'

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
