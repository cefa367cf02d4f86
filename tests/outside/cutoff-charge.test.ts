// How full a cutoff leaves a 4.20 V cell, against what others publish.

import { describe, expect, it } from 'vitest'
import { liIon, lipo } from '../../src/charging/things/chemistries.ts'
import { chargeAtRest } from '../../src/charging/upkeep/rest-charge.ts'

describe('charge at 4.10 V', () => {
  // Battery University BU-808 (quoted, not seen): 85 to 90 % at 4.10 V; the trade says about 90 % (common practice).
  // Both count what a charge of their own puts in; ours is the charge at rest, which is a little higher.
  it.each([lipo, liIon])('is about nine tenths of a $name cell', chemistry => {
    const { soc, band } = chargeAtRest(chemistry, 4.1)
    expect(soc).toBeGreaterThan(0.85)
    expect(soc).toBeLessThan(0.95)
    expect(band.low).toBeLessThan(0.92)
  })
})
