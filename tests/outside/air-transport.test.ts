// What passengers may carry, against the published rules.

import { describe, expect, it } from 'vitest'
import { liFe, lihv, liIon, lipo } from '../../src/charging/things/chemistries.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { airClass, airLimits, labelEnergy_Wh } from '../../src/charging/upkeep/transport.ts'

const pack = (chemistry: Pack['chemistry'], series: number, capacity_Ah: number): Pack => ({
  chemistry,
  series,
  parallel: 1,
  capacity_Ah,
})

// FAA PackSafe and 49 CFR 175.10(a)(18): to 100 Wh a battery carried; over 100 to 160 Wh with the airline's approval,
// two spares at most; over 160 Wh not by passengers. ICAO Technical Instructions Part 8 and IATA DGR 2.3 say the same.
describe('air limits (FAA PackSafe, 49 CFR 175.10(a)(18), IATA DGR 2.3)', () => {
  it.each([
    [99.9, 'cabin'],
    [100, 'cabin'],
    [100.01, 'with approval'],
    [101, 'with approval'],
    [160, 'with approval'],
    [160.01, 'not by passengers'],
    [300, 'not by passengers'],
  ] as const)('%f Wh: %s', (energy_Wh, expected) => {
    expect(airClass(energy_Wh)).toBe(expected)
  })

  it('lets two spares of the middle class go', () => {
    expect(airLimits.value.approvedSpares).toBe(2)
  })

  // The rules count watt-hours as nominal volts times ampere-hours; worked by hand.
  it.each([
    [pack(lipo, 6, 1.3), 28.86],
    [pack(lihv, 3, 0.72), 8.208],
    [pack(liIon, 4, 8), 115.2],
    [pack(lipo, 6, 4.5), 99.9],
    [pack(liFe, 4, 10), 132],
  ])('nominal volts times capacity: %o', (one, energy_Wh) => {
    expect(labelEnergy_Wh(one)).toBeCloseTo(energy_Wh, 6)
  })
})
